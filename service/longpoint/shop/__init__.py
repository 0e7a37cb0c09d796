"""Pieces and plan in, the shop's work out: saw order, materials, hours, money, cautions. Pure."""

from longpoint.shop.amounts import Amounts, amounts
from longpoint.shop.apportion import apportion
from longpoint.shop.cautions import Caution, cautions
from longpoint.shop.cost import cost_sheet
from longpoint.shop.hours import hours
from longpoint.shop.materials import materials
from longpoint.shop.operations import (
    Holding,
    MarkFrom,
    Operation,
    OperationKind,
    OrderKind,
    OrderSum,
    PieceName,
    SawOrder,
    Setting,
    Setup,
    Tool,
)
from longpoint.shop.packages import MaterialCode, Package
from longpoint.shop.quantity import Quantity
from longpoint.shop.rates import DEFAULTS, Rate, Rates
from longpoint.shop.saw import Saw
from longpoint.shop.saw_order import raised, saw_order
from longpoint.shop.settings import Shop
from longpoint.shop.takeoff import (
    Bought,
    CostLine,
    CostSheet,
    CostTotals,
    Figure,
    Hours,
    Labor,
    Material,
    Materials,
    OpeningCost,
    RoomCost,
    Share,
    Task,
    Unpriced,
    Wait,
)
from longpoint.shop.wages import Wages
from longpoint.shop.work import Section, ShopWork, work

__all__ = [
    "DEFAULTS",
    "Amounts",
    "Bought",
    "Caution",
    "CostLine",
    "CostSheet",
    "CostTotals",
    "Figure",
    "Holding",
    "Hours",
    "Labor",
    "MarkFrom",
    "Material",
    "MaterialCode",
    "Materials",
    "OpeningCost",
    "Operation",
    "OperationKind",
    "OrderKind",
    "OrderSum",
    "Package",
    "PieceName",
    "Quantity",
    "Rate",
    "Rates",
    "RoomCost",
    "Saw",
    "SawOrder",
    "Section",
    "Setting",
    "Setup",
    "Share",
    "Shop",
    "ShopWork",
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
    "raised",
    "saw_order",
    "work",
]
