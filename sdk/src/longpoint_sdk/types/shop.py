"""Types of the document's part "shop". Generated; do not edit."""

from __future__ import annotations

from typing import TYPE_CHECKING, Literal

from longpoint_sdk.types._base import LengthText, MoneyText, Request
from longpoint_sdk.types.basics import OrderKind

if TYPE_CHECKING:
    MaterialCode = Literal[
        "abrasive",
        "caulk",
        "clear_finish",
        "filler",
        "glue",
        "nails_10d",
        "nails_2d",
        "nails_3d",
        "nails_4d",
        "nails_5d",
        "nails_6d",
        "nails_7d",
        "nails_8d",
        "nails_9d",
        "paint",
        "primer",
        "putty",
        "shims",
        "stain",
        "tape",
    ]
    """What is bought beside sticks, and the unit it is counted in: nails; glue, caulk, filler, putty, primer,
    paint, stain and clear finish in fluid ounces; shims; tape in feet; abrasive in sheets.
    """
else:
    MaterialCode = str


class Package(Request, frozen=True, kw_only=True):
    """Something sold. Without a price it is bought and costs nothing in the answer.

    Attributes:
        material: The material that it holds.
        name: The name that it is sold under. A name on one line, not starting with a space.
        size: How much it holds, in the material's unit: nails by the piece; glue, caulk, filler, putty,
            primer, paint, stain and clear finish in fluid ounces; tape in feet; abrasive in sheets.
        price: The price of one package. An amount of money as decimal text, at most two places.
    """

    material: MaterialCode
    name: str
    size: float
    price: MoneyText | None = None


class Rates(Request, frozen=True, kw_only=True):
    """The shop's own rates; the answer names the source of each rate it used.

    Attributes:
        angle_seconds: The time to swing the saw to an angle off its detents; 12 s when left out (common
            practice, no source).
        bevel_seconds: The time to tilt the blade; 15 s when left out (common practice, no source).
        block_nails: The number of nails in a plinth or corner block; 4 when left out (common practice, no
            source).
        carry_seconds: The time to carry a piece to another saw, or back to one; 15 s when left out (common
            practice, no source).
        caulk_bead: The width of the caulk's bead, from the corner of casing and wall to the bead's edge on
            either; 3/16 in when left out (common practice, no source).
        caulk_depth: The depth that the bead goes into the gap behind the casing, from the casing's edge; 1/8
            in when left out (common practice, no source).
        caulk_gap: The width of the gap behind the casing that the caulk fills, from wall to casing; 1/16 in
            when left out (common practice, no source).
        caulk_minutes: The time to caulk 1 ft; 0.3 min when left out (common practice, no source).
        caulk_wait: The wait until caulk can be painted; 1 h when left out (common practice, no source; the
            label rules).
        caulk_waste: The share of the caulk in a tube that is left in tube and nozzle; 10% when left out
            (common practice, no source).
        clear_coats: The number of coats of clear finish on faces and edges of stain-grade trim; 3 when left
            out (common practice, no source).
        clear_film: The thickness of a dry coat of clear finish (1 mil is 0.001 in); 1 mil when left out
            (common practice, no source; the label rules).
        clear_minutes: The time to put one coat of clear finish on 1 ft2, on the bench; 1 min when left out
            (common practice, no source).
        clear_solids: The clear finish that stays when it is dry, by volume; 30% when left out (common
            practice, no source; the label rules).
        clear_wait: The wait between coats of clear finish, and after the last; 3 h when left out (common
            practice, no source; the label rules).
        corner_nails: The number of nails across a mitered corner; 2 when left out (common practice, no
            source).
        cut_seconds: The time to make a cut; 5 s when left out (common practice, no source).
        detent_seconds: The time to swing the saw to a detent; 4 s when left out (common practice, no source).
        drywall: The thickness of the drywall, from the studs to the wall's face in the room; 1/2 in when left
            out (common practice, no source).
        fence_seconds: The time to set a rip fence; 60 s when left out (common practice, no source).
        fill_minutes: The time to fill the hole over one nail with filler and to sand it; 0.15 min when left
            out (common practice, no source).
        filler_wait: The wait until filler can be sanded; 1 h when left out (common practice, no source; the
            label rules).
        filler_waste: The filler lost, proud and sanded off or dried up, as a share of what the nail holes
            hold; 100% when left out (common practice, no source).
        final_coat_minutes: The time to put the last coat on 1 ft2, at the wall; 1.5 min when left out (common
            practice, no source).
        glue_film: The thickness of the film of wet glue on mitered joints and returns; 6 mil when left out
            (common practice, no source).
        glue_waste: The glue squeezed out and wiped off, beside what stays in the joints; 50% when left out
            (common practice, no source).
        hole_depth: The depth of that hole, from the wood's face in to the nail's head; 1/8 in when left out
            (common practice, no source).
        hole_width: The width across the hole that a nail leaves when it is set below the face; 1/8 in when
            left out (common practice, no source).
        inner_nail: The nail's size of the nails that go into the jamb; 0 takes the shortest that reaches; 0
            penny when left out (common practice, no source).
        install_minutes: The time to fit a piece at the wall; 5 min when left out (common practice, no
            source).
        jamb_penetration: The least depth that a nail goes into the jamb's edge; 3/4 in when left out (common
            practice, no source; gives casing of 5/8 to 3/4 in the 4d nails of NAVEDTRA 14044).
        label_seconds: The time to tick and label a piece; 5 s when left out (common practice, no source).
        mark_seconds: The time to measure and mark a length; 10 s when left out (common practice, no source).
        measure_minutes: The time to measure an opening; 10 min when left out (common practice, no source).
        nail_end_distance: The distance from a piece's end to its first nail; 3 in when left out (common
            practice, no source).
        nail_minutes: The time to drive and set a nail; 0.2 min when left out (common practice, no source).
        nail_spacing: The distance from nail to nail along casing and apron; 16 in when left out (NAVEDTRA
            14044: casing nailed in pairs about 16 in apart).
        nail_waste: The share of the nails that is bent or dropped; 10% when left out (common practice, no
            source).
        notch_seconds: The time to saw out a notch at one end; 90 s when left out (common practice, no
            source).
        outer_nail: The nail's size for what goes into studs; 0 takes the shortest that reaches; 0 penny when
            left out (common practice, no source).
        paint_coats: The number of coats of paint on faces and edges; 2 when left out (common practice, no
            source).
        paint_film: The thickness of a dry coat of paint (1 mil is 0.001 in); 1.4 mil when left out (common
            practice, no source; the label rules).
        paint_minutes: The time to put one coat on 1 ft2, bundled on the bench; 1 min when left out (common
            practice, no source).
        paint_solids: The paint that stays when it is dry, by volume; 35% when left out (common practice, no
            source; the label rules).
        paint_wait: The wait between coats of paint, and after the last; 4 h when left out (common practice,
            no source; the label rules).
        paint_waste: The share of the paint that is left in brush, roller and can; 15% when left out (common
            practice, no source).
        painted_backs: The number of coats of primer on the backs, which get no paint; 0 when left out (common
            practice, no source).
        pick_up_seconds: The time to pick up a long stick and put it down; 20 s when left out (common
            practice, no source).
        primer_coats: The number of coats of primer on faces and edges; 1 when left out (common practice, no
            source).
        primer_film: The thickness of a dry coat of primer (1 mil is 0.001 in); 1.5 mil when left out (common
            practice, no source; the label rules).
        primer_solids: The primer that stays when it is dry, by volume; 35% when left out (common practice, no
            source; the label rules).
        primer_wait: The wait until primer can be sanded; 2 h when left out (common practice, no source; the
            label rules).
        profile_girth: The width of a molded face, measured along its curves, as a share of its flat width;
            110% when left out (common practice, no source).
        putty_minutes: The time to press matched putty into the hole over one nail; 0.25 min when left out
            (common practice, no source).
        rip_minutes: The time to rip 1 ft; 0.5 min when left out (common practice, no source).
        rout_minutes: The time to rout 1 ft of a stool's nosing; 1 min when left out (common practice, no
            source).
        sandings: The number of sandings before the first coat and between coats; 2 when left out (common
            practice, no source).
        sheet_area: The area sanded with one sheet; 40 ft2 when left out (common practice, no source).
        shim_space: The space from a door's jamb to the stud, packed with shims; 1/2 in when left out (common
            practice, no source).
        shims_per_opening: The number of tapered shims under stool and jamb; 4 when left out (common practice,
            no source).
        short_cut_seconds: The time to make a careful cut of a short piece; 20 s when left out (common
            practice, no source).
        stain_coats: The number of coats of stain on faces and edges of stain-grade trim; 1 when left out
            (common practice, no source).
        stain_covers: The area that a gallon of stain covers; 400 ft2 when left out (common practice, no
            source; the label rules).
        stain_minutes: The time to wipe a coat of stain on 1 ft2 and off again; 1.5 min when left out (common
            practice, no source).
        stain_wait: The wait until stain can be coated; 8 h when left out (common practice, no source; the
            label rules).
        stool_nail_spacing: The distance from nail to nail along the stool; 12 in when left out (common
            practice, no source).
        stop_seconds: The time to set a stop block; 30 s when left out (common practice, no source).
        stud_penetration: The least depth that a nail goes into stud or sill; 3/4 in when left out (common
            practice, no source; gives casing of 5/8 to 3/4 in the 6d nails of NAVEDTRA 14044).
        tape_waste: The share of the tape that goes to overlaps and corners; 10% when left out (common
            practice, no source).
    """

    angle_seconds: float | None = None
    bevel_seconds: float | None = None
    block_nails: int | None = None
    carry_seconds: float | None = None
    caulk_bead: LengthText | None = None
    caulk_depth: LengthText | None = None
    caulk_gap: LengthText | None = None
    caulk_minutes: float | None = None
    caulk_wait: float | None = None
    caulk_waste: float | None = None
    clear_coats: int | None = None
    clear_film: float | None = None
    clear_minutes: float | None = None
    clear_solids: float | None = None
    clear_wait: float | None = None
    corner_nails: int | None = None
    cut_seconds: float | None = None
    detent_seconds: float | None = None
    drywall: LengthText | None = None
    fence_seconds: float | None = None
    fill_minutes: float | None = None
    filler_wait: float | None = None
    filler_waste: float | None = None
    final_coat_minutes: float | None = None
    glue_film: float | None = None
    glue_waste: float | None = None
    hole_depth: LengthText | None = None
    hole_width: LengthText | None = None
    inner_nail: int | None = None
    install_minutes: float | None = None
    jamb_penetration: LengthText | None = None
    label_seconds: float | None = None
    mark_seconds: float | None = None
    measure_minutes: float | None = None
    nail_end_distance: LengthText | None = None
    nail_minutes: float | None = None
    nail_spacing: LengthText | None = None
    nail_waste: float | None = None
    notch_seconds: float | None = None
    outer_nail: int | None = None
    paint_coats: int | None = None
    paint_film: float | None = None
    paint_minutes: float | None = None
    paint_solids: float | None = None
    paint_wait: float | None = None
    paint_waste: float | None = None
    painted_backs: int | None = None
    pick_up_seconds: float | None = None
    primer_coats: int | None = None
    primer_film: float | None = None
    primer_solids: float | None = None
    primer_wait: float | None = None
    profile_girth: float | None = None
    putty_minutes: float | None = None
    rip_minutes: float | None = None
    rout_minutes: float | None = None
    sandings: int | None = None
    sheet_area: float | None = None
    shim_space: LengthText | None = None
    shims_per_opening: int | None = None
    short_cut_seconds: float | None = None
    stain_coats: int | None = None
    stain_covers: float | None = None
    stain_minutes: float | None = None
    stain_wait: float | None = None
    stool_nail_spacing: LengthText | None = None
    stop_seconds: float | None = None
    stud_penetration: LengthText | None = None
    tape_waste: float | None = None


class Saw(Request, frozen=True, kw_only=True):
    """The shop's own limits at the saw. Common practice, no source.

    Attributes:
        angle_step: It says how finely the saw's scale can be set, in degrees.
        detents: The miters at which its table clicks in, degrees; 0, 15, 22.5, 31.6 and 45 when left out.
        sharpest_miter: The most that the saw's table turns off a square cut, degrees.
        smallest_held: The shortest workpiece that is held by hand at the saw, measured from end to end. A
            length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m.
            Without a unit it is in the request's `unit`, when the request has one.
        smallest_ripped: The shortest workpiece that is pushed through the table saw by hand, measured from
            end to end. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm,
            cm or m. Without a unit it is in the request's `unit`, when the request has one.
    """

    angle_step: float = 0.1
    detents: list[float] | None = None
    sharpest_miter: float = 50.0
    smallest_held: LengthText = "6 in"
    smallest_ripped: LengthText = "12 in"


class Wages(Request, frozen=True, kw_only=True):
    """It says what an hour of hands-on work costs. Without either, labor has its hours and no money.

    Attributes:
        hour: An hour of any task that has no wage of its own. An amount of money as decimal text, at most two
            places.
        tasks: The tasks that cost otherwise.
    """

    hour: MoneyText | None = None
    tasks: dict[str, MoneyText] = {}


class Shop(Request, frozen=True, kw_only=True):
    """The settings of the shop: its rates, packages, wages and saw, and the order it cuts in.

    Attributes:
        build_year: When the house was built: paint of before 1978, or of unknown age, may hold lead.
        order: The order to cut in; when left out, the one of three that takes least by its rates.
        packages: What is sold and at which price; a material named here is bought in these alone, up to four
            of each.
        rates: The rates of the shop, where they are not the usual ones.
        saw: The limits of the shop at the saw.
        wages: They say what an hour of work costs.
    """

    build_year: int | None = None
    order: OrderKind | None = None
    packages: list[Package] = []
    rates: Rates = Rates()
    saw: Saw = Saw()
    wages: Wages = Wages()
