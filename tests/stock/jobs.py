"""Small jobs drawn from a seed, of every kind the trade knows, and houses like those people send."""

from fractions import Fraction
from random import Random

from longpoint.stock import Defect, Job, Piece, Remnant, StickKind

TRADES = ("plain", "capped", "turned", "angles", "defects", "millimetres")
MILLIMETRE = Fraction(5, 127)
YARD = tuple(
    StickKind(f"{feet} ft", Fraction(12 * feet), price)
    for feet, price in ((8, 800), (10, 990), (12, 1176), (14, 1358), (16, 1536))
)


def small_job(trade: str, seed: int) -> Job:
    """A job of at most ten pieces, small enough to try everything."""
    random = Random(f"{trade} {seed}")
    unit = MILLIMETRE * 25 if trade == "millimetres" else Fraction(1)
    longest = random.choice([30, 40])
    runs = [Fraction(0)]
    if trade in ("turned", "angles") or (trade == "millimetres" and random.random() < 0.5):
        runs += [Fraction(5, 2) * unit]
    if trade == "angles":
        runs += [Fraction(9, 4)]
    distinct = random.randint(1, 5)
    pieces = tuple(
        Piece(
            f"piece {index}",
            Fraction(random.randint(32, 4 * longest - 8), 4) * unit,
            random.randint(1, 3 if distinct < 4 else 2),
            left=random.choice(runs),
            right=random.choice(runs),
        )
        for index in range(distinct)
    )
    sticks = tuple(
        StickKind(
            f"stick {index}",
            (longest + 10 * index) * (Fraction(1) if random.random() < 0.5 else unit),
            random.choice([500, 500 + 100 * index, 480 + 130 * index, 0]),
            random.choice([None, None, 2, 3]) if trade in ("capped", "defects") else None,
            _defects(random, longest) if trade == "defects" else (),
        )
        for index in range(random.randint(1, 3))
    )
    remnants = tuple(
        Remnant(
            f"remnant {index}",
            Fraction(random.randint(15, 60)),
            random.choice([0, 0, 100]),
            end_trim=random.choice([None, Fraction(0)]),
        )
        for index in range(random.randint(0, 2) if trade in ("capped", "turned", "defects") else 0)
    )
    return Job(
        "small",
        pieces,
        sticks,
        remnants,
        end_trim=Fraction(1, 2),
        keep_length=Fraction(5),
        turnable=len(runs) > 1,
    )


def _defects(random: Random, longest: int) -> tuple[Defect, ...]:
    if random.random() < 0.4:
        return ()
    start = Fraction(random.randint(0, 2 * longest), 2)
    width = random.choice([Fraction(0), Fraction(1, 16), Fraction(1), Fraction(3)])
    return (Defect(start, min(Fraction(longest), start + width)),)


def house(windows: int, lengths: int, seed: int, turnable: bool = False, together: bool = False) -> Job:
    """Legs between 36 and 84 in, heads between 24 and 84 in, on sixteenths, mitred at the head."""
    random = Random(f"house {windows} {lengths} {seed}")
    legs = random.sample(range(36 * 16, 84 * 16 + 1), lengths)
    heads = random.sample(range(24 * 16, 84 * 16 + 1), lengths)
    width = Fraction(5, 2)
    pieces: list[Piece] = []
    for number in range(windows):
        leg, head = Fraction(random.choice(legs), 16), Fraction(random.choice(heads), 16)
        opening = f"W{number}"
        pieces += [
            Piece(f"{opening}.left", leg, 1, opening, right=width),
            Piece(f"{opening}.right", leg, 1, opening, left=width),
            Piece(f"{opening}.head", head, 1, opening, width, width),
        ]
    return Job("casing", tuple(pieces), YARD, turnable=turnable, together=together)
