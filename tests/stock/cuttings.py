"""Small cuttings drawn from a seed, of every kind the trade knows, and houses like those people send."""

from dataclasses import replace
from fractions import Fraction
from math import radians, tan
from random import Random

from longpoint.stock import Cutting, StickKind, StickOnHand, Stretch, Wanted, eaten

TRADES = ("plain", "capped", "turned", "angles", "defects", "millimeters")
CUT_TRADES = (
    "mitered",
    "molded angles",
    "shared",
    "shared angles",
    "square first",
    "shared square first",
    "knotty",
)
MILLIMETER = Fraction(5, 127)
KERF = Fraction(1, 8)
MARK = 1_000_000
WIDE = 2.5  # inches, the width of the pieces in cuttings whose ends have angles
ANGLES = {
    Fraction(round(WIDE * tan(radians(angle)) * MARK), MARK): angle for angle in (0.0, 45.0, 42.0, 30.0)
}
RUNS = tuple(ANGLES)  # inches along the stick at these angles
YARD = tuple(
    StickKind(f"{feet} ft", Fraction(12 * feet), price)
    for feet, price in ((8, 800), (10, 990), (12, 1176), (14, 1358), (16, 1536))
)


def small_cutting(trade: str, seed: int) -> Cutting:
    """A cutting of at most ten pieces, small enough to try everything."""
    random = Random(f"{trade} {seed}")
    unit = MILLIMETER * 25 if trade == "millimeters" else Fraction(1)
    longest = random.choice([30, 40])
    runs = [Fraction(0)]
    if trade in ("turned", "angles") or (trade == "millimeters" and random.random() < 0.5):
        runs += [Fraction(5, 2) * unit]
    if trade == "angles":
        runs += [Fraction(9, 4)]
    distinct = random.randint(1, 5)
    pieces = tuple(
        Wanted(
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
    lengths_on_hand = tuple(
        StickOnHand(
            f"length on hand {index}",
            Fraction(random.randint(15, 60)),
            random.choice([0, 0, 100]),
            end_trim=random.choice([None, Fraction(0)]),
        )
        for index in range(random.randint(0, 2) if trade in ("capped", "turned", "defects") else 0)
    )
    return Cutting(
        "small",
        pieces,
        sticks,
        lengths_on_hand,
        end_trim=Fraction(1, 2),
        keep_length=Fraction(5),
        turnable=len(runs) > 1,
    )


def small_cutting_with_cuts(trade: str, seed: int) -> Cutting:
    """A cutting of at most ten pieces, every end of which says what its cut eats."""
    random = Random(f"{trade} {seed}")
    runs = [*RUNS[:1], *RUNS] if "angles" in trade or trade == "knotty" else [*RUNS[:1], *RUNS[:2]]
    longest = random.choice([30, 40])
    pieces = []
    for index in range(random.randint(1, 5)):
        left, right = random.choice(runs), random.choice(runs)
        pieces.append(
            Wanted(
                f"piece {index}",
                Fraction(random.randint(32, 4 * longest - 8), 4),
                random.randint(1, 2),
                left=left,
                right=right,
                left_eats=eaten(KERF, ANGLES[left]),
                right_eats=eaten(KERF, ANGLES[right]),
            )
        )
    # Sticks that just hold some of the pieces, or just do not.
    sticks = []
    for index in range(random.randint(1, 3)):
        some = random.choices(pieces, k=random.randint(2, 3))
        length = sum((piece.length + _gap(random, piece) for piece in some[1:]), some[0].length)
        length += 1 - random.choice([0, 0, 1]) * Fraction(1, MARK)
        sticks.append(
            StickKind(
                f"stick {index}",
                length,
                random.choice([100, 110]) * len(some),
                defects=_defects(random, int(length)) if trade == "knotty" and random.random() < 0.5 else (),
            )
        )
    sticks.append(StickKind("long", max(piece.length for piece in pieces) + 4, 170))
    lengths_on_hand = tuple(
        StickOnHand(f"length on hand {index}", Fraction(random.randint(15, 60)), random.choice([0, 100]))
        for index in range(random.randint(0, 2))
    )
    return Cutting(
        "small",
        tuple(pieces),
        tuple(sticks),
        lengths_on_hand,
        kerf=KERF,
        keep_length=Fraction(5),
        turnable="shared" in trade or trade == "knotty",
        square_first="square first" in trade,
    )


def _gap(random: Random, piece: Wanted) -> Fraction:
    """What may lie before that piece: a square cut, an angled one, or one that is shared."""
    eats = max(piece.left_eats or KERF, piece.right_eats or KERF)
    return random.choice([KERF, eats, eats, eats - max(piece.left, piece.right)])


def _defects(random: Random, longest: int) -> tuple[Stretch, ...]:
    if random.random() < 0.4:
        return ()
    start = Fraction(random.randint(0, 2 * longest), 2)
    width = random.choice([Fraction(0), Fraction(1, 16), Fraction(1), Fraction(3)])
    return (Stretch(start, min(Fraction(longest), start + width)),)


def house(
    windows: int, lengths: int, seed: int, turnable: bool = False, together: bool = False, eats: bool = False
) -> Cutting:
    """Legs between 36 and 84 in, heads between 24 and 84 in, on sixteenths, mitered at the head."""
    random = Random(f"house {windows} {lengths} {seed}")
    legs = random.sample(range(36 * 16, 84 * 16 + 1), lengths)
    heads = random.sample(range(24 * 16, 84 * 16 + 1), lengths)
    width = Fraction(5, 2)
    cut = eaten(KERF, 45) if eats else None
    pieces: list[Wanted] = []
    for number in range(windows):
        leg, head = Fraction(random.choice(legs), 16), Fraction(random.choice(heads), 16)
        opening = f"W{number}"
        pieces += [
            Wanted(f"{opening}.left", leg, 1, opening, right=width, right_eats=cut),
            Wanted(f"{opening}.right", leg, 1, opening, left=width, left_eats=cut),
            Wanted(f"{opening}.head", head, 1, opening, width, width, cut, cut),
        ]
    return Cutting("casing", tuple(pieces), YARD, turnable=turnable, together=together)


THREE = tuple(
    StickKind(f"{feet} ft", Fraction(12 * feet), price) for feet, price in ((8, 899), (10, 1249), (16, 1999))
)
FIVE = tuple(
    StickKind(f"{feet} ft", Fraction(12 * feet), price)
    for feet, price in ((8, 1001), (10, 1249), (12, 1502), (14, 1748), (16, 2001))
)


def readings(
    windows: int,
    seed: int,
    sticks: tuple[StickKind, ...] = THREE,
    on_hand: int = 0,
    turnable: bool = False,
    eats: bool = True,
) -> Cutting:
    """Windows that are measured one by one, so that hardly two lengths are alike, and lengths on hand that differ."""
    random = Random(f"readings {windows} {seed}")
    width = Fraction(5, 2)
    cut = eaten(KERF, 45) if eats else None
    pieces: list[Wanted] = []
    for number in range(windows):
        leg, head = (
            Fraction(random.randint(36 * 16, 84 * 16), 16),
            Fraction(random.randint(24 * 16, 84 * 16), 16),
        )
        opening = f"W{number}"
        pieces += [
            Wanted(f"{opening}.left", leg, 1, opening, right=width, right_eats=cut),
            Wanted(f"{opening}.right", leg, 1, opening, left=width, left_eats=cut),
            Wanted(f"{opening}.head", head, 1, opening, width, width, cut, cut),
        ]
    lengths = random.sample(range(24 * 16, 120 * 16), on_hand)
    lengths_on_hand = tuple(
        StickOnHand(f"on hand {n}", Fraction(length, 16)) for n, length in enumerate(lengths)
    )
    return Cutting("casing", tuple(pieces), sticks, lengths_on_hand, turnable=turnable)


def spread(lengths: int, seed: int, sticks: tuple[StickKind, ...] = YARD) -> Cutting:
    """So many lengths between 24 and 84 in, no two alike, on hundredths of an inch."""
    random = Random(f"spread {lengths} {seed}")
    chosen = random.sample(range(2400, 8400), lengths)
    return Cutting(
        "casing", tuple(Wanted(f"{n}", Fraction(length, 100)) for n, length in enumerate(chosen)), sticks
    )


def crooked(windows: int, seed: int, turnable: bool = True) -> Cutting:
    """Windows out of square, each of whose head corners has an angle of its own, measured one by one."""
    random = Random(f"crooked {windows} {seed}")
    pieces: list[Wanted] = []
    for number in range(windows):
        miters = [45 + random.choice([0, random.uniform(-1, 1)]) for _ in range(2)]
        runs = [Fraction(round(WIDE * tan(radians(miter)) * MARK), MARK) for miter in miters]
        eats = [eaten(KERF, miter) for miter in miters]
        left, right, head = (Fraction(random.randint(24 * 16, 84 * 16), 16) for _ in range(3))
        pieces += [
            Wanted(f"W{number}.left", left, 1, f"W{number}", right=runs[0], right_eats=eats[0]),
            Wanted(f"W{number}.right", right, 1, f"W{number}", left=runs[1], left_eats=eats[1]),
            Wanted(f"W{number}.head", head, 1, f"W{number}", runs[0], runs[1], *eats),
        ]
    return Cutting("casing", tuple(pieces), THREE, turnable=turnable)


def rack(windows: int, on_hand: int, seed: int) -> Cutting:
    """Windows measured one by one, with lengths on hand that all differ, some knotty, and few of the longest stick."""
    cutting = readings(windows, seed, on_hand=on_hand)
    random = Random(f"rack {windows} {on_hand} {seed}")
    lengths_on_hand = tuple(
        replace(one, defects=_defects(random, int(one.length))) if random.random() < 0.3 else one
        for one in cutting.lengths_on_hand
    )
    return replace(
        cutting,
        lengths_on_hand=lengths_on_hand,
        sticks=(*cutting.sticks[:2], replace(cutting.sticks[2], available=windows // 10)),
    )
