"""Parts and plan in, the shop's work out: saw order, materials, hours, money, cautions. Pure."""

from longpoint.shop.amounts import Amounts, amounts
from longpoint.shop.apportion import apportion
from longpoint.shop.cautions import Caution, cautions
from longpoint.shop.cost import Wages, cost_sheet
from longpoint.shop.hours import hours
from longpoint.shop.materials import materials
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
from longpoint.shop.packages import MaterialCode, Package
from longpoint.shop.rates import DEFAULTS, Rate, Rates
from longpoint.shop.saw_order import saw_order
from longpoint.shop.steps import SawHabits
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
    Task,
    Unpriced,
    Wait,
)
from longpoint.shop.work import Section, ShopSettings, ShopWork, work

__all__ = [
    "DEFAULTS",
    "Amounts",
    "Bought",
    "Caution",
    "CostLine",
    "CostSheet",
    "CostTotals",
    "Figure",
    "Hours",
    "Labour",
    "Material",
    "MaterialCode",
    "Materials",
    "OpeningCost",
    "Operation",
    "OperationKind",
    "Package",
    "PieceName",
    "Rate",
    "Rates",
    "RoomCost",
    "SawHabits",
    "SawOrder",
    "Section",
    "Setting",
    "Setup",
    "Share",
    "ShopSettings",
    "ShopWork",
    "Stick",
    "StickPiece",
    "Task",
    "Tool",
    "Unpriced",
    "Wages",
    "Wait",
    "amounts",
    "apportion",
    "cautions",
    "cost_sheet",
    "hours",
    "materials",
    "saw_order",
    "work",
]
