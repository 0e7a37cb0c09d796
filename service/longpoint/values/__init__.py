"""What every room is made of: values, faults with their place, names, money, and how all of them meet the wire.

Knows no trade and does no I/O.
"""

from longpoint.values.belongs import belongs
from longpoint.values.codec import converted, decoded, decoder, encoder, packed_decoder, packer, schemas
from longpoint.values.fault import Fault, Faults, Path, Place, Refusal, nearest
from longpoint.values.money import Cents, Price
from longpoint.values.names import Name, Room, Text
from longpoint.values.numbers import Amount, Angle
from longpoint.values.parameters import wrong_parameter
from longpoint.values.renamed import moved
from longpoint.values.value import Given, Value, fields_of
from longpoint.values.whole import inspected, whole
from longpoint.values.wired import Unreadable, Wired

__all__ = [
    "Amount",
    "Angle",
    "Cents",
    "Fault",
    "Faults",
    "Given",
    "Name",
    "Path",
    "Place",
    "Price",
    "Refusal",
    "Room",
    "Text",
    "Unreadable",
    "Value",
    "Wired",
    "belongs",
    "converted",
    "decoded",
    "decoder",
    "encoder",
    "fields_of",
    "inspected",
    "moved",
    "nearest",
    "packed_decoder",
    "packer",
    "schemas",
    "whole",
    "wrong_parameter",
]
