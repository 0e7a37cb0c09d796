"""Parts and plan in, the shop's work out: saw order, materials, hours, money, cautions. Pure."""

from longpoint.shop.cautions import Caution
from longpoint.shop.job import Cutting, ShopJob, WorkOpening, piece_key
from longpoint.shop.operations import (
    Operation,
    OperationKind,
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
    "Cutting",
    "Figure",
    "Hours",
    "Labour",
    "Material",
    "Materials",
    "OpeningCost",
    "Operation",
    "OperationKind",
    "Rate",
    "RoomCost",
    "SawOrder",
    "Setting",
    "Setup",
    "Share",
    "ShopJob",
    "Stick",
    "StickPiece",
    "Tool",
    "Wait",
    "WorkOpening",
    "piece_key",
]
