// Requests and answers of Longpoint 0.1.0. Generated from the OpenAPI document; do not edit.

/** A length as text with its unit, as a tape reads: `30 5/8 in`, `778 mm`. */
export type LengthText = string;

/** One page of a list; `next` is the cursor of the next one, null on the last. */
export interface Page<T> {
  items: T[];
  next: string | null;
}

/** Conditions that wood has come to rest in: the air's, or what a meter showed in the wood. */
export interface Air {
  /** Of the wood as a meter showed it, percent. */
  moisture_content?: number | null;
  /** What to call them. A name on one line, not starting with a space. */
  name?: string;
  /** Of the air, percent. */
  relative_humidity?: number | null;
  /** Of the air, in degrees of the scale. */
  temperature?: number | null;
}

/** The apron under a stool. */
export interface Apron {
  /** Down the wall. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  width: LengthText;
  /** Off the wall. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  thickness: LengthText;
  /** Of angled ends, cut back below the stool. Degrees off a square cut. */
  end_angle?: number;
  /** Mitered returns, square cuts, or cut back at an angle. */
  ends?: ApronEnds;
  /** Its name at the yard. A name on one line, not starting with a space. */
  profile?: string;
}

/** An apron's end: returned to the wall, cut square, or cut back at an angle below the stool. */
export type ApronEnds = "angled" | "mitered_return" | "square";

/** An apron's readings and choices: it ends flush with the casing's outside edges. */
export interface ApronRequest {
  /** Off the wall. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  thickness: LengthText;
  /** Jamb to jamb. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  jamb_width: LengthText;
  /** Jamb left showing beside the casing. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  reveal: LengthText;
  /** Across the face of the side casing. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  casing_width: LengthText;
  /** Of angled ends, cut back below the stool. Degrees off a square cut. */
  end_angle?: number;
  /** Mitered returns, square cuts, or cut back at an angle. */
  ends?: ApronEnds;
  /** Its name at the yard. A name on one line, not starting with a space. */
  profile?: string;
  /** How lengths of the answer are rounded. */
  rounding?: Rounding;
  /** The unit of lengths that are written without one; without it each must carry its own. */
  unit?: Unit | null;
  /** Down the wall. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  width?: LengthText;
}

/** A band round mitered casing. */
export interface BackBand {
  /** Across its face. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  width: LengthText;
  /** Off the wall. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  thickness: LengthText;
  /** How far it lies over the casing's face. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  lap?: LengthText;
  /** Its name at the yard. A name on one line, not starting with a space. */
  profile?: string;
}

/** What became of an opening. */
export type Became = "changed" | "gone" | "group_changed" | "new" | "trim_changed";

/** What the trim stands on. */
export type Bottom = "casing" | "floor" | "plinth" | "stool";

/** Packages of one size. */
export interface Bought {
  /** Its name. */
  package: string;
  /** How much one holds, in the material's unit. */
  size: number;
  /** How many to buy. */
  count: number;
  /** Of one; null where none was given. */
  price: string | null;
  /** Of them all; null where no price was given. */
  cost: string | null;
}

/** How the boards of a jamb extension meet: head over the legs, or mitered. */
export type BoxCorners = "butted" | "mitered";

/** A line for the yard. */
export interface BuyLine {
  /** What to ask for. */
  profile: string;
  /** Of each stick. */
  length: MarkedLength;
  /** How many of them. */
  quantity: number;
  /** Of one. An amount of money as decimal text with two places. */
  price: string;
  /** Of them all. An amount of money as decimal text with two places. */
  cost: string;
}

/** Casing stock. */
export interface Casing {
  /** Across the face. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  width: LengthText;
  /** At the thick (outer) edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  thickness: LengthText;
  /** Its name at the yard. A name on one line, not starting with a space. */
  profile?: string;
}

/** Casing's readings and choices, for plumb sides. Give `jamb_height`, or `left_jamb_height` and `right_jamb_height`. */
export interface CasingRequest {
  /** Jamb to jamb. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  jamb_width: LengthText;
  /** Jamb left showing beside the casing. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  reveal: LengthText;
  /** Across the face. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  casing_width: LengthText;
  /** What the casing stands on. */
  bottom?: Bottom;
  /** At the thick (outer) edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  casing_thickness?: LengthText;
  /** Left under a door's legs. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  floor_clearance?: LengthText;
  /** Mitered or butted. */
  head_style?: HeadStyle;
  /** Stool top, sill jamb or floor to the underside of the head jamb. */
  jamb_height?: LengthText | null;
  /** The same along the left jamb. */
  left_jamb_height?: LengthText | null;
  /** How far a butted head runs past the legs' outside edges. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  overhang?: LengthText;
  /** Of plinth blocks under a door's legs, from the floor up. */
  plinth_height?: LengthText | null;
  /** The casing's name at the yard. A name on one line, not starting with a space. */
  profile?: string;
  /** The same along the right jamb. */
  right_jamb_height?: LengthText | null;
  /** How lengths of the answer are rounded. */
  rounding?: Rounding;
  /** The unit of lengths that are written without one; without it each must carry its own. */
  unit?: Unit | null;
}

/** What to know before starting: it informs and defers, and approves nothing. */
export interface Caution {
  /** A stable name for it. */
  code: string;
  /** The caution, in words. */
  text: string;
  /** What it leans on. */
  source: string;
  /** Marks of the openings it was raised for; empty for the whole house. */
  applies_to: string[];
  /** The pieces it was raised for, where it bears on single cuts. */
  pieces: PieceName[];
}

/** How sure an opening's readings are. */
export type Certainty = "confirmed" | "estimated" | "measured";

/** What changed between two revisions. */
export interface Changes {
  /** The earlier one. */
  from_revision: number;
  /** The later one. */
  to_revision: number;
  /** What was said of the house as a whole differently. */
  house: FieldChange[];
  /** Each opening that changed, by its place in the schedule. */
  openings: OpeningChange[];
  /** Each group of which a shared piece changed, by its mark. */
  groups: GroupChange[];
  /** How many openings stand in both and did not change. */
  unchanged_openings: number;
}

/** A reading that the shape did not need, against what the others make of it. */
export interface Check {
  /** Its field. */
  reading: string;
  /** As read. */
  measured: string;
  /** As the others have it. */
  computed: string;
  /** Measured less computed. */
  difference: string;
  /** Whether that is no more than a tape's, or an angle finder's, own error. */
  agrees: boolean;
}

/** Some of a schedule's openings. */
export interface Chosen {
  /** Every opening there is. */
  all?: boolean;
  /** By their marks. */
  openings?: string[];
  /** Every opening of these rooms. */
  rooms?: string[];
}

/** That somebody is about to cut a stick. */
export interface Claim {
  /** Who, or at which saw. A name on one line, not starting with a space. */
  by: string;
  /** For how long; nobody else can cut the stick until then. */
  seconds?: number;
}

/** What is in the way, each to where the next thing begins; left out where nothing is. */
export interface Clearances {
  /** From the head jamb's underside up. */
  above?: LengthText | null;
  /** From the stool's top, or the base, down. */
  below?: LengthText | null;
  /** From the left jamb's inside face to a wall, a cabinet, another thing. */
  left?: LengthText | null;
  /** From the left jamb's inside face to the next opening's jamb face. */
  left_neighbor?: LengthText | null;
  /** From the right jamb's inside face. */
  right?: LengthText | null;
  /** From the right jamb's inside face to the next opening's jamb face. */
  right_neighbor?: LengthText | null;
}

/** A compound cut. */
export interface CompoundCut {
  /** The saw's table off a square cut. */
  miter_degrees: number;
  /** The blade's tilt from upright. */
  bevel_degrees: number;
}

/** The wood, the air its joints are made in, and what they will live through. */
export interface Conditions {
  /** The wood. */
  species: Species;
  /** Where the joint is made. */
  installed: Air;
  /** Each set of conditions it will live through. */
  seasons: Air[];
  /** How the boards were sawn. */
  grain?: Grain;
  /** The thermometer's. */
  scale?: Scale;
}

/** A square block at each corner, at least as wide as the casing it ends. */
export interface CornerBlock {
  /** Of each face. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  width: LengthText;
  /** Off the wall. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  thickness: LengthText;
  /** Its name at the yard. A name on one line, not starting with a space. */
  profile?: string;
}

/** One inside corner of the jamb. */
export interface CornerReading {
  /** The two sides that meet there, counterclockwise. */
  sides: [string];
  /** The inside angle. */
  degrees: number;
  /** How far that is from 90; positive where it is wider. */
  off_square_degrees: number;
  /** The joint gap that cutting for a square corner would leave; null where the corner is far from square. */
  gap_if_square: string | null;
  /** Where it lies. */
  at: Point;
  /** The saw's setting for casing that leans, where its spring was given. */
  compound: CompoundCut | null;
}

/** Every corner, and the casing cut to them. `suspects` are named where readings disagree, the likeliest wrong one first: one reading too many shows that something is wrong, not for certain which. */
export interface Corners {
  /** Each corner, the base's right-hand one first. */
  corners: CornerReading[];
  /** The casing by these corners, with the saw's reading at each end. */
  pieces: Piece[];
  /** Whether no joint would open by more than the square gap were all corners taken as square. */
  square: boolean;
  /** The diagonal or angle that decided the shape; null for other shapes. */
  computed_by: string | null;
  /** Readings that the shape did not need, against it. */
  checks: Check[];
  /** Readings that alone could explain a disagreement. */
  suspects: Suspect[];
}

/** Readings of an opening that may be out of square, and the casing that is to go round it. */
export interface CornersRequest {
  /** What the tape read. */
  readings: Readings;
  /** Across the face. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  casing_width: LengthText;
  /** Jamb left showing beside the casing. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  reveal: LengthText;
  /** What the casing stands on. */
  bottom?: Bottom;
  /** At the thick (outer) edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  casing_thickness?: LengthText;
  /** The head's own, where it is not that of the legs. */
  head_casing_width?: LengthText | null;
  /** The casing's name at the yard. A name on one line, not starting with a space. */
  profile?: string;
  /** How lengths of the answer are rounded. */
  rounding?: Rounding;
  /** The angle between a leaning casing's back and the upright of the wall's plane: 90 lies flat, and gives no bevel. */
  spring_degrees?: number | null;
  /** The joint gap below which the opening is called square. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  square_gap?: LengthText;
  /** The unit of lengths that are written without one; without it each must carry its own. */
  unit?: Unit | null;
}

/** A line of the whole-house view. */
export interface CostLine {
  /** Stock, waste, kept_offcut, consumable or labor. */
  category: string;
  /** The profile, the material's code or the task. */
  name: string;
  /** Of the whole house. An amount of money as decimal text with two places. */
  amount: string;
  /** Each opening's amount, in the order of `openings`; they add up to `amount`. */
  by_opening: string[];
}

/** The same money by line, by opening and by room: each view adds up to the same cent. */
export interface CostSheet {
  /** Of every amount. */
  currency: string;
  /** The whole house, by category; of what is in `unpriced` it holds nothing. */
  total: CostTotals;
  /** By what it is spent on. */
  lines: CostLine[];
  /** By opening. */
  openings: OpeningCost[];
  /** By room. */
  rooms: RoomCost[];
  /** What had no price and so is not in the sum. */
  unpriced: Unpriced[];
}

/** Amounts by category. */
export interface CostTotals {
  /** What is in pieces. An amount of money as decimal text with two places. */
  stock: string;
  /** Kerfs, trims and short offcuts. An amount of money as decimal text with two places. */
  waste: string;
  /** Offcuts and lengths that are left. An amount of money as decimal text with two places. */
  kept_offcut: string;
  /** Materials beside the sticks. An amount of money as decimal text with two places. */
  consumable: string;
  /** Hands-on hours at the wages given. An amount of money as decimal text with two places. */
  labor: string;
  /** All of them. An amount of money as decimal text with two places. */
  total: string;
}

/** An end's cut: square; a miter, the table turned; a bevel, the blade tilted; compound, both. */
export type CutKind = "bevel" | "compound" | "miter" | "square";

/** A cut list: every opening's pieces, the sticks they come from, what to buy and what is left over. The sections that were not asked for are null. */
export interface CutListAnswer {
  /** Each opening's pieces. */
  openings: OpeningAnswer[];
  /** The sticks of each profile and what is cut from each. */
  plans: ProfilePlan[];
  /** What to buy, a line for each profile and length. */
  buy: BuyLine[];
  /** What the sticks cost; of profiles in `unstocked` it holds nothing. An amount of money as decimal text with two places. */
  cost: string;
  /** Marks of the openings, and groups, that are held back or only estimated: no stick is cut for them yet. */
  held: string[];
  /** What their sticks are taken to cost, planned first-fit after the others and from what those leave. An amount of money as decimal text with two places. */
  cost_later: string;
  /** Profiles of theirs that the stock cannot give, so that `cost_later` holds nothing of them. */
  later_unpriced: string[];
  /** Of every amount. */
  currency: string;
  /** Whether no plan of any profile can be cheaper; false while a profile is unstocked. */
  proven: boolean;
  /** Profiles that pieces need and no stock was given for. */
  unstocked: string[];
  /** Profiles with stock from which nothing is cut. */
  unused_stock: string[];
  /** What goes back on the rack. */
  offcuts: LeftOver[];
  /** What was assumed or left out. */
  notes: string[];
  /** What to know before starting. */
  cautions: Caution[];
  /** The cuts in the order to make them. */
  saw_order: SawOrder | null;
  /** What to buy beside the sticks. */
  materials: Materials | null;
  /** Hands-on time, and drying waits. */
  hours: Hours | null;
  /** The money by line, by opening and by room. */
  cost_sheet: CostSheet | null;
}

/** A house or a part of one: openings, the trim they name, and the stock to cut from. With no stock, pieces are computed and no sticks. At most 50,000 pieces are worked out together, those of openings alike counted each, from at most 40,000 lengths on hand; their marks and profiles, each piece with its own, come to at most 4,000,000 bytes, and the seasons of all openings to 20,000. A sheet as HTML, PDF or SVG shows at most 2,500 pieces. */
export interface CutListRequest {
  /** The trim its openings name. */
  trim_specs: Record<string, Trim>;
  /** Its openings. */
  openings: HouseOpening[];
  /** Of every price; only repeated in the answer. ISO 4217 code. */
  currency?: string;
  /** Squared off each factory end. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  end_trim?: LengthText;
  /** Openings trimmed together, or joined units whose stool is too long for a stick. */
  groups?: HouseGroup[];
  /** Sections of the answer that are only worked out when asked for. */
  include?: Section[];
  /** An offcut this long or longer is kept. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  keep_length?: LengthText;
  /** What one cut eats. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  kerf?: LengthText;
  /** The wood, and the air its joints will live through: the answer then tells how far miters open. */
  movement?: Conditions | null;
  /** How long to search for cheaper sticks, all profiles together, where first-fit is not proven cheapest; 0 takes first-fit. */
  planning_seconds?: number;
  /** How lengths are rounded. */
  rounding?: Rounding;
  /** How the shop works. */
  shop?: Shop;
  /** What each profile can be cut from. */
  stock?: Stock[];
  /** The unit of lengths that are written without one; without it each must carry its own. */
  unit?: Unit | null;
}

/** One stick as it is cut. */
export interface CutStick {
  /** What sheets call it: a name stands for this one layout of one stick. */
  name: string;
  /** From end to end. */
  length: MarkedLength;
  on_hand: boolean;
  /** What it costs. An amount of money as decimal text with two places. */
  price: string;
  /** From its left end to its right. */
  pieces: PlacedPiece[];
  /** What remains. */
  offcut: MarkedLength;
  /** Whether that goes back on the rack. */
  kept: boolean;
}

/** Sticks that were cut just as they were planned. */
export interface CutSticks {
  /** Their names, as sheets and plans have them. */
  sticks: string[];
  /** Who cut them: needed for sticks that are claimed, by the name that claimed them. */
  by?: string | null;
}

/** What is sawn out of a stool's back edge between its ends, where it passes a mull or a stretch of wall. */
export interface Cutout {
  /** From the piece's left end as it lies on the saw. */
  at: MarkedLength;
  /** Along the piece. */
  length: MarkedLength;
  /** From the back edge at its left. */
  depth: MarkedLength;
  /** From the back edge at its right; None where it is the same. */
  end_depth: MarkedLength | null;
}

/** A stretch of a stick that no piece may touch. */
export interface Defect {
  /** From the stick's left end. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  start: LengthText;
  /** From the stick's left end. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  end: LengthText;
}

/** What was done with a piece. */
export type Done = "cut" | "installed" | "spoiled";

/** A door to be hung in a jamb made for it: the jamb's clear width and height follow from the door. The defaults are common practice. */
export interface Door {
  /** Of the door itself. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  width: LengthText;
  /** Of the door itself. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  height: LengthText;
  /** Bottom of the door to the bottom of its lowest hinge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  bottom_hinge?: LengthText;
  /** Left under the door. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  floor_gap?: LengthText;
  /** Left between the door's top and the head jamb. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  head_gap?: LengthText;
  /** Left between door and jamb at the hinges. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  hinge_gap?: LengthText;
  /** Of each. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  hinge_length?: LengthText;
  /** As seen from the room the trim is in. */
  hinge_side?: Hand;
  /** How many. */
  hinges?: number;
  /** How deep the head jamb is let into the legs. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  housing?: LengthText;
  /** Of the jamb stock, across the wall. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  jamb_depth?: LengthText;
  /** Of the jamb stock. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  jamb_thickness?: LengthText;
  /** The jamb stock's name at the yard. A name on one line, not starting with a space. */
  profile?: string;
  /** Of the framing, where it is to be checked. */
  rough_height?: LengthText | null;
  /** Of the framing, where it is to be checked. */
  rough_width?: LengthText | null;
  /** Left between door and jamb at the strike. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  strike_gap?: LengthText;
  /** Finished floor to the middle of the strike. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  strike_height?: LengthText;
  /** Of the door itself. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  thickness?: LengthText;
  /** Top of the door to the top of its top hinge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  top_hinge?: LengthText;
}

/** The stop a door closes against. */
export interface DoorStop {
  /** Across its face. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  width: LengthText;
  /** Off the jamb. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  thickness: LengthText;
  /** How its pieces meet. */
  corners?: BoxCorners;
  /** Its name at the yard. A name on one line, not starting with a space. */
  profile?: string;
}

/** One end of a piece as the saw makes it. The piece lies face up with its outer edge (the long-point edge of a mitered piece) against the fence. */
export interface End {
  /** The end as installed: a leg's foot or head, else the side it meets (left, right, head 2). */
  at: string;
  /** Which end of the piece that is as it lies on the saw. */
  on_saw: Hand | (string & {});
  /** Square, miter, bevel or compound. */
  cut: CutKind | (string & {});
  /** The saw's table off a square cut, never negative. */
  miter_degrees: number;
  miter_direction: Hand | (string & {}) | null;
  /** The blade's tilt from upright, never negative. */
  bevel_degrees: number;
  bevel_direction: Hand | (string & {}) | null;
  /** "outer" where the long point is on the outer edge, "inner" where it is on the inner edge, "back" or "face" for a bevel, None for a square cut. */
  long_edge: string | null;
  /** The notch at this end, None without one. */
  notch: Notch | null;
}

/** One thing that was wrong, where it was, and what to do about it. */
export interface Fault {
  /** A short stable name for the kind of fault, for programs. */
  code: string;
  /** A sentence for people: what was wrong and what to send instead. */
  detail: string;
  /** The column of a CSV body, as the file names it. */
  column: string | null;
  /** The header field at fault, when it is one. */
  header: string | null;
  /** The query or path parameter at fault, when it is one. */
  parameter: string | null;
  /** RFC 6901 JSON pointer into the body; "" is the whole body. Absent when it is not in the body. */
  pointer: string | null;
  /** The row of a CSV body, the first being 1; absent when it is not in one. */
  row: number | null;
}

/** One thing that was said differently. */
export interface FieldChange {
  /** Where, as a JSON pointer into the opening or the house. */
  pointer: string;
  /** What it was, as JSON; null when it was not there. */
  before: string | null;
  /** What it is, as JSON; null when it is not there. */
  after: string | null;
}

/** A number that something was computed from. */
export interface Figure {
  /** What it is, in words. */
  name: string;
  /** How much, in `unit`. */
  value: number;
  /** What it is counted in. */
  unit: string;
}

/** Something in the way, out of plane or out of level. It has changed no size: an answer that is taken up is sent back in its field. */
export interface Finding {
  /** A stable name for the kind of finding. */
  code: string;
  /** Where: left, right, head, sill, base, above or below; empty for a group's. */
  side: string;
  /** What was found, in words. */
  detail: string;
  /** How much it is. */
  amount: MarkedLength;
  /** What can be done about it, the least work first. */
  offers: Offer[];
  /** What is in the way, where a side may have two of a kind: "neighbor" or empty. */
  by: string;
}

/** Which revision to go back to. */
export interface GoBack {
  /** Its number. */
  revision: number;
}

/** How the board was sawn: its face shows flat (tangential) or quartered (radial) grain. */
export type Grain = "flat_sawn" | "quarter_sawn";

/** What became of the pieces that a group's openings share. */
export interface GroupChange {
  /** The group's. */
  mark: string;
  /** What became of it. */
  became: Became | (string & {});
  /** Each of its pieces. */
  pieces: PieceChange[];
}

/** A side, as seen from the room or, at the saw, by whoever stands at it. */
export type Hand = "left" | "right";

/** A fillet under a butted head, or a cap over it. */
export interface HeadStrip {
  /** Its name at the yard. A name on one line, not starting with a space. */
  profile: string;
  /** As seen from the room. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  height: LengthText;
  /** Off the wall. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  depth: LengthText;
  /** Square, or returned to the wall. */
  ends?: StripEnds;
  /** How far it runs past the legs' outside edges. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  overhang?: LengthText;
}

/** How casing meets at the head: mitered, head over the legs, or both against a block. */
export type HeadStyle = "butted" | "corner_blocks" | "mitered";

/** How the service is. */
export interface Health {
  /** "ok"; a service that is not answers with a problem instead. */
  status: "ok" | (string & {});
}

/** What is held when a cut is made: the stick, or the piece. */
export type Holding = "piece" | "stick";

/** A stool's own horns at this opening, where they are not the trim's: past the trim's outside edge. */
export interface Horns {
  /** The left one. */
  left?: LengthText | null;
  /** The right one. */
  right?: LengthText | null;
}

/** Hands-on hours by task, and drying waits, which are nobody's work, apart from them. */
export interface Hours {
  /** All tasks together. */
  hands_on_hours: number;
  /** Minutes by task. */
  tasks: Labor[];
  /** All waits together. */
  wait_hours: number;
  /** Each wait, in order. */
  waits: Wait[];
  /** Every rate that was used. */
  rates: Rate[];
}

/** A house or a part of one: openings, the trim they name, and what to cut from. With no stock, pieces are computed and no sticks. At most 50,000 pieces are worked out together, those of openings alike counted each, from at most 40,000 lengths on hand; their marks and profiles, each piece with its own, come to at most 4,000,000 bytes, and the seasons of all openings to 20,000. */
export interface House {
  /** The trim its openings name. */
  trim_specs: Record<string, Trim>;
  /** Its openings. */
  openings: HouseOpening[];
  /** Of every price; only repeated in the answer. ISO 4217 code. */
  currency?: string;
  /** Squared off each factory end. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  end_trim?: LengthText;
  /** Openings trimmed together, or joined units whose stool is too long for a stick. */
  groups?: HouseGroup[];
  /** An offcut this long or longer is kept. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  keep_length?: LengthText;
  /** What one cut eats. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  kerf?: LengthText;
  /** The wood, and the air its joints will live through: the answer then tells how far miters open. */
  movement?: Conditions | null;
  /** How lengths are rounded. */
  rounding?: Rounding;
  /** How the shop works. */
  shop?: Shop;
  /** What each profile can be cut from. */
  stock?: Stock[];
  /** The unit of lengths that are written without one; without it each must carry its own. */
  unit?: Unit | null;
}

/** Some of a house's openings, trimmed together. */
export interface HouseGroup {
  /** The group's name. A name on one line, not starting with a space. */
  mark: string;
  /** Their marks, left to right. */
  openings: string[];
  /** From each opening's right jamb face to the next one's left, left to right. */
  gaps?: LengthText[] | null;
  /** Each opening's head jamb underside over one level line, to be checked for being in line. */
  heads?: LengthText[] | null;
  /** Places, from the first opening's left jamb face, over which a joint may fall (studs, mulls); where none is named, the middles of the gaps. */
  solid?: LengthText[];
  /** The longest stick for the shared stool; a longer one is scarfed. Left out where any length is to be had. */
  stock_length?: LengthText | null;
}

/** One opening of a house. */
export interface HouseOpening {
  /** What it is called in the house; part of each piece's name. A name on one line, not starting with a space. */
  mark: string;
  /** What the tape read. */
  readings: Readings;
  /** The name of one of the house's trim specs. A name on one line, not starting with a space. */
  trim: string;
  /** What the trim stands on. */
  bottom?: Bottom;
  /** How sure its readings are: estimated before anybody was there with a tape, measured, or confirmed by measuring again. An estimated opening counts in the cost, and nothing is bought or cut for it. */
  certainty?: Certainty;
  /** How many are alike. */
  count?: number;
  /** Whether it is held back: it counts in the cost, and nothing is bought or cut for it until it is released. */
  held?: boolean;
  /** Its own, where they are not the trim's. */
  horns?: Horns;
  /** Its own, where they are not the trim's. */
  reveals?: Reveals;
  /** Where it is; money is told by room, too. */
  room?: string;
  /** What is done under a stool on a sill out of level. */
  sill_answer?: SillAnswer;
  /** The joint gap below which an opening that is out of square is treated as square. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  square_gap?: LengthText;
  /** Takes up what was found of a wall out of plane; until one is chosen no size changes for it. */
  wall_answer?: WallAnswer;
  /** How far the wall may lie off the jamb's edge before the casing is planed or the jamb extended. */
  wall_limits?: Limits;
  /** Its own, where pieces are ripped. */
  widths?: Widths;
  /** Leaves the trim's apron out. */
  without_apron?: boolean;
}

/** What was brought in, or would be. */
export interface Imported {
  /** Whether it was only tried: nothing was kept then. */
  dry_run: boolean;
  /** The revision it made; the one that stands, when it made none. */
  revision: number;
  /** Marks that are new. */
  added: string[];
  /** Marks whose opening changed. */
  updated: string[];
  /** How many were there already, just so. */
  unchanged: number;
  /** Marks that went, since the import replaces the whole. */
  removed: string[];
}

/** One thing that a revision wrote. */
export interface ItemChanged {
  /** What kind of thing it is. */
  kind: "length" | "opening" | "piece" | "schedule" | (string & {});
  /** Its id. */
  id: string;
  /** The opening's mark, where it is an opening that stays. */
  mark: string | null;
  /** Whether it went. */
  gone: boolean;
}

/** Boards on the jamb's edge that bring it out to the wall. */
export interface JambExtension {
  /** Of the board. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  thickness: LengthText;
  /** How the boards meet. */
  corners?: BoxCorners;
  /** Its name at the yard. A name on one line, not starting with a space. */
  profile?: string;
  /** Jamb left showing inside the extension. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  reveal?: LengthText;
}

/** What is said of a house as a whole. */
export interface KeptHouse {
  /** What the house is called. A name on one line, not starting with a space. */
  name: string;
  /** Of every price; only repeated in the answer. ISO 4217 code. */
  currency?: string;
  /** Squared off each factory end. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  end_trim?: LengthText;
  /** Openings trimmed together, or joined units whose stool is too long for a stick. */
  groups?: HouseGroup[];
  /** An offcut this long or longer is kept. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  keep_length?: LengthText;
  /** What one cut eats. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  kerf?: LengthText;
  /** The wood, and the air its joints will live through: the answer then tells how far miters open. */
  movement?: Conditions | null;
  /** How lengths are rounded. */
  rounding?: Rounding;
  /** How the shop works. */
  shop?: Shop;
  /** Anything about the site. Free text; may have several lines. */
  site_note?: string;
  /** What each profile can be cut from. */
  stock?: StockForSale[];
  /** The trim its openings name. */
  trim_specs?: Record<string, Trim>;
  /** The unit of lengths that are written without one; without it each must carry its own. */
  unit?: Unit | null;
}

/** Where labels lie on their sheet. */
export interface LabelGrid {
  /** Labels side by side. */
  across: number;
  /** Labels under one another. */
  down: number;
  /** Of one label. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  width: LengthText;
  /** Of one label. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  height: LengthText;
  /** From the sheet's left edge to the first label. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  left: LengthText;
  /** From the sheet's top edge to the first label. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  top: LengthText;
  /** Between labels side by side. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  gap_across?: LengthText;
  /** Between labels under one another. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  gap_down?: LengthText;
}

/** A house, and the labels its pieces are to have. */
export interface LabelsRequest {
  /** The trim its openings name. */
  trim_specs: Record<string, Trim>;
  /** Its openings. */
  openings: HouseOpening[];
  /** Of every price; only repeated in the answer. ISO 4217 code. */
  currency?: string;
  /** Squared off each factory end. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  end_trim?: LengthText;
  /** Where labels lie; without it 3 by 10 labels of 2 5/8 by 1 in on Letter, 3 by 8 of 70 by 37 mm on A4. */
  grid?: LabelGrid | null;
  /** Openings trimmed together, or joined units whose stool is too long for a stick. */
  groups?: HouseGroup[];
  /** Sections of the answer that are only worked out when asked for. */
  include?: Section[];
  /** An offcut this long or longer is kept. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  keep_length?: LengthText;
  /** What one cut eats. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  kerf?: LengthText;
  /** The wood, and the air its joints will live through: the answer then tells how far miters open. */
  movement?: Conditions | null;
  /** How long to search for cheaper sticks, all profiles together, where first-fit is not proven cheapest; 0 takes first-fit. */
  planning_seconds?: number;
  /** How lengths are rounded. */
  rounding?: Rounding;
  /** How the shop works. */
  shop?: Shop;
  /** Places on the first sheet that are used up. */
  skip?: number;
  /** What each profile can be cut from. */
  stock?: Stock[];
  /** The unit of lengths that are written without one; without it each must carry its own. */
  unit?: Unit | null;
}

/** Hands-on minutes of one task. */
export interface Labor {
  /** What is done. */
  task: Task | (string & {});
  /** How much of it, in `unit`. */
  quantity: number;
  /** What it is counted in: openings, cuts, feet, square feet and so on. */
  unit: string;
  /** How long it takes. */
  minutes: number;
  /** How the quantity was computed, in words. */
  rule: string;
  /** Names of the rates it was computed at. */
  rates: string[];
  /** Minutes of each opening. */
  by_opening: Share[];
}

/** What goes back on the rack. */
export interface LeftOver {
  /** Its profile. */
  profile: string;
  /** Of each. */
  length: MarkedLength;
  /** How many. */
  quantity: number;
}

/** A lot of lengths on hand, or on their way: of one profile, one length and one price. */
export interface LengthOnHand {
  /** From end to end. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  length: LengthText;
  /** The profile's name, as trim specs and stock have it. A name on one line, not starting with a space. */
  profile: string;
  /** Stretches no piece may touch. */
  defects?: Defect[];
  /** How many came or were found, all told. When left out, none of those that were ordered and, where nothing is said of an order, one. */
  delivered?: number | null;
  /** What it is called, once in a schedule; the service names it where this is left out. */
  lot?: string | null;
  /** Where it came from, or stands. Free text; may have several lines. */
  note?: string;
  /** How many were ordered, all told; none when left out. */
  ordered?: number | null;
  /** What was paid for each; `price` is what using one is taken to cost when sticks are planned. An amount of money as decimal text, at most two places. */
  paid?: string;
  /** What using it is taken to cost. An amount of money as decimal text, at most two places. */
  price?: string;
  /** The stick that it is left over from, where it is an offcut of one. */
  stick?: string | null;
  /** How many of them are gone, all told: cut, spoiled or given away. */
  used_up?: number;
}

/** One length that was read. */
export interface LengthRead {
  /** The exact length in `unit`, as a fraction or whole number; null when it is irrational. */
  exact: string | null;
  /** When it is irrational, the length in `unit` before rounding, to nine decimals; else null. */
  real: number | null;
  /** The length rounded as asked, as a tape reads. */
  text: string;
  /** The unit of all of these. */
  unit: Unit | (string & {});
  /** What rounding added: positive when the piece is long. */
  residual: string;
  /** The text it was read from. */
  given: string;
  /** The rounded length in feet and inches, when it is rounded to a fraction of an inch. */
  feet_inches: string | null;
}

/** What can be said of a lot of lengths: some are still to come, some came, some are there, or none is left. */
export type LengthState = "delivered" | "on_hand" | "ordered" | "used_up";

/** The lengths that were read, in the order they came. */
export interface LengthsAnswer {
  /** One for each that was given. */
  lengths: LengthRead[];
}

/** A piece of stock on hand: used first where that is cheaper. */
export interface LengthsOnHand {
  /** From end to end. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  length: LengthText;
  /** How many there are just so. */
  count?: number;
  /** Stretches no piece may touch, on each of them. */
  defects?: Defect[];
  /** What using it is taken to cost. An amount of money as decimal text, at most two places. */
  price?: string;
}

/** Lengths to read. */
export interface LengthsRequest {
  /** Each as it was written down. */
  lengths: LengthText[];
  /** How to round them. */
  rounding?: Rounding;
  /** The unit of those that carry none; without it each must carry its own. */
  unit?: Unit | null;
}

/** How far the wall may lie off the jamb's edge; beyond `plane` the jamb is extended. Common practice, no source. */
export interface Limits {
  /** Up to here the joint is caulked. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  caulk?: LengthText;
  /** Up to here the wall is planed back or the casing back-beveled. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  plane?: LengthText;
}

/** A change that was made. */
export interface Made {
  /** The schedule's revision it made. */
  revision: number;
}

/** A layout mark on a piece. */
export interface Mark {
  /** What to mark, in the trade's words. */
  name: string;
  /** Distance along the piece from its left end as it lies on the saw (from that end's farthest point). */
  at: MarkedLength;
  /** Distance from the outer edge, None for a mark right across. */
  across: MarkedLength | null;
}

/** What a length is measured from: the stick's free end or its left end, or the piece's other end, as it is there on the edge that is marked. */
export type MarkFrom = "free_end" | "left_end" | "long_point" | "short_point" | "square_end";

/** A length going out. */
export interface MarkedLength {
  /** The exact length in `unit`, as a fraction or whole number; null when it is irrational. */
  exact: string | null;
  /** When it is irrational, the length in `unit` before rounding, to nine decimals; else null. */
  real: number | null;
  /** The length rounded as asked, as a tape reads. */
  text: string;
  /** The unit of all of these. */
  unit: Unit | (string & {});
  /** What rounding added: positive when the piece is long. */
  residual: string;
}

/** What is used of a material, waste included, and the packages that cover it. */
export interface Material {
  /** A stable name, as in `packages`. */
  code: string;
  /** Its name in words. */
  name: string;
  /** How much is used, in `unit`. */
  quantity: number;
  /** What it is counted in. */
  unit: string;
  /** The packages to buy. */
  bought: Bought[];
  /** How it was computed, in words. */
  rule: string;
  /** The figures it was computed from. */
  from: Figure[];
  /** Names of the rates it was computed at. */
  rates: string[];
  /** How much of it is for each opening. */
  by_opening: Share[];
  /** What to check. */
  notes: string[];
}

/** What is bought beside sticks, and the unit it is counted in: nails; glue, caulk, filler, primer and paint in fluid ounces; shims; tape in feet; abrasive in sheets. */
export type MaterialCode = "abrasive" | "caulk" | "filler" | "glue" | "nails_10d" | "nails_2d" | "nails_3d" | "nails_4d" | "nails_5d" | "nails_6d" | "nails_7d" | "nails_8d" | "nails_9d" | "paint" | "primer" | "shims" | "tape";

/** What to buy beside the sticks. */
export interface Materials {
  /** Each material that is used. */
  lines: Material[];
  /** Every rate that was used. */
  rates: Rate[];
}

/** Nails, glue, caulk, filler, primer, paint, shims, tape and abrasive, and what to beware of. */
export interface MaterialsAnswer {
  /** What to buy. */
  materials: Materials;
  /** What to know before starting. */
  cautions: Caution[];
}

/** Which mark is taken: nearest (the longer of two equally near), up (never short), down (never long). */
export type Mode = "down" | "nearest" | "up";

/** A mitered piece in one set of conditions, against how it was when the joint was made. */
export interface Moved {
  /** The conditions, as they were named. */
  name: string;
  /** What the wood comes to in them, percent. */
  moisture_content: number;
  /** Of its width; negative where it shrank. */
  change: string;
  /** The angle by which the miter stands open. */
  opens_degrees: number;
  /** Width of that opening at its open end. */
  gap: string;
  /** "short point" when the wood dried, "long point" when it took up moisture, empty when neither. */
  opens_at: string;
  /** Whether both moisture contents lie where the coefficients hold. */
  within_table: boolean;
}

/** How a mitered piece moves. Coefficients are averages of clear wood: one board may move half as much again. */
export interface Movement {
  /** When the joint was made, percent. */
  installed_moisture_content: number;
  /** Change per unit of width and per percent of moisture content. */
  coefficient: number;
  /** The piece in each set of conditions. */
  seasons: Moved[];
  /** The widest of all seasons. */
  widest_gap: string;
  /** Where formulas and coefficients come from. */
  source: string;
  /** What to bear in mind. */
  notes: string[];
}

/** A mitered piece, the conditions its joint was made in, and those it will live through. */
export interface MovementRequest {
  /** The wood. */
  species: Species;
  /** Where the joint is made. */
  installed: Air;
  /** Each set of conditions it will live through. */
  seasons: Air[];
  /** Of the piece, across its face. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  width: LengthText;
  /** How the boards were sawn. */
  grain?: Grain;
  /** Its miter, off a square cut. */
  miter_degrees?: number;
  /** The thermometer's. */
  scale?: Scale;
  /** The unit of lengths that are written without one; without it each must carry its own. */
  unit?: Unit | null;
}

/** A house's schedule, with its openings and lengths on hand where they are known already; an export looks the same. */
export interface NewSchedule {
  /** What the house is called. A name on one line, not starting with a space. */
  name: string;
  /** Of every price; only repeated in the answer. ISO 4217 code. */
  currency?: string;
  /** Squared off each factory end. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  end_trim?: LengthText;
  /** Openings trimmed together, or joined units whose stool is too long for a stick. */
  groups?: HouseGroup[];
  /** An offcut this long or longer is kept. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  keep_length?: LengthText;
  /** What one cut eats. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  kerf?: LengthText;
  /** What is on hand, or on its way. */
  lengths?: LengthOnHand[];
  /** The wood, and the air its joints will live through: the answer then tells how far miters open. */
  movement?: Conditions | null;
  /** In the order they are to be listed. */
  openings?: HouseOpening[];
  /** How lengths are rounded. */
  rounding?: Rounding;
  /** How the shop works. */
  shop?: Shop;
  /** Anything about the site. Free text; may have several lines. */
  site_note?: string;
  /** What each profile can be cut from. */
  stock?: StockForSale[];
  /** The trim its openings name. */
  trim_specs?: Record<string, Trim>;
  /** The unit of lengths that are written without one; without it each must carry its own. */
  unit?: Unit | null;
}

/** A horn's notch: what is sawn out of a stool's back corner so that the horn lies on the wall. */
export interface Notch {
  /** From the stool's back edge towards its nosing, at the jamb. */
  depth: MarkedLength;
  /** From the stool's end towards its middle; the horn's own length. */
  length: MarkedLength;
  /** The depth at the horn's end where the wall is out of plane; None where it is the same. */
  end_depth: MarkedLength | null;
}

/** How the wall lies to the jamb's edge at one corner, where the casing's outside edge is to lie; neither where it is flush. */
export interface OffPlane {
  /** How far the wall stands past the jamb's edge. */
  proud?: LengthText | null;
  /** How far the jamb's edge stands past the wall. */
  shy?: LengthText | null;
}

/** One of the trade's answers to a finding. */
export interface Offer {
  /** A stable name, "shorten_horn". */
  answer: string;
  /** What it means, in words. */
  detail: string;
  /** The field that takes it up, a JSON pointer into the opening or, for what a group's openings have together, into the house; null where no one field does, as for caulk: `detail` then says what does. It was tried: with that value the answer comes without the finding, a group's once every opening of it that is offered one has its own. */
  field: string | null;
  /** What to write there. */
  value: string | boolean | null;
  /** Lengths, and angles in degrees, that go with it, each by its name. */
  figures: Record<string, string>;
}

/** The joint of an opening that stands open the widest in one set of conditions. */
export interface OpenJoint {
  /** The conditions, as they were named. */
  name: string;
  /** What the wood comes to in them, percent. */
  moisture_content: number;
  /** Key of the piece on one side of it; null where no joint is mitered. */
  piece: string | null;
  /** At the joint's open end. */
  gap: string;
  /** Which end that is, "short point" or "long point"; empty where nothing moved. */
  opens_at: string;
  /** Whether the moisture contents lie where the coefficients hold. */
  within_table: boolean;
}

/** One opening worked out: its pieces and what was assumed. */
export interface OpeningAnswer {
  /** What it is called in the house. */
  mark: string;
  /** Where it is. */
  room: string;
  /** How many are alike. */
  count: number;
  /** Every piece of its trim; left and right are a mirrored pair, each a piece of its own. */
  pieces: Piece[];
  /** The number of each piece, by its key, as sheets print it: `K1-4` is number 4 of K1. Null for an opening by itself, whose pieces are numbered as they come. */
  numbers: Record<string, number> | null;
  /** The joint gap left by taking its corners as square: zero where they are, or where their own angles were cut. */
  square_gap: string;
  /** What was assumed. */
  notes: string[];
  /** What is in the way, out of plane or out of level; none has changed a size. */
  findings: Finding[];
  /** The widest miter season by season; null where no conditions were given. */
  movement: OpenJoint[] | null;
}

/** What became of one opening. */
export interface OpeningChange {
  /** Its id. */
  id: string;
  /** Its mark, the later one. */
  mark: string;
  /** The mark it had before; null when it is new. */
  mark_before: string | null;
  /** With trim_changed only the trim spec it names was changed; with group_changed it began or ceased to share a stool. */
  became: Became | (string & {});
  /** What was said of it differently. */
  readings: FieldChange[];
  /** Each of its pieces. */
  pieces: PieceChange[];
}

/** What an opening costs, all of its count together. */
export interface OpeningCost {
  /** The opening's mark. */
  opening: string;
  /** Where it is. */
  room: string;
  /** What it costs, by category. */
  amounts: CostTotals;
}

/** One opening with its trim; answered with all of its pieces. */
export interface OpeningRequest {
  /** What it is called in the house; part of each piece's name. A name on one line, not starting with a space. */
  mark: string;
  /** What the tape read. */
  readings: Readings;
  /** What it is trimmed with. */
  trim: Trim;
  /** What the trim stands on. */
  bottom?: Bottom;
  /** Its own, where they are not the trim's. */
  horns?: Horns;
  /** The wood, and the air its joints will live through: the answer then says how far its miters open. */
  movement?: Conditions | null;
  /** Its own, where they are not the trim's. */
  reveals?: Reveals;
  /** How lengths of the answer are rounded. */
  rounding?: Rounding;
  /** What is done under a stool on a sill out of level. */
  sill_answer?: SillAnswer;
  /** The joint gap below which an opening that is out of square is treated as square. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  square_gap?: LengthText;
  /** The unit of lengths that are written without one; without it each must carry its own. */
  unit?: Unit | null;
  /** Takes up what was found of a wall out of plane; until one is chosen no size changes for it. */
  wall_answer?: WallAnswer;
  /** How far the wall may lie off the jamb's edge before the casing is planed or the jamb extended. */
  wall_limits?: Limits;
  /** Its own, where pieces are ripped. */
  widths?: Widths;
  /** Leaves the trim's apron out. */
  without_apron?: boolean;
}

/** Openings to bring in. */
export interface Openings {
  /** In the order they are to be listed. */
  openings: HouseOpening[];
}

/** One cut. */
export interface Operation {
  /** Its place in the sequence, counted from 1. */
  number: number;
  /** Number of the setup it is made at. */
  setup: number;
  /** What is done. */
  kind: OperationKind | (string & {});
  /** The stock that is cut. */
  profile: string;
  /** The stick's name; null for a piece without stock. */
  stick: string | null;
  /** What it makes or cuts: two for a shared cut, all of the stick's where a whole stick is ripped. */
  pieces: PieceName[];
  /** The piece in words; empty where a whole stick is worked on. */
  title: string;
  /** The end of the piece as installed: left, foot, head and so on; empty where none is meant. */
  end: string;
  /** Which end of the piece that is as it lies. */
  on_saw: Hand | (string & {}) | null;
  /** Whether its face lies up; it lies down where stock that may be turned over is. */
  face_up: boolean;
  /** The edge that lies against the fence: outer, inner, top, back. */
  fence_edge: string;
  /** The length to mark; null where a stop block, or the corner of what is there, says where to cut. */
  mark: MarkedLength | null;
  /** What the mark is measured from. */
  mark_from: MarkFrom | (string & {}) | null;
  /** The edge that the cut has its long point on, where the mark is: outer, inner, top, front, face, back, or outer_back and inner_back, of the piece's back; empty for a cut square across a square piece. */
  mark_edge: string;
  /** What is held when the cut is made. */
  holds: Holding | (string & {});
  /** How long that is; null where no stick was planned. */
  held: MarkedLength | null;
  /** How far from the front edge the cut goes, where it stops: at a stool's notch, or at the back of a return that is narrower than its stick; null for a cut right through. */
  stops_after: MarkedLength | null;
  /** The part of the same opening that this one is the mirror image of; null for none. */
  mirror_of: string | null;
  /** Codes of the answer's cautions that bear on this cut. */
  cautions: string[];
}

/** What is done, each with one cut. rip_stick: a whole stick is ripped to width. square_end: a stick's free end is cut square. cut_out: a stick is cut through beyond a defect. angled_end: a miter, bevel or compound cut at the end of a piece, to its corner or to a mark. cut_off: a square cut cuts a piece off its stick. angled_cut_off: a miter, bevel or compound cut cuts a piece off its stick and makes its end. shared_cut: the same, and the cut makes the end of the next piece too, which lies turned over. rip: one piece is ripped to width. notch: a stool's notch is sawn out. */
export type OperationKind = "angled_cut_off" | "angled_end" | "cut_off" | "cut_out" | "notch" | "rip" | "rip_stick" | "shared_cut" | "square_end";

/** An order to cut in. stick_by_stick: each stick is finished before the next is picked up. opening_by_opening: each opening's pieces are finished before the next opening's. setting_by_setting: cuts of one setting are made together, whatever stick they are on. */
export type OrderKind = "opening_by_opening" | "setting_by_setting" | "stick_by_stick";

/** What one order comes to, by the shop's rates at the saw. */
export interface OrderSum {
  /** Which. */
  order: OrderKind | (string & {});
  /** At the saws, from the first stick picked up to the last piece labeled. */
  minutes: number;
  /** How much of that goes into setting them. */
  setting_minutes: number;
  /** How many are made. */
  cuts: number;
  /** How often a stick is picked up. */
  pick_ups: number;
  /** How often a saw is set. */
  settings: number;
  /** The most openings that are begun and not finished at any one time. */
  open_at_once: number;
}

/** Something sold. Without a price it is bought and costs nothing in the answer. */
export interface Package {
  /** What it holds. */
  material: MaterialCode;
  /** What it is called. A name on one line, not starting with a space. */
  name: string;
  /** How much it holds, in the material's unit: nails by the piece; glue, caulk, filler, primer and paint in fluid ounces; tape in feet; abrasive in sheets. */
  size: number;
  /** Of one. */
  price?: string | null;
}

/** One piece of trim. */
export interface Piece {
  /** What it is. */
  kind: PieceKind | (string & {});
  /** Where it goes at the opening: left, right, head and so on; empty for a piece that has no side. */
  side: string;
  /** The stock it is cut from. */
  profile: string;
  /** Length along the inner edge (short point to short point on a mitered head). */
  short_point: MarkedLength;
  /** Length along the outer edge. */
  long_point: MarkedLength;
  /** The length it takes from a stick: its farthest extent. */
  overall: MarkedLength;
  /** Finished width across the face. */
  width: MarkedLength;
  /** Finished thickness. */
  thickness: MarkedLength;
  /** Left and right end as it lies on the saw. */
  ends: [End];
  /** Width to rip it to, the wider end's where it tapers; null where the stock's own width is kept. */
  rip_width: MarkedLength | null;
  /** What to mark along it before it is cut or installed. */
  marks: Mark[];
  /** How each of its figures was computed. */
  how: Step[];
  /** What the person should know of this piece. */
  notes: string[];
  /** Its rip widths where they differ at its two ends; null where it is parallel. */
  taper: Taper | null;
  /** What is sawn out of its back edge between its ends. */
  cutouts: Cutout[];
  /** How many there are, those of openings alike taken together. */
  quantity: number;
  /** Its name in words. */
  title: string;
  /** Its name in its opening, by which it is named elsewhere. */
  key: string;
  /** The widest a miter of it can open or bind because `overall` was rounded, were all of the residual to fall on one joint. */
  joint_error: string;
}

/** What became of a piece; altered is the same length with other ends, width or stock. */
export type PieceBecame = "altered" | "gone" | "longer" | "new" | "shorter" | "unchanged";

/** What became of one piece of an opening. */
export interface PieceChange {
  /** The piece's key. */
  piece: string;
  /** Longer and shorter go by what it takes of a stick, exactly. */
  became: PieceBecame | (string & {});
  /** What it took of a stick. */
  before: MarkedLength | null;
  /** What it takes. */
  after: MarkedLength | null;
  /** The difference; negative when it became shorter. */
  longer_by: MarkedLength | null;
  /** How many there were. */
  quantity_before: number;
  /** How many there are. */
  quantity_after: number;
}

/** What was done with one piece: it was cut as the cut list now has it, or fitted, or spoiled. */
export interface PieceDone {
  /** Which part of it: its `key` in the cut list or, where work is recorded, its number as sheets have it, `K1-4` or, of several alike, `L1-4.2`. */
  piece: string;
  /** What was done. */
  state: Done;
  /** Which of several alike, counted from 1. */
  instance?: number;
  /** Anything worth knowing. Free text; may have several lines. */
  note?: string;
  /** The opening's mark or id; may be left out where `piece` is the piece's number, which has it. */
  opening?: string | null;
  /** The id of the piece it was cut again from, where it was. */
  recut_from?: string | null;
}

/** What a piece is. Legs stand at the sides; a return takes an end back to the wall. */
export type PieceKind = "apron" | "apron_return" | "back_band" | "bottom_casing" | "cap" | "cap_return" | "corner_block" | "door_stop" | "fillet" | "fillet_return" | "head_casing" | "head_jamb" | "jamb_extension" | "jamb_leg" | "mull_casing" | "plinth_block" | "side_casing" | "stool" | "stool_return" | "tapered_shim";

/** A piece among all the house's. */
export interface PieceName {
  /** The mark of the piece's opening. */
  opening: string;
  /** The piece's key there. */
  piece: string;
  /** Which of several alike, counted from 1. */
  instance: number;
}

/** Where a piece belongs. */
export interface PieceNeeded {
  /** The opening's mark. */
  opening: string;
  /** Which part of it. */
  piece: string;
  /** Which of several alike. */
  instance: number;
  /** What is needed there. */
  length: MarkedLength;
}

/** What became of a piece that was cut; a spare is one whose place has another by now. */
export type PieceState = "cut" | "installed" | "spare" | "spoiled";

/** The pieces asked for, and what was assumed. */
export interface PiecesAnswer {
  /** Each piece. */
  pieces: Piece[];
  /** What was assumed. */
  notes: string[];
}

/** A piece's place on a stick. */
export interface PlacedPiece {
  /** The mark of the piece's opening. */
  opening: string;
  /** The piece's key there. */
  piece: string;
  /** Which of several alike, counted from 1. */
  instance: number;
  /** From the stick's left end to the piece's left-most point. */
  start: MarkedLength;
  /** What it takes of the stick. */
  length: MarkedLength;
  /** Whether it lies turned over. */
  turned: boolean;
  /** Whether it lies end for end. */
  reversed: boolean;
  /** Whether it shares its left cut with the piece before. */
  shares_cut: boolean;
}

/** How hard to look for the cheapest sticks. */
export interface PlanAsked {
  /** How long to search, all profiles together, where the first plan is not proven cheapest; 0. How long to search for cheaper sticks, all profiles together, where first-fit is not proven cheapest; 0 takes first-fit. */
  planning_seconds?: number;
}

/** A plan in a list. */
export interface PlanLine {
  /** Its number; the schedule's plans are counted from 1. */
  number: number;
  /** Whether it is the plan of what the schedule is now. */
  stands: boolean;
  /** When it was made. RFC 3339, in UTC. */
  made_at: string;
  /** When something was first printed or cut from it; null while nothing was. Such a plan is kept; of the others the oldest go. */
  used_at: string | null;
  /** How long was allowed for the search; 0 took the first plan that was found. */
  planning_seconds: number;
  /** Of the sticks that were left to cut when it was made. An amount of money as decimal text with two places. */
  cost: string;
  /** No plan of them costs less. An amount of money as decimal text with two places. */
  bound: string;
  /** How far the cost may be above the cheapest: zero is proven. An amount of money as decimal text with two places. */
  above: string;
  /** Whether no plan can be cheaper. */
  proven: boolean;
}

/** How good the sticks of one profile are. */
export interface PlannedSticks {
  /** Whose sticks. */
  profile: string;
  /** Their names, in the order they come to the saw. */
  sticks: string[];
  /** Of them all. An amount of money as decimal text with two places. */
  cost: string;
  /** No plan costs less. An amount of money as decimal text with two places. */
  bound: string;
  /** What found it: first_fit, columns or branching. */
  method: string;
  /** Why the search ended: it was proven, the effort that the budget allows was spent, the clock ran out first, or there was not the memory for it. */
  stopped: "clock" | "effort" | "memory" | "proven" | (string & {});
  /** How long the search took. */
  seconds: number;
  /** Openings that were to come from one stick each and that no stick can hold. */
  split_openings: string[];
}

/** Plinth blocks under a door's legs. */
export interface Plinth {
  /** Across the face. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  width: LengthText;
  /** From the floor up. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  height: LengthText;
  /** Off the wall. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  thickness: LengthText;
  /** Its name at the yard. A name on one line, not starting with a space. */
  profile?: string;
}

/** A place on the wall, from the base's left inside corner. */
export interface Point {
  /** Along the base. */
  x: string;
  /** Square to it. */
  y: string;
}

/** What every refusal looks like: application/problem+json, as RFC 9457 has it. */
export interface ProblemBody {
  /** Where this kind of problem is explained, a path on this service; stable, so match on it. */
  type: string;
  /** The kind of problem, in a few words. */
  title: string;
  /** The HTTP status, again. */
  status: number;
  /** What happened this time. */
  detail: string;
  /** The path that was asked for. */
  instance: string;
  /** Everything that was wrong, each with where it was; may be empty. */
  errors: Fault[];
  /** The id of this request, as in the X-Request-Id header; give it when asking for help. */
  request_id: string;
}

/** One profile's sticks. */
export interface ProfilePlan {
  /** Its name. */
  profile: string;
  /** Each stick by itself, as they come to the saw. */
  sticks: CutStick[];
  /** Of them all. An amount of money as decimal text with two places. */
  cost: string;
  /** No plan costs less than this. An amount of money as decimal text with two places. */
  bound: string;
  /** How far `cost` may be from the cheapest, as a share of it; 0 is proven. */
  gap: number;
  /** Whether none is cheaper than this one. */
  proven: boolean;
  /** What found it: first_fit, columns or branching. */
  method: string;
  /** Why the search ended: it was proven, the effort that the budget allows was spent, the clock ran out first, or there was not the memory for it. */
  stopped: "clock" | "effort" | "memory" | "proven" | (string & {});
  /** How long the search took. */
  seconds: number;
  /** Openings that were to come from one stick each and that no stick can hold. */
  split_openings: string[];
}

/** A rate that was reckoned with, and where it comes from. */
export interface Rate {
  /** Its field in the shop's `rates`. */
  name: string;
  /** How much, in `unit`. */
  value: number;
  /** In, mil, percent, each, ft2, s, min, h or penny. */
  unit: string;
  /** Where it comes from: a published source, common practice, or the caller. */
  source: string;
  /** What it is, in words. */
  says: string;
}

/** The shop's own rates; the answer names the source of each rate it used. */
export interface Rates {
  angle_seconds?: number | null;
  bevel_seconds?: number | null;
  block_nails?: number | null;
  carry_seconds?: number | null;
  caulk_depth?: LengthText | null;
  caulk_fillet?: LengthText | null;
  caulk_gap?: LengthText | null;
  caulk_minutes?: number | null;
  caulk_wait?: number | null;
  caulk_waste?: number | null;
  corner_nails?: number | null;
  cut_seconds?: number | null;
  detent_seconds?: number | null;
  drywall?: LengthText | null;
  fence_seconds?: number | null;
  fill_minutes?: number | null;
  filler_wait?: number | null;
  filler_waste?: number | null;
  final_coat_minutes?: number | null;
  glue_film?: number | null;
  glue_waste?: number | null;
  hole_depth?: LengthText | null;
  hole_width?: LengthText | null;
  inner_nail?: 0 | 2 | 3 | 4 | 5 | 6 | 7 | 8 | 9 | 10 | null;
  install_minutes?: number | null;
  jamb_penetration?: LengthText | null;
  label_seconds?: number | null;
  mark_seconds?: number | null;
  measure_minutes?: number | null;
  nail_end_distance?: LengthText | null;
  nail_minutes?: number | null;
  nail_spacing?: LengthText | null;
  nail_waste?: number | null;
  notch_seconds?: number | null;
  outer_nail?: 0 | 2 | 3 | 4 | 5 | 6 | 7 | 8 | 9 | 10 | null;
  paint_coats?: number | null;
  paint_film?: number | null;
  paint_minutes?: number | null;
  paint_solids?: number | null;
  paint_wait?: number | null;
  paint_waste?: number | null;
  painted_backs?: number | null;
  pick_up_seconds?: number | null;
  primer_coats?: number | null;
  primer_film?: number | null;
  primer_solids?: number | null;
  primer_wait?: number | null;
  profile_girth?: number | null;
  rip_minutes?: number | null;
  rout_minutes?: number | null;
  sandings?: number | null;
  sheet_area?: number | null;
  shim_space?: LengthText | null;
  shims_per_opening?: number | null;
  short_cut_seconds?: number | null;
  stool_nail_spacing?: LengthText | null;
  stop_seconds?: number | null;
  stud_penetration?: LengthText | null;
  tape_waste?: number | null;
}

/** What the tape read, from the jamb's inside faces. A plumb-sided opening has `jamb_width` and `jamb_height`; where the two sides differ, `left_jamb_height` and `right_jamb_height` instead: a raked head. One out of square has a `head_width` too, and at least one diagonal or one corner's angle; further ones check the tape. A curved head has its `rise` and `head_pieces` or `departure`. Any other convex shape has `sides` and `angles`. Joined units have their `joined_widths` and the `mull_widths` between them in place of `jamb_width`. A `door` gives its jamb's width and height by itself. A stool needs `jamb_depth`, or `left_depth` and `right_depth`; where the wall is out of plane, the same depth at each horn's end too. */
export interface Readings {
  /** The interior angles, the base's right-hand corner first; a triangle needs none. */
  angles?: number[] | null;
  /** At the bottom left corner. */
  bottom_left_angle?: number | null;
  /** At the bottom right corner. */
  bottom_right_angle?: number | null;
  /** What is in the way. */
  clearances?: Clearances;
  /** The farthest that the middle of such a piece may lie from the true curve. */
  departure?: LengthText | null;
  /** Bottom left to top right, inside corner to inside corner. */
  diagonal_from_bottom_left?: LengthText | null;
  /** Bottom right to top left, inside corner to inside corner. */
  diagonal_from_bottom_right?: LengthText | null;
  /** A door to be hung here. */
  door?: Door | null;
  /** How many straight pieces a curved head is made of. */
  head_pieces?: number | null;
  /** Jamb to jamb at the top. */
  head_width?: LengthText | null;
  /** Wall face back to the sash stop where the stool's back edge lands. */
  jamb_depth?: LengthText | null;
  /** Stool top, sill jamb or floor to the underside of the head jamb; to the springing of a curve, and left out where the curve stands on the base. */
  jamb_height?: LengthText | null;
  /** Of the jamb's edge, on which reveal and casing must find room. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  jamb_thickness?: LengthText;
  /** Jamb to jamb, at the bottom. */
  jamb_width?: LengthText | null;
  /** Widths of the joined units, left to right, each between jamb faces. */
  joined_widths?: LengthText[] | null;
  /** The same at the left jamb. */
  left_depth?: LengthText | null;
  /** The depth at the left horn's end. */
  left_horn_depth?: LengthText | null;
  /** The same along the left jamb. */
  left_jamb_height?: LengthText | null;
  /** Of the mulls between them, left to right, each between jamb faces. */
  mull_widths?: LengthText[] | null;
  /** The same at the right jamb. */
  right_depth?: LengthText | null;
  /** The depth at the right horn's end. */
  right_horn_depth?: LengthText | null;
  /** The same along the right jamb. */
  right_jamb_height?: LengthText | null;
  /** From the springing line up to the top of a curved head. */
  rise?: LengthText | null;
  /** Every side's length, counterclockwise from the base as seen from the room. */
  sides?: LengthText[] | null;
  /** Out of level; left out where it is level. */
  sill?: SillLevel | null;
  /** At the top left corner. */
  top_left_angle?: number | null;
  /** At the top right corner. */
  top_right_angle?: number | null;
  /** How the wall lies to the jamb's edge at every corner, in the order of `angles`. */
  wall?: OffPlane[] | null;
}

/** Openings that were released, or held back. */
export interface Released {
  /** The schedule's revision it made; the one that stands, when it made none. */
  revision: number;
  /** Marks of those that were not so before. */
  changed: string[];
  /** Marks of those that are released and still wait, since they are only estimated. */
  estimated: string[];
}

/** Each side's own reveal, where it is not the trim's: the jamb left showing from its inside face to the casing. */
export interface Reveals {
  /** Under the head casing. */
  head?: LengthText | null;
  /** On the left jamb. */
  left?: LengthText | null;
  /** On the right jamb. */
  right?: LengthText | null;
  /** Above a picture frame's bottom casing. */
  sill?: LengthText | null;
}

/** One write to a schedule. */
export interface Revision {
  /** Counts from 1; the latest is the schedule as it stands. */
  number: number;
  /** When. RFC 3339, in UTC. */
  at: string;
  /** The name of the key that wrote. */
  who: string;
  /** The id of that key; null where no keys are made. */
  key_id: string | null;
  /** What was done. */
  action: string;
  /** The reason that was given. */
  why: string;
  /** Covers everything that was ever written to the schedule, up to this revision. */
  digest: string;
}

/** One write to a schedule, with all it wrote. */
export interface RevisionDetail {
  /** Counts from 1; the latest is the schedule as it stands. */
  number: number;
  /** When. RFC 3339, in UTC. */
  at: string;
  /** The name of the key that wrote. */
  who: string;
  /** The id of that key; null where no keys are made. */
  key_id: string | null;
  /** What was done. */
  action: string;
  /** The reason that was given. */
  why: string;
  /** Covers everything that was ever written to the schedule, up to this revision. */
  digest: string;
  /** Each thing once. */
  wrote: ItemChanged[];
}

/** What a room costs: the sum of its openings. */
export interface RoomCost {
  /** Its name; may be empty. */
  room: string;
  /** How many it has, those alike counted each. */
  openings: number;
  /** What it costs, by category. */
  amounts: CostTotals;
}

/** The fineness of the marks a length is rounded to. */
export type RoundTo = "0.5 mm" | "1 mm" | "1/16 in" | "1/32 in" | "1/64 in" | "1/8 in";

/** How lengths of the answer are rounded. */
export interface Rounding {
  /** Which mark is taken: the nearest (the longer of two equally near), the next up or the next down. */
  mode?: Mode;
  /** The fineness of the tape they will be marked with. It decides the unit of the answer, too. */
  to?: RoundTo;
}

/** The shop's own limits at the saw. Common practice, no source. */
export interface Saw {
  /** How finely the saw's scale can be set, degrees. */
  angle_step?: number;
  /** The miters at which its table clicks in, degrees; 0, 15, 22.5, 31.6 and 45 when left out. */
  detents?: number[] | null;
  /** The most that the saw's table turns off a square cut, degrees. */
  sharpest_miter?: number;
  /** The shortest workpiece held by hand. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  smallest_held?: LengthText;
  /** The shortest pushed through the table saw by hand. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  smallest_ripped?: LengthText;
}

/** The cuts in an order to make them. */
export interface SawOrder {
  /** Which order it is: the one asked for, or else the quickest of three. */
  order: OrderKind | (string & {});
  /** Why it is that one, in words. */
  why: string;
  /** How many cuts there are: as many as operations, and as the hours reckon with. */
  cuts: number;
  /** What each of the three orders comes to. */
  orders: OrderSum[];
  /** Returns that are cut from another stick than their apron or stool: theirs has no room for them, or moving them would change what is kept of a stick. */
  apart: PieceName[];
  /** Each tool setting, in order. */
  setups: Setup[];
  /** Each cut, in order. */
  operations: Operation[];
  /** What the minutes were reckoned with. */
  rates: Rate[];
}

/** The thermometer's scale: what temperatures are in. */
export type Scale = "celsius" | "fahrenheit";

/** A schedule in a list. */
export interface ScheduleLine {
  /** Its id. */
  id: string;
  /** What the house is called. */
  name: string;
  /** The number of its latest revision. */
  revision: number;
  /** How many openings it has; alike ones under one mark are one. */
  opening_count: number;
  /** When it was made. RFC 3339, in UTC. */
  created_at: string;
  /** When it was last changed. RFC 3339, in UTC. */
  updated_at: string;
  /** When it was archived; null when it is not. */
  archived_at: string | null;
}

/** A part of the shop's answer. */
export type Section = "cost" | "hours" | "materials" | "saw_order";

/** How a tool is set. Two cuts at equal settings need one setup. */
export interface Setting {
  /** What is set. */
  tool: Tool | (string & {});
  miter_direction: Hand | (string & {}) | null;
  /** How far the table is turned off a square cut, to the step of the saw's scale. */
  miter_degrees: number;
  bevel_direction: Hand | (string & {}) | null;
  /** How far the blade is tilted from upright, to the step of the saw's scale. */
  bevel_degrees: number;
  /** From the blade to the stop block; null for a cut to a mark or to a corner. */
  stop: MarkedLength | null;
  /** From the rip fence to the blade, at the wider end of a taper; null where nothing is ripped. */
  fence: MarkedLength | null;
  /** Widths at the left and at the right end as the piece lies, ripped on a taper jig; null where it is parallel. */
  taper: [MarkedLength] | null;
  /** From the stool's back edge in; null where nothing is notched. */
  notch_depth: MarkedLength | null;
  /** From the stool's end in. */
  notch_length: MarkedLength | null;
  /** From the back edge in at the horn's end, where that is another depth. */
  notch_end_depth: MarkedLength | null;
}

/** A tool set once. */
export interface Setup {
  /** Counted from 1. */
  number: number;
  /** How it is set. */
  setting: Setting;
  /** How many are made so. */
  operations: number;
}

/** One opening's part of a quantity, all of its count together. */
export interface Share {
  /** The opening's mark. */
  opening: string;
  /** How much, in the unit of the whole. */
  quantity: number;
}

/** A sheet's contents as data, for a page of one's own; drawings are in the HTML and the PDF alone. */
export interface SheetContents {
  /** What the sheet is. */
  name: string;
  /** At its head. */
  title: string;
  /** Whose house it is. */
  house: string;
  /** Which plan its sticks are from and how good that is; empty where it shows none. */
  plan: string;
  /** Every table, in order. */
  tables: TableContents[];
  /** Cautions and notes, in order. */
  notes: string[];
  /** Each label's texts, on a sheet of labels. */
  labels: string[][];
}

/** How the shop works. */
export interface Shop {
  /** When the house was built: paint of before 1978, or of unknown age, may hold lead. */
  build_year?: number | null;
  /** The order to cut in; when left out, the one of three that takes least by its rates. */
  order?: OrderKind | null;
  /** What is sold and at which price; a material named here is bought in these alone, up to four of each. */
  packages?: Package[];
  /** Its own, where they are not the usual ones. */
  rates?: Rates;
  /** Its limits at the saw. */
  saw?: Saw;
  /** What an hour of work costs. */
  wages?: Wages;
}

/** What is done under a stool on a sill out of level: shims, or one tapered strip. */
export type SillAnswer = "shim" | "tapered_shim";

/** A sill out of level. */
export interface SillLevel {
  /** The end that lies low. */
  low: Hand;
  /** By how much, over the jamb's width. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  by: LengthText;
}

/** The wood, by its common name. */
export type Species = "basswood" | "beech" | "black_cherry" | "black_walnut" | "douglas_fir" | "eastern_white_pine" | "mdf" | "ponderosa_pine" | "red_alder" | "red_maple" | "red_oak" | "sugar_maple" | "white_ash" | "white_oak" | "yellow_birch" | "yellow_poplar";

/** How one figure was computed. */
export interface Step {
  /** The piece's field it gives. */
  figure: string;
  /** The rule in words, naming its inputs. */
  rule: string;
  /** Each input's name and value. */
  inputs: Record<string, string>;
}

/** A length the yard sells. */
export interface Stick {
  /** Factory end to factory end. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  length: LengthText;
  /** Of one. An amount of money as decimal text, at most two places. */
  price: string;
  /** How many the yard has; as many as are needed when left out. */
  available?: number | null;
  /** Stretches no piece may touch, on each of them. */
  defects?: Defect[];
}

/** A stick by its name, and who is about to cut it. */
export interface StickDetail {
  /** What sheets call it: a name stands for this one layout of one stick. */
  name: string;
  /** From end to end. */
  length: MarkedLength;
  on_hand: boolean;
  /** What it costs. An amount of money as decimal text with two places. */
  price: string;
  /** From its left end to its right. */
  pieces: PlacedPiece[];
  /** What remains. */
  offcut: MarkedLength;
  /** Whether that goes back on the rack. */
  kept: boolean;
  /** What it is. */
  profile: string;
  /** The lot of lengths on hand that it comes from; null for one to buy. */
  lot: string | null;
  /** Planned to be cut, cut already, or changed: laid out otherwise under other names by now. */
  state: "changed" | "cut" | "planned" | (string & {});
  /** The number of the plan that first had it. */
  plan: number;
  /** Who claimed it last; null where nobody has it claimed. */
  claimed_by: string | null;
  /** When that claim is over; it may be by now. */
  claimed_until: string | null;
  /** What else is to be known: a claim that was over when it was taken over. */
  notes: string[];
}

/** What is still to be cut of a house, and what became of what was cut before. */
export interface StillToCut {
  /** The schedule's revision it is worked out from. */
  revision: number;
  /** The plan that its sticks come from. */
  plan: PlanLine;
  /** Whether a search for a cheaper plan is under way: ask again in a moment. */
  searching: boolean;
  /** How many pieces the whole house needs. */
  needed: number;
  /** How many of them are cut and as they should be. */
  right: number;
  /** Pieces that are not as they should be any more. */
  wrong: WrongPiece[];
  /** Pieces to be cut from stock once more, their place's piece having been spoiled or become wrong. */
  cut_again: PieceNeeded[];
  /** What is still to be cut from stock: recut pieces and those that are right are left out. */
  cut_list: CutListAnswer;
}

/** One profile's stock: what the yard sells of it, and what is on hand. */
export interface Stock {
  /** Its name, as the trim's pieces name theirs. A name on one line, not starting with a space. */
  profile: string;
  /** The lengths the yard sells. */
  sticks: Stick[];
  lengths_on_hand?: LengthsOnHand[];
  /** Asks that each opening's pieces come side by side from one stick, so that their grain and color agree; those no stick can hold are named in the plan's `split_openings`. Openings alike under one mark count as one: give each its own mark where each is to have its own stick. */
  one_stick_each?: boolean;
  /** Pieces are cut off square and mitered afterwards: one more cut each, and what cuts a piece off from its stick eats the kerf alone. Otherwise a miter cuts the piece off, and eats more than a square cut. */
  square_first?: boolean;
  /** Flat and square-edged, so that mitered ends may share a cut. */
  turnable?: boolean;
}

/** What the yard sells of one profile, and how its sticks may be laid out. */
export interface StockForSale {
  /** Its name, as the trim's pieces name theirs. A name on one line, not starting with a space. */
  profile: string;
  /** The lengths the yard sells. */
  sticks: Stick[];
  /** Asks that each opening's pieces come side by side from one stick, so that their grain and color agree; those no stick can hold are named in the plan's `split_openings`. Openings alike under one mark count as one: give each its own mark where each is to have its own stick. */
  one_stick_each?: boolean;
  /** Pieces are cut off square and mitered afterwards: one more cut each, and what cuts a piece off from its stick eats the kerf alone. Otherwise a miter cuts the piece off, and eats more than a square cut. */
  square_first?: boolean;
  /** Flat and square-edged, so that mitered ends may share a cut. */
  turnable?: boolean;
}

/** The stool: the inside sill that the side casing stands on. */
export interface Stool {
  /** Of the stock. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  thickness: LengthText;
  /** How far it runs past the trim's outside edge, each end. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  horn: LengthText;
  /** How far it stands past the apron's face. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  nosing: LengthText;
  /** Radius of eased ends. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  ease?: LengthText;
  /** How the horns end. */
  ends?: StoolEnds;
  /** Its name at the yard. A name on one line, not starting with a space. */
  profile?: string;
  /** Left open between its back edge and the sash. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  sash_clearance?: LengthText;
  /** Left on each horn's wall edge, to be scribed to the wall. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  scribe?: LengthText;
  /** Width of the stock before ripping, where it is known. */
  stock_width?: LengthText | null;
}

/** A horn's end: cut square, square with its edges eased, or its nosing returned to the wall. */
export type StoolEnds = "eased" | "mitered_return" | "square";

/** A stool's readings and choices. Give `jamb_depth`, or `left_depth` and `right_depth` where they differ. */
export interface StoolRequest {
  /** How far it runs past the trim's outside edge, each end. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  horn: LengthText;
  /** How far it stands past the apron's face. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  nosing: LengthText;
  /** Jamb to jamb. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  jamb_width: LengthText;
  /** Jamb left showing beside the casing. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  reveal: LengthText;
  /** Across the face of the side casing. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  casing_width: LengthText;
  /** Off the wall: the nosing stands past its face. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  apron_thickness: LengthText;
  /** Radius of eased ends. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  ease?: LengthText;
  /** How the horns end. */
  ends?: StoolEnds;
  /** Wall face back to the sash stop where the stool's back edge lands. */
  jamb_depth?: LengthText | null;
  /** The same at the left jamb. */
  left_depth?: LengthText | null;
  /** Its name at the yard. A name on one line, not starting with a space. */
  profile?: string;
  /** The same at the right jamb. */
  right_depth?: LengthText | null;
  /** How lengths of the answer are rounded. */
  rounding?: Rounding;
  /** Left open between its back edge and the sash. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  sash_clearance?: LengthText;
  /** Left on each horn's wall edge, to be scribed to the wall. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  scribe?: LengthText;
  /** Width of the stock before ripping, where it is known. */
  stock_width?: LengthText | null;
  /** Of the stock. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  thickness?: LengthText;
  /** The unit of lengths that are written without one; without it each must carry its own. */
  unit?: Unit | null;
}

/** A lot of lengths on hand, as it was sent. */
export interface StoredLength {
  /** From end to end. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  length: LengthText;
  /** The profile's name, as trim specs and stock have it. A name on one line, not starting with a space. */
  profile: string;
  /** Its id. */
  id: string;
  /** The schedule's revision that last changed it. */
  revision: number;
  /** How many are left to plan with: what was ordered or, where more came, delivered, less those used up. */
  available: number;
  /** Of what can be said of it: ordered while some are to come, delivered when some came, on_hand while some of those are left, used_up when none is left to plan with. */
  states: (LengthState | (string & {}))[];
  /** What is odd of it: more came than were ordered. */
  notes: string[];
  /** Its lengths exactly. Every length exactly, by its JSON pointer, as a fraction of an inch. */
  exact: Record<string, string>;
  /** Stretches no piece may touch. */
  defects: Defect[];
  /** How many came or were found, all told. When left out, none of those that were ordered and, where nothing is said of an order, one. */
  delivered: number | null;
  /** What it is called, once in a schedule; the service names it where this is left out. */
  lot: string | null;
  /** Where it came from, or stands. Free text; may have several lines. */
  note: string;
  /** How many were ordered, all told; none when left out. */
  ordered: number | null;
  /** What was paid for each; `price` is what using one is taken to cost when sticks are planned. An amount of money as decimal text, at most two places. */
  paid: string;
  /** What using it is taken to cost. An amount of money as decimal text, at most two places. */
  price: string;
  /** The stick that it is left over from, where it is an offcut of one. */
  stick: string | null;
  /** How many of them are gone, all told: cut, spoiled or given away. */
  used_up: number;
}

/** An opening as it was sent, and the exact value of every length in it. */
export interface StoredOpening {
  /** What it is called in the house; part of each piece's name. A name on one line, not starting with a space. */
  mark: string;
  /** What the tape read. */
  readings: Readings;
  /** The name of one of the house's trim specs. A name on one line, not starting with a space. */
  trim: string;
  /** Its id. */
  id: string;
  /** The schedule's revision that last changed it. */
  revision: number;
  /** Its place in the schedule's order; places may be skipped. */
  position: number;
  /** Its lengths exactly. Every length exactly, by its JSON pointer, as a fraction of an inch. */
  exact: Record<string, string>;
  /** What the trim stands on. */
  bottom: Bottom | (string & {});
  /** How sure its readings are: estimated before anybody was there with a tape, measured, or confirmed by measuring again. An estimated opening counts in the cost, and nothing is bought or cut for it. */
  certainty: Certainty | (string & {});
  /** How many are alike. */
  count: number;
  /** Whether it is held back: it counts in the cost, and nothing is bought or cut for it until it is released. */
  held: boolean;
  /** Its own, where they are not the trim's. */
  horns: Horns;
  /** Its own, where they are not the trim's. */
  reveals: Reveals;
  /** Where it is; money is told by room, too. */
  room: string;
  /** What is done under a stool on a sill out of level. */
  sill_answer: SillAnswer | (string & {});
  /** The joint gap below which an opening that is out of square is treated as square. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  square_gap: LengthText;
  /** Takes up what was found of a wall out of plane; until one is chosen no size changes for it. */
  wall_answer: WallAnswer | (string & {});
  /** How far the wall may lie off the jamb's edge before the casing is planed or the jamb extended. */
  wall_limits: Limits;
  /** Its own, where pieces are ripped. */
  widths: Widths;
  /** Leaves the trim's apron out. */
  without_apron: boolean;
}

/** A piece that was cut. */
export interface StoredPiece {
  /** Which part of it: its `key` in the cut list or, where work is recorded, its number as sheets have it, `K1-4` or, of several alike, `L1-4.2`. */
  piece: string;
  /** Which of several alike, counted from 1. */
  instance: number;
  /** Anything worth knowing. Free text; may have several lines. */
  note: string;
  /** What it was cut for: an opening, or a group for what its openings share. */
  opening_id: string;
  /** The mark of that opening or group when it was cut. */
  opening: string;
  /** What became of it. */
  state: PieceState | (string & {});
  /** The name of the stick it was cut from as planned; null where it was cut otherwise. */
  stick: string | null;
  /** Its id. */
  id: string;
  /** The schedule's revision that last changed it. */
  revision: number;
  /** The stock it was cut from. */
  profile: string;
  /** Its farthest extent, as it was marked. */
  length: MarkedLength;
}

/** A plan of a schedule's sticks. */
export interface StoredPlan {
  /** Its number; the schedule's plans are counted from 1. */
  number: number;
  /** Whether it is the plan of what the schedule is now. */
  stands: boolean;
  /** When it was made. RFC 3339, in UTC. */
  made_at: string;
  /** When something was first printed or cut from it; null while nothing was. Such a plan is kept; of the others the oldest go. */
  used_at: string | null;
  /** How long was allowed for the search; 0 took the first plan that was found. */
  planning_seconds: number;
  /** Of the sticks that were left to cut when it was made. An amount of money as decimal text with two places. */
  cost: string;
  /** No plan of them costs less. An amount of money as decimal text with two places. */
  bound: string;
  /** How far the cost may be above the cheapest: zero is proven. An amount of money as decimal text with two places. */
  above: string;
  /** Whether no plan can be cheaper. */
  proven: boolean;
  /** How good it is, profile by profile. */
  profiles: PlannedSticks[];
  /** Every stick of it. */
  sticks: StoredStick[];
  /** Sticks of the plan before it that it has no more: their names are never used again. */
  changed: string[];
  /** What is still to be bought for it, a line for each profile and length. */
  buy: BuyLine[];
}

/** A schedule as it stands, its openings aside. */
export interface StoredSchedule {
  /** Its id. */
  id: string;
  /** The number of its latest revision. */
  revision: number;
  /** How many openings it has; alike ones under one mark are one. */
  opening_count: number;
  /** When it was made. RFC 3339, in UTC. */
  created_at: string;
  /** When it was last changed. RFC 3339, in UTC. */
  updated_at: string;
  /** When it was archived; null when it is not. */
  archived_at: string | null;
  /** What is said of the house as a whole, as it was sent. */
  house: KeptHouse;
  /** Its lengths exactly. Every length exactly, by its JSON pointer, as a fraction of an inch. */
  exact: Record<string, string>;
}

/** A stick of a plan that is kept. */
export interface StoredStick {
  /** What sheets call it: a name stands for this one layout of one stick. */
  name: string;
  /** From end to end. */
  length: MarkedLength;
  on_hand: boolean;
  /** What it costs. An amount of money as decimal text with two places. */
  price: string;
  /** From its left end to its right. */
  pieces: PlacedPiece[];
  /** What remains. */
  offcut: MarkedLength;
  /** Whether that goes back on the rack. */
  kept: boolean;
  /** What it is. */
  profile: string;
  /** The lot of lengths on hand that it comes from; null for one to buy. */
  lot: string | null;
  /** Planned to be cut, cut already, or changed: laid out otherwise under other names by now. */
  state: "changed" | "cut" | "planned" | (string & {});
}

/** The ends of a fillet or a cap over a butted head. */
export type StripEnds = "mitered_return" | "square";

/** A reading that alone could explain the disagreement. */
export interface Suspect {
  /** Its field. */
  reading: string;
  /** As read. */
  measured: string;
  /** What it should read if every other reading is right. */
  would_be: string;
  /** What it would be less what was measured. */
  change: string;
  /** What speaks for it. */
  why: string;
}

/** One table of a sheet. */
export interface TableContents {
  /** Its name, which `table` asks for in a CSV answer. */
  key: string;
  /** Its title. */
  caption: string;
  /** Headings from left to right. */
  columns: string[];
  /** The cells, as they are printed. */
  rows: string[][];
}

/** Rip widths at a piece's two ends as it lies on the saw. */
export interface Taper {
  /** At its left end. */
  left: MarkedLength;
  /** At its right end. */
  right: MarkedLength;
}

/** What hands-on time goes to. */
export type Task = "caulk" | "cut" | "fill" | "final_coat" | "install" | "measure" | "nail" | "paint" | "rip" | "rout" | "set_up";

/** What a cut is made with. */
export type Tool = "hand_saw" | "miter_saw" | "table_saw";

/** The trim chosen for one opening or for many. */
export interface Trim {
  /** Legs, and head and sill unless these have their own; null leaves the opening uncased, the wall returning to the jamb. */
  casing: Casing | null;
  /** Jamb left showing, on every side unless the opening says otherwise. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  reveal: LengthText;
  /** Null for none. */
  apron?: Apron | null;
  /** Round mitered casing. */
  back_band?: BackBand | null;
  /** A picture frame's sill's own, where it is not that of the legs. */
  bottom_casing?: Casing | null;
  /** Over a butted head. */
  cap?: HeadStrip | null;
  /** For a head style of corner blocks. */
  corner_block?: CornerBlock | null;
  /** Boards that bring the jamb out to the wall. */
  extension?: JambExtension | null;
  /** Under a butted head. */
  fillet?: HeadStrip | null;
  /** Left under a door's legs. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  floor_clearance?: LengthText;
  /** The head's own, where it is not that of the legs. */
  head_casing?: Casing | null;
  /** Mitered, butted or with corner blocks. */
  head_style?: HeadStyle;
  /** Over the joints between units. */
  mull_casing?: Casing | null;
  /** How far a butted head runs past the legs' outside edges. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  overhang?: LengthText;
  /** Blocks under a door's legs. */
  plinth?: Plinth | null;
  /** Null for none. */
  stool?: Stool | null;
  /** A door's stop, for a door to be hung. */
  stop?: DoorStop | null;
}

/** A unit of length, named as it is written after a number. */
export type Unit = "cm" | "ft" | "in" | "m" | "mm";

/** A profile, a material or a task that no price was given for: it costs nothing here. */
export interface Unpriced {
  /** Stock for a profile that no stock was given for, or whose stock does not give what is held back; consumable for a material, labor for a task. */
  category: string;
  /** The profile, the material's code or the task. */
  name: string;
}

/** What an hour of hands-on work costs. Without either, labor has its hours and no money. */
export interface Wages {
  /** An hour of any task that has no wage of its own. */
  hour?: string | null;
  /** Tasks that cost otherwise. */
  tasks?: Record<string, string>;
}

/** A drying wait, the whole house's together. */
export interface Wait {
  /** What has to dry. */
  after: string;
  /** How long it takes. */
  hours: number;
  /** Name of the rate it is taken from. */
  rate: string;
}

/** What is done where the wall does not lie flush: nothing that changes a size, casing that leans on it, or a jamb extension. */
export type WallAnswer = "extend" | "flat" | "lean";

/** Widths that pieces are ripped to at this opening; without one the stock's own is kept. */
export interface Widths {
  /** The apron's. */
  apron?: LengthText | null;
  /** The head casing's. */
  head?: LengthText | null;
  /** The left casing's. */
  left?: LengthText | null;
  /** The right casing's. */
  right?: LengthText | null;
  /** A picture frame's bottom casing's. */
  sill?: LengthText | null;
}

/** Work that was done: pieces cut, fitted or spoiled, lengths that are on hand from now on, and lengths used up. */
export interface Work {
  /** Lots that are new: what is left over from a cut, or was found. */
  lengths?: LengthOnHand[];
  /** What was done with each piece. */
  pieces?: PieceDone[];
  /** The lot of each length that was used up; a lot as often as lengths of it were. */
  used_lengths?: string[];
}

/** Work that was recorded. */
export interface WorkMade {
  /** The schedule's revision it made. */
  revision: number;
  /** Every piece it touched, as it now is; those cut again from are gone. */
  pieces: StoredPiece[];
  /** The lots that are new. */
  lengths: string[];
  /** What else is to be known: claims that were over, sticks that were recorded before. */
  notes: string[];
}

/** A piece that was cut and is not what its place needs any more. */
export interface WrongPiece {
  /** As it was cut. */
  piece: StoredPiece;
  /** What its place needs now; null when the house has no such place any more. */
  needed: PieceNeeded | null;
  /** What it can be cut again into; null when it does for nothing that is still needed. */
  recut_into: PieceNeeded | null;
}

/** Every operation, by its id: where it is, what it takes and what it gives. */
export interface Operations {
  /** Work out a house's cut list */
  compute_cut_list: {
    method: "POST";
    path: "/v1/cut-list";
    query: { "paper"?: "letter" | "a4"; "title"?: string; "feet"?: boolean; "table"?: string };
    request: CutListRequest;
    response: CutListAnswer;
  };
  /** Work out a house's materials */
  compute_materials: {
    method: "POST";
    path: "/v1/materials";
    request: House;
    response: MaterialsAnswer;
  };
  /** Is the process alive? */
  check_live: {
    method: "GET";
    path: "/health/live";
    response: Health;
  };
  /** Is the service ready for work? */
  check_ready: {
    method: "GET";
    path: "/health/ready";
    response: Health;
  };
  /** Export a schedule */
  export_schedule: {
    method: "GET";
    path: "/v1/schedules/{schedule_id}/export";
    parameters: { "schedule_id": string };
    query: { "revision"?: number };
    header: { "If-None-Match"?: string };
    response: NewSchedule;
  };
  /** Import openings */
  import_openings: {
    method: "POST";
    path: "/v1/schedules/{schedule_id}/import";
    parameters: { "schedule_id": string };
    query: { "existing"?: "refuse" | "update" | "replace"; "dry_run"?: boolean; "why"?: string };
    header: { "If-Match"?: string; "Idempotency-Key"?: string };
    request: Openings;
    response: Imported;
  };
  /** Read lengths */
  read_lengths: {
    method: "POST";
    path: "/v1/lengths";
    request: LengthsRequest;
    response: LengthsAnswer;
  };
  /** List lengths on hand */
  list_lengths: {
    method: "GET";
    path: "/v1/schedules/{schedule_id}/lengths";
    parameters: { "schedule_id": string };
    query: { "limit"?: number; "cursor"?: string; "profile"?: string; "state"?: LengthState };
    response: Page<StoredLength>;
  };
  /** Add lengths that are on hand */
  add_length: {
    method: "POST";
    path: "/v1/schedules/{schedule_id}/lengths";
    parameters: { "schedule_id": string };
    query: { "why"?: string };
    header: { "If-Match"?: string; "Idempotency-Key"?: string };
    request: LengthOnHand;
    response: StoredLength;
  };
  /** Remove a lot */
  remove_length: {
    method: "DELETE";
    path: "/v1/schedules/{schedule_id}/lengths/{lot}";
    parameters: { "schedule_id": string; "lot": string };
    query: { "why"?: string };
    header: { "If-Match": string };
    response: Made;
  };
  /** Read a lot */
  get_length: {
    method: "GET";
    path: "/v1/schedules/{schedule_id}/lengths/{lot}";
    parameters: { "schedule_id": string; "lot": string };
    header: { "If-None-Match"?: string };
    response: StoredLength;
  };
  /** Say what there is of a lot */
  put_length: {
    method: "PUT";
    path: "/v1/schedules/{schedule_id}/lengths/{lot}";
    parameters: { "schedule_id": string; "lot": string };
    query: { "why"?: string };
    header: { "If-Match"?: string };
    request: LengthOnHand;
    response: StoredLength;
  };
  /** Work out an apron */
  compute_apron: {
    method: "POST";
    path: "/v1/apron";
    request: ApronRequest;
    response: PiecesAnswer;
  };
  /** Work out casing */
  compute_casing: {
    method: "POST";
    path: "/v1/casing";
    request: CasingRequest;
    response: PiecesAnswer;
  };
  /** Work out corners out of square */
  compute_corners: {
    method: "POST";
    path: "/v1/corners";
    request: CornersRequest;
    response: Corners;
  };
  /** Work out how wood moves */
  compute_movement: {
    method: "POST";
    path: "/v1/movement";
    request: MovementRequest;
    response: Movement;
  };
  /** Work out one opening */
  compute_opening: {
    method: "POST";
    path: "/v1/opening";
    query: { "drawing"?: "elevation" | "section" | "piece"; "piece"?: string; "feet"?: boolean };
    request: OpeningRequest;
    response: OpeningAnswer;
  };
  /** Work out a stool */
  compute_stool: {
    method: "POST";
    path: "/v1/stool";
    request: StoolRequest;
    response: PiecesAnswer;
  };
  /** Hold openings back */
  hold_openings: {
    method: "POST";
    path: "/v1/schedules/{schedule_id}/hold";
    parameters: { "schedule_id": string };
    query: { "why"?: string };
    header: { "If-Match"?: string; "Idempotency-Key"?: string };
    request: Chosen;
    response: Released;
  };
  /** List openings */
  list_openings: {
    method: "GET";
    path: "/v1/schedules/{schedule_id}/openings";
    parameters: { "schedule_id": string };
    query: { "limit"?: number; "cursor"?: string; "room"?: string; "trim"?: string; "bottom"?: Bottom };
    header: { "If-None-Match"?: string };
    response: Page<StoredOpening>;
  };
  /** Add an opening */
  add_opening: {
    method: "POST";
    path: "/v1/schedules/{schedule_id}/openings";
    parameters: { "schedule_id": string };
    query: { "why"?: string };
    header: { "If-Match"?: string; "Idempotency-Key"?: string };
    request: HouseOpening;
    response: StoredOpening;
  };
  /** Take an opening off the schedule */
  remove_opening: {
    method: "DELETE";
    path: "/v1/schedules/{schedule_id}/openings/{opening}";
    parameters: { "schedule_id": string; "opening": string };
    query: { "why"?: string };
    header: { "If-Match": string };
    response: Made;
  };
  /** Read an opening */
  get_opening: {
    method: "GET";
    path: "/v1/schedules/{schedule_id}/openings/{opening}";
    parameters: { "schedule_id": string; "opening": string };
    header: { "If-None-Match"?: string };
    response: StoredOpening;
  };
  /** Measure an opening again */
  replace_opening: {
    method: "PUT";
    path: "/v1/schedules/{schedule_id}/openings/{opening}";
    parameters: { "schedule_id": string; "opening": string };
    query: { "why"?: string };
    header: { "If-Match": string };
    request: HouseOpening;
    response: StoredOpening;
  };
  /** Release openings for buying and cutting */
  release_openings: {
    method: "POST";
    path: "/v1/schedules/{schedule_id}/release";
    parameters: { "schedule_id": string };
    query: { "why"?: string };
    header: { "If-Match"?: string; "Idempotency-Key"?: string };
    request: Chosen;
    response: Released;
  };
  /** List plans */
  list_plans: {
    method: "GET";
    path: "/v1/schedules/{schedule_id}/plans";
    parameters: { "schedule_id": string };
    query: { "limit"?: number; "cursor"?: string };
    response: Page<PlanLine>;
  };
  /** Plan the sticks */
  make_plan: {
    method: "POST";
    path: "/v1/schedules/{schedule_id}/plans";
    parameters: { "schedule_id": string };
    header: { "Idempotency-Key"?: string };
    request: PlanAsked;
    response: StoredPlan;
  };
  /** Read a plan */
  get_plan: {
    method: "GET";
    path: "/v1/schedules/{schedule_id}/plans/{number}";
    parameters: { "schedule_id": string; "number": number };
    header: { "If-None-Match"?: string };
    response: StoredPlan;
  };
  /** Read a stick */
  get_stick: {
    method: "GET";
    path: "/v1/schedules/{schedule_id}/sticks/{name}";
    parameters: { "schedule_id": string; "name": string };
    header: { "If-None-Match"?: string };
    response: StickDetail;
  };
  /** Release a stick */
  release_stick: {
    method: "DELETE";
    path: "/v1/schedules/{schedule_id}/sticks/{name}/claim";
    parameters: { "schedule_id": string; "name": string };
    query: { "by"?: string };
    response: StickDetail;
  };
  /** Claim a stick to cut it */
  claim_stick: {
    method: "PUT";
    path: "/v1/schedules/{schedule_id}/sticks/{name}/claim";
    parameters: { "schedule_id": string; "name": string };
    request: Claim;
    response: StickDetail;
  };
  /** Compare two revisions */
  compare_revisions: {
    method: "GET";
    path: "/v1/schedules/{schedule_id}/changes";
    parameters: { "schedule_id": string };
    query: { "from": number; "to"?: number };
    header: { "If-None-Match"?: string };
    response: Changes;
  };
  /** Go back to a revision */
  restore_revision: {
    method: "POST";
    path: "/v1/schedules/{schedule_id}/restore";
    parameters: { "schedule_id": string };
    query: { "why"?: string };
    header: { "If-Match": string; "Idempotency-Key"?: string };
    request: GoBack;
    response: StoredSchedule;
  };
  /** List revisions */
  list_revisions: {
    method: "GET";
    path: "/v1/schedules/{schedule_id}/revisions";
    parameters: { "schedule_id": string };
    query: { "limit"?: number; "cursor"?: string };
    response: Page<Revision>;
  };
  /** Read a revision */
  get_revision: {
    method: "GET";
    path: "/v1/schedules/{schedule_id}/revisions/{number}";
    parameters: { "schedule_id": string; "number": number };
    header: { "If-None-Match"?: string };
    response: RevisionDetail;
  };
  /** List schedules */
  list_schedules: {
    method: "GET";
    path: "/v1/schedules";
    query: { "limit"?: number; "cursor"?: string; "name"?: string; "archived"?: boolean };
    response: Page<ScheduleLine>;
  };
  /** Start a house's schedule */
  create_schedule: {
    method: "POST";
    path: "/v1/schedules";
    query: { "why"?: string };
    header: { "Idempotency-Key"?: string };
    request: NewSchedule;
    response: StoredSchedule;
  };
  /** Delete an archived schedule */
  delete_schedule: {
    method: "DELETE";
    path: "/v1/schedules/{schedule_id}";
    parameters: { "schedule_id": string };
    header: { "If-Match": string };
  };
  /** Read a schedule */
  get_schedule: {
    method: "GET";
    path: "/v1/schedules/{schedule_id}";
    parameters: { "schedule_id": string };
    header: { "If-None-Match"?: string };
    response: StoredSchedule;
  };
  /** Change what is said of the house */
  replace_schedule: {
    method: "PUT";
    path: "/v1/schedules/{schedule_id}";
    parameters: { "schedule_id": string };
    query: { "why"?: string };
    header: { "If-Match": string };
    request: KeptHouse;
    response: StoredSchedule;
  };
  /** Put a schedule away */
  archive_schedule: {
    method: "POST";
    path: "/v1/schedules/{schedule_id}/archive";
    parameters: { "schedule_id": string };
    query: { "why"?: string };
    header: { "If-Match": string; "Idempotency-Key"?: string };
    response: StoredSchedule;
  };
  /** Take a schedule out of the archive */
  unarchive_schedule: {
    method: "POST";
    path: "/v1/schedules/{schedule_id}/unarchive";
    parameters: { "schedule_id": string };
    query: { "why"?: string };
    header: { "If-Match": string; "Idempotency-Key"?: string };
    response: StoredSchedule;
  };
  /** Get a blank measure sheet */
  get_blank_measure_sheet: {
    method: "GET";
    path: "/v1/sheets/blank-measure-sheet";
    query: { "paper"?: "letter" | "a4"; "title"?: string; "feet"?: boolean; "table"?: string };
    header: { "If-None-Match"?: string };
    response: SheetContents;
  };
  /** Make the cost sheet */
  make_cost_sheet: {
    method: "POST";
    path: "/v1/sheets/cost-sheet";
    query: { "paper"?: "letter" | "a4"; "title"?: string; "feet"?: boolean; "table"?: string };
    request: CutListRequest;
    response: SheetContents;
  };
  /** Make the labels */
  make_labels: {
    method: "POST";
    path: "/v1/sheets/labels";
    query: { "paper"?: "letter" | "a4"; "title"?: string; "feet"?: boolean; "table"?: string };
    request: LabelsRequest;
    response: SheetContents;
  };
  /** Make the material list */
  make_material_list: {
    method: "POST";
    path: "/v1/sheets/material-list";
    query: { "paper"?: "letter" | "a4"; "title"?: string; "feet"?: boolean; "table"?: string };
    request: CutListRequest;
    response: SheetContents;
  };
  /** Make the measure sheet */
  make_measure_sheet: {
    method: "POST";
    path: "/v1/sheets/measure-sheet";
    query: { "paper"?: "letter" | "a4"; "title"?: string; "feet"?: boolean; "table"?: string };
    request: CutListRequest;
    response: SheetContents;
  };
  /** Make the opening sheet */
  make_opening_sheet: {
    method: "POST";
    path: "/v1/sheets/opening-sheet";
    query: { "paper"?: "letter" | "a4"; "title"?: string; "feet"?: boolean; "table"?: string };
    request: CutListRequest;
    response: SheetContents;
  };
  /** Make the stick sheet */
  make_stick_sheet: {
    method: "POST";
    path: "/v1/sheets/stick-sheet";
    query: { "paper"?: "letter" | "a4"; "title"?: string; "feet"?: boolean; "table"?: string };
    request: CutListRequest;
    response: SheetContents;
  };
  /** Work out what is still to be cut */
  compute_schedule_cut_list: {
    method: "GET";
    path: "/v1/schedules/{schedule_id}/cut-list";
    parameters: { "schedule_id": string };
    query: { "include"?: Record<string, unknown>; "room"?: Record<string, unknown>; "opening"?: Record<string, unknown> };
    header: { "If-None-Match"?: string };
    response: StillToCut;
  };
  /** Record sticks cut as they were planned */
  cut_sticks: {
    method: "POST";
    path: "/v1/schedules/{schedule_id}/cut-sticks";
    parameters: { "schedule_id": string };
    query: { "why"?: string };
    header: { "If-Match"?: string; "Idempotency-Key"?: string };
    request: CutSticks;
    response: WorkMade;
  };
  /** Draw the sticks to scale */
  get_sticks_drawing: {
    method: "GET";
    path: "/v1/schedules/{schedule_id}/drawings/sticks";
    parameters: { "schedule_id": string };
    query: { "feet"?: boolean; "room"?: Record<string, unknown>; "opening"?: Record<string, unknown> };
    header: { "If-None-Match"?: string };
  };
  /** Draw an opening to scale */
  get_opening_drawing: {
    method: "GET";
    path: "/v1/schedules/{schedule_id}/openings/{opening}/drawing";
    parameters: { "schedule_id": string; "opening": string };
    query: { "drawing"?: "elevation" | "section" | "piece"; "piece"?: string; "feet"?: boolean };
    header: { "If-None-Match"?: string };
  };
  /** Make a sheet of a schedule */
  get_schedule_sheet: {
    method: "GET";
    path: "/v1/schedules/{schedule_id}/sheets/{sheet}";
    parameters: { "schedule_id": string; "sheet": "cut-list" | "opening-sheet" | "stick-sheet" | "material-list" | "cost-sheet" | "measure-sheet" | "labels" };
    query: { "paper"?: "letter" | "a4"; "title"?: string; "feet"?: boolean; "table"?: string; "format"?: "html" | "pdf" | "csv" | "json"; "skip"?: number; "room"?: Record<string, unknown>; "opening"?: Record<string, unknown> };
    header: { "If-None-Match"?: string };
    response: SheetContents;
  };
  /** List pieces that were cut */
  list_pieces: {
    method: "GET";
    path: "/v1/schedules/{schedule_id}/work";
    parameters: { "schedule_id": string };
    query: { "limit"?: number; "cursor"?: string; "opening"?: string; "state"?: PieceState };
    response: Page<StoredPiece>;
  };
  /** Record what was cut, fitted or spoiled */
  record_work: {
    method: "POST";
    path: "/v1/schedules/{schedule_id}/work";
    parameters: { "schedule_id": string };
    query: { "why"?: string };
    header: { "If-Match"?: string; "Idempotency-Key"?: string };
    request: Work;
    response: WorkMade;
  };
  /** Strike a piece that was recorded by mistake */
  remove_piece: {
    method: "DELETE";
    path: "/v1/schedules/{schedule_id}/work/{piece_id}";
    parameters: { "schedule_id": string; "piece_id": string };
    query: { "why"?: string };
    header: { "If-Match": string };
    response: Made;
  };
  /** Read a piece */
  get_piece: {
    method: "GET";
    path: "/v1/schedules/{schedule_id}/work/{piece_id}";
    parameters: { "schedule_id": string; "piece_id": string };
    header: { "If-None-Match"?: string };
    response: StoredPiece;
  };
}
