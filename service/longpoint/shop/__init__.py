"""Parts and plan in, the shop's work out: saw order, materials, hours, money, cautions. Pure."""

from longpoint.shop.cautions import Caution
from longpoint.shop.operations import (
    Operation,
    OperationKind,
    PieceName,
    SawOrder,
    Setting,
    Setup,
    Stick,
    StickPiece,
    Tool,
)
from longpoint.shop.rates import Rate
from longpoint.shop.takeoff import (
    Bought,
    CostLine,
    CostSheet,
    CostTotals,
    Figure,
    Hours,
    Labour,
    Material,
    Materials,
    OpeningCost,
    RoomCost,
    Share,
    Wait,
)

__all__ = [
    "Bought",
    "Caution",
    "CostLine",
    "CostSheet",
    "CostTotals",
    "Figure",
    "Hours",
    "Labour",
    "Material",
    "Materials",
    "OpeningCost",
    "Operation",
    "OperationKind",
    "PieceName",
    "Rate",
    "RoomCost",
    "SawOrder",
    "Setting",
    "Setup",
    "Share",
    "Stick",
    "StickPiece",
    "Tool",
    "Wait",
]
