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
  /** The moisture content of the wood as a meter showed it, in percent. */
  moisture_content?: number | null;
  /** The name to call these conditions by. A name on one line, not starting with a space. */
  name?: string;
  /** The relative humidity of the air, in percent. */
  relative_humidity?: number | null;
  /** The temperature of the air, in degrees of the scale. Below 30 degrees Fahrenheit (-1 Celsius), where the table begins, wood is taken to hold what it holds at 30. */
  temperature?: number | null;
}

/** The apron under a stool. */
export interface Apron {
  /** The width of the apron, measured down the wall from its upper to its lower edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  width: LengthText;
  /** The thickness of the apron, measured from the wall out to its face. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  thickness: LengthText;
  /** How far angled ends slant back below the stool from a square cut. Degrees off a square cut. */
  end_angle?: number;
  /** It says how the ends are made: mitered returns, square cuts, or cut back at an angle. */
  ends?: ApronEnds;
  /** The name that the yard sells it under, as the `profile` of a stock has it. A name on one line, not starting with a space. */
  profile?: string;
}

/** An apron's end: with a return to the wall, cut square, or cut back at an angle below the stool. */
export type ApronEnds = "angled" | "mitered_return" | "square";

/** An apron's readings and choices: it ends flush with the casing's outside edges. */
export interface ApronRequest {
  /** The thickness of the apron, measured from the wall out to its face. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  thickness: LengthText;
  /** The clear width, measured from the left jamb's inside face to the right jamb's. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  jamb_width: LengthText;
  /** The jamb's edge that stays in sight, measured from the jamb's inside face to the casing's inner edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  reveal: LengthText;
  /** The width of the side casing, measured across its face from inner to outer edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  casing_width: LengthText;
  /** How far angled ends slant back below the stool from a square cut. Degrees off a square cut. */
  end_angle?: number;
  /** It says how the ends are made: mitered returns, square cuts, or cut back at an angle. */
  ends?: ApronEnds;
  /** The name that the yard sells it under, as the `profile` of a stock has it. A name on one line, not starting with a space. */
  profile?: string;
  /** It says how lengths of the answer are rounded. */
  rounding?: Rounding;
  /** The unit of lengths that are written without one; without it each must carry its own. */
  unit?: Unit | null;
  /** The width of the apron, measured down the wall from its upper to its lower edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  width?: LengthText;
}

/** A band round mitered casing. */
export interface BackBand {
  /** The width of the band, measured across its face from edge to edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  width: LengthText;
  /** The thickness of the band, measured from the wall out to its face. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  thickness: LengthText;
  /** The band lies this far over the casing's face, measured in from the casing's outer edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  lap?: LengthText;
  /** The name that the yard sells it under, as the `profile` of a stock has it. A name on one line, not starting with a space. */
  profile?: string;
}

/** It says whether an opening is new, gone or changed: itself, its trim or its group. */
export type Became = "changed" | "gone" | "group_changed" | "new" | "trim_changed";

/** What the side casings stand on: a window's `stool`, a bottom `casing` (a picture frame, without a stool), the `floor`, or a `plinth` block at each foot. */
export type Bottom = "casing" | "floor" | "plinth" | "stool";

/** Packages of one size. */
export interface Bought {
  /** The name of the package. */
  package: string;
  /** One package holds this much, in the material's unit. */
  size: number;
  /** The number of packages to buy. */
  count: number;
  /** The price of one; null where none was given. An amount of money as decimal text with two places. */
  price: string | null;
  /** The cost of them all; null where no price was given. An amount of money as decimal text with two places. */
  cost: string | null;
}

/** How a top board and side boards meet, of a jamb extension or a door's stop: butted, the top lies on the sides; or mitered. */
export type BoxCorners = "butted" | "mitered";

/** A line for the yard. */
export interface BuyLine {
  /** The name to ask the yard for. */
  profile: string;
  /** The length of each stick, measured from end to end. */
  length: MarkedLength;
  /** The number of sticks. */
  quantity: number;
  /** The price of one stick. An amount of money as decimal text with two places. */
  price: string;
  /** The price of all these sticks. An amount of money as decimal text with two places. */
  cost: string;
}

/** The stick that the casing is cut from. */
export interface Casing {
  /** The width of the stock, measured across its face from inner to outer edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  width: LengthText;
  /** The thickness, measured from the back to the face at the thick (outer) edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  thickness: LengthText;
  /** It says whether the face is molded or flat. Where one of two pieces of molded casing is ripped, both are mitered at the stock's full width first. */
  face?: Face;
  /** The name that the yard sells it under, as the `profile` of a stock has it. A name on one line, not starting with a space. */
  profile?: string;
}

/** Casing's readings and choices, for plumb sides. Give `jamb_height`, or `left_jamb_height` and `right_jamb_height`. */
export interface CasingRequest {
  /** The clear width, measured from the left jamb's inside face to the right jamb's. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  jamb_width: LengthText;
  /** The jamb's edge that stays in sight, measured from the jamb's inside face to the casing's inner edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  reveal: LengthText;
  /** The width of the casing, measured across its face from inner to outer edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  casing_width: LengthText;
  /** It says what the casing stands on. */
  bottom?: Bottom;
  /** The casing's thickness, measured from the wall to its face at the thick (outer) edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  casing_thickness?: LengthText;
  /** The gap under a door's side casings, measured from the floor up to their ends. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  floor_clearance?: LengthText;
  /** It says how the head casing meets the side casings: mitered, or butted on top of them. */
  head_style?: HeadStyle;
  /** The height, measured from the stool's top, the sill jamb or the floor up to the underside of the head jamb. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  jamb_height?: LengthText | null;
  /** The height along the left jamb, measured as `jamb_height` is. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  left_jamb_height?: LengthText | null;
  /** A butted head runs this far past the outside edge of each side casing. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  overhang?: LengthText;
  /** The height of plinth blocks under a door's side casings, measured from the floor up. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  plinth_height?: LengthText | null;
  /** The casing's name at the yard. A name on one line, not starting with a space. */
  profile?: string;
  /** The height along the right jamb, measured as `jamb_height` is. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  right_jamb_height?: LengthText | null;
  /** It says how lengths of the answer are rounded. */
  rounding?: Rounding;
  /** The unit of lengths that are written without one; without it each must carry its own. */
  unit?: Unit | null;
}

/** What to know before starting: it informs and defers, and approves nothing. */
export interface Caution {
  /** A stable name of the caution. */
  code: string;
  /** The caution in words. */
  text: string;
  /** The source that the caution rests on. */
  source: string;
  /** The marks of the openings it was raised for; empty for the whole house. */
  applies_to: string[];
  /** The pieces it was raised for, where it bears on single cuts. */
  pieces: PieceName[];
}

/** It says how sure an opening's readings are. */
export type Certainty = "confirmed" | "estimated" | "measured";

/** A comparison of two revisions: it says what changed between them. */
export interface Changes {
  /** The number of the earlier revision. */
  from_revision: number;
  /** The number of the later revision. */
  to_revision: number;
  /** The changes to what is said of the house as a whole. */
  house: FieldChange[];
  /** Each opening that changed, by its place in the schedule. */
  openings: OpeningChange[];
  /** Each group of which a shared piece changed, by its mark. */
  groups: GroupChange[];
  /** The number of openings that stand in both and did not change. */
  unchanged_openings: number;
}

/** A reading that the shape did not need, against what the others make of it. */
export interface Check {
  /** The field of `readings` that was checked. */
  reading: string;
  /** The value as the tape read it. */
  measured: string;
  /** The value that the other readings give. */
  computed: string;
  /** The measured value less the computed one. */
  difference: string;
  /** Whether the difference is no more than a tape's, or an angle finder's, own error. */
  agrees: boolean;
}

/** Some of a schedule's openings. */
export interface Chosen {
  /** True means every opening there is. */
  all?: boolean;
  /** The openings, by their marks. */
  openings?: string[];
  /** The rooms of which every opening is meant. */
  rooms?: string[];
}

/** That somebody is about to cut a stick. */
export interface Claim {
  /** The name of who cuts it, or of the saw. A name on one line, not starting with a space. */
  by: string;
  /** The time that the claim lasts, in seconds; nobody else can cut the stick until then. */
  seconds?: number;
}

/** What is in the way, each to where the next thing begins; left out where nothing is. */
export interface Clearances {
  /** The free space above, measured from the head jamb's underside up to the next thing. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  above?: LengthText | null;
  /** The free space below, measured from the stool's top, or the base without one, down to the next thing. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  below?: LengthText | null;
  /** The free space to the left, measured from the left jamb's inside face to a wall, a cabinet or another thing. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  left?: LengthText | null;
  /** The distance from the left jamb's inside face to the jamb face of the next opening on the left. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  left_neighbor?: LengthText | null;
  /** The free space to the right, measured from the right jamb's inside face to a wall, a cabinet or another thing. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  right?: LengthText | null;
  /** The distance from the right jamb's inside face to the jamb face of the next opening on the right. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  right_neighbor?: LengthText | null;
}

/** Mitered pieces round a curve or a polygon whose lengths, and whose settings on the saw's scale of tenths of a degree, are rounded together. */
export interface Closing {
  /** The key of the piece whose beginning is held; the others are counted from it, counterclockwise. */
  first: string;
  /** How far `first` is turned off its exact direction, in degrees, counterclockwise; its foot is cut to match. */
  first_turned: number;
  /** Their joints, counterclockwise from the right; of a picture frame the last one closes the ring. */
  corners: ClosingCorner[];
  /** How far the whole stands open: from the end of the last piece to its exact place. */
  gap: string;
  /** Whether `gap` is at most one step of the rounding, as 1/16 in, and each corner's gap at most one and a half steps. */
  closes: boolean;
  /** The least gap that any way of rounding leaves; null where it closes, or where there are too many pieces to try every way. */
  least_gap: string | null;
  /** How far the end of the last piece comes off its place, the first being held, where each cut is 0.05 degrees off because the saw's pointer stands at zero while the blade is that far off square. */
  opens_off_zero: string;
  /** The joint to cut and try first, by its place in `corners`: its settings come most often. */
  try_first: number;
  /** How many pieces to lay out dry, from the first on, before the rest is cut. */
  dry_fit: number;
}

/** A joint of pieces that are rounded together. */
export interface ClosingCorner {
  /** The key of the piece that ends at this joint, going counterclockwise as seen from the room. */
  before: string;
  /** The key of the piece that begins at it. */
  after: string;
  /** The saw's setting for the end of `before`, off a square cut; negative where its long point lies on the inner edge. */
  before_degrees: number;
  /** The saw's setting for the end of `after`, counted in the same way. */
  after_degrees: number;
  /** How far the joint's long point lies from its exact place once all before it are cut to their marks, measured in a straight line. */
  gap: string;
}

/** The saw's setting for a compound cut: the table is turned and the blade is tilted at once. */
export interface CompoundCut {
  /** The saw's table off a square cut. */
  miter_degrees: number;
  /** The saw is tilted this far from upright. */
  bevel_degrees: number;
}

/** The wood, the air its joints are made in, and what they will live through. */
export interface Conditions {
  /** The species of the wood. */
  species: Species;
  /** The conditions in which the joint is made. */
  installed: Air;
  /** Each set of conditions it will live through. */
  seasons: Air[];
  /** The way the boards were sawn from the log: flat-sawn or quarter-sawn. A flat-sawn board shrinks and swells more across its width. */
  grain?: Grain;
  /** The scale of the thermometer: Celsius or Fahrenheit. */
  scale?: Scale;
}

/** Readings that were doubted and stand as they are. Each is given as it was read: nothing more is said of it for as long as the opening has that very reading, and another is looked at anew. */
export interface Confirmed {
  /** The door's `height` that is confirmed. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  door_height?: LengthText | null;
  /** The door's `width` that is confirmed. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  door_width?: LengthText | null;
  /** The `head_width` that is confirmed. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  head_width?: LengthText | null;
  /** The `jamb_depth` that is confirmed. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  jamb_depth?: LengthText | null;
  /** The `jamb_height` that is confirmed. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  jamb_height?: LengthText | null;
  /** The `jamb_width` that is confirmed. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  jamb_width?: LengthText | null;
  /** The `left_depth` that is confirmed. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  left_depth?: LengthText | null;
  /** The `left_jamb_height` that is confirmed. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  left_jamb_height?: LengthText | null;
  /** The `right_depth` that is confirmed. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  right_depth?: LengthText | null;
  /** The `right_jamb_height` that is confirmed. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  right_jamb_height?: LengthText | null;
}

/** A square block at each corner, at least as wide as the casing it ends. */
export interface CornerBlock {
  /** The width of each face of the block, measured from edge to edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  width: LengthText;
  /** The thickness of the block, measured from the wall out to its face. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  thickness: LengthText;
  /** The name that the yard sells it under, as the `profile` of a stock has it. A name on one line, not starting with a space. */
  profile?: string;
}

/** One inside corner of the jamb. */
export interface CornerReading {
  /** The two sides that meet there, counterclockwise. */
  sides: [string];
  /** The inside angle of the corner. */
  degrees: number;
  /** How far that is from 90; positive where it is wider. */
  off_square_degrees: number;
  /** The joint gap that cutting for a square corner would leave; null where the corner is far from square. */
  gap_if_square: string | null;
  /** The place of the corner on the wall. */
  at: Point;
  /** The saw's setting for casing that leans off the wall, which needs a compound cut; null unless `spring_degrees` was given. */
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
  /** The readings that the tape gave. */
  readings: Readings;
  /** The width of the casing, measured across its face from inner to outer edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  casing_width: LengthText;
  /** The jamb's edge that stays in sight, measured from the jamb's inside face to the casing's inner edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  reveal: LengthText;
  /** It says what the casing stands on. */
  bottom?: Bottom;
  /** The casing's thickness, measured from the wall to its face at the thick (outer) edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  casing_thickness?: LengthText;
  /** The head casing's own width, measured as `casing_width` is, where the two differ: the stock is flat then, since two widths of molded casing do not meet at a miter. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  head_casing_width?: LengthText | null;
  /** The casing's name at the yard. A name on one line, not starting with a space. */
  profile?: string;
  /** It says how lengths of the answer are rounded. */
  rounding?: Rounding;
  /** The angle between a leaning casing's back and a line that stands square out of the wall: at 90 the back lies flat on the wall, and there is no bevel. */
  spring_degrees?: number | null;
  /** The widest gap, measured at the open end of a miter, that cuts for square corners may leave: up to it an opening is treated as square. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  square_gap?: LengthText;
  /** The unit of lengths that are written without one; without it each must carry its own. */
  unit?: Unit | null;
}

/** A line of the whole-house view. */
export interface CostLine {
  /** The category: stock, waste, kept_offcut, consumable or labor. */
  category: string;
  /** The profile, the material's code or the task. */
  name: string;
  /** The amount for the whole house. An amount of money as decimal text with two places. */
  amount: string;
  /** The amount of each opening, in the order of `openings`; they add up to `amount`. */
  by_opening: string[];
}

/** The same money by line, by opening and by room: each view adds up to the same cent. */
export interface CostSheet {
  /** The currency of every amount. */
  currency: string;
  /** The whole house, by category; of what is in `unpriced` it holds nothing. */
  total: CostTotals;
  /** The cost by what it is spent on. */
  lines: CostLine[];
  /** The cost by opening. */
  openings: OpeningCost[];
  /** The cost by room. */
  rooms: RoomCost[];
  /** These had no price and so are not in the sum. */
  unpriced: Unpriced[];
}

/** Amounts by category. */
export interface CostTotals {
  /** The part of the sticks' price that falls on the wood that became pieces of trim. An amount of money as decimal text with two places. */
  stock: string;
  /** The cost of kerfs, end trims and offcuts too short to keep. An amount of money as decimal text with two places. */
  waste: string;
  /** The cost of offcuts and lengths that are left. An amount of money as decimal text with two places. */
  kept_offcut: string;
  /** The cost of the materials beside the sticks. An amount of money as decimal text with two places. */
  consumable: string;
  /** The cost of the hands-on hours at the wages given. An amount of money as decimal text with two places. */
  labor: string;
  /** The sum of all categories. An amount of money as decimal text with two places. */
  total: string;
}

/** An end's cut: square; a miter, the table turned; a bevel, the blade tilted; compound, both. */
export type CutKind = "bevel" | "compound" | "miter" | "square";

/** A cut list: every opening's pieces, the sticks they come from, what to buy and what is left over. The sections that were not asked for are null. */
export interface CutListAnswer {
  /** The openings, each with its pieces. */
  openings: OpeningAnswer[];
  /** The sticks of each profile and what is cut from each. */
  plans: ProfilePlan[];
  /** The sticks to buy, a line for each profile and length. */
  buy: BuyLine[];
  /** What the sticks cost; of profiles in `unstocked` it holds nothing. An amount of money as decimal text with two places. */
  cost: string;
  /** Marks of the openings, and groups, that are held back or only estimated: no stick is cut for them yet. */
  held: string[];
  /** The estimated cost of the sticks for what is in `held`, planned first-fit after the others and from what those leave. An amount of money as decimal text with two places. */
  cost_later: string;
  /** Profiles of what is in `held` that the stock cannot give, so that `cost_later` holds nothing of them. */
  later_unpriced: string[];
  /** The currency of every amount. */
  currency: string;
  /** Whether no plan of any profile can be cheaper; false while a profile is unstocked. */
  proven: boolean;
  /** Profiles that pieces need and no stock was given for. */
  unstocked: string[];
  /** Profiles with stock from which nothing is cut. */
  unused_stock: string[];
  /** The offcuts that go back on the rack. */
  offcuts: LeftOver[];
  /** They say what was assumed or left out. */
  notes: string[];
  /** They say what to know before work starts. */
  cautions: Caution[];
  /** The cuts in the order to make them. */
  saw_order: SawOrder | null;
  /** The materials to buy beside the sticks. */
  materials: Materials | null;
  /** The hands-on time, and the drying waits. */
  hours: Hours | null;
  /** The money by line, by opening and by room. */
  cost_sheet: CostSheet | null;
}

/** A house or a part of one: openings, the trim they name, and the stock to cut from. With no stock, pieces are computed and no sticks. At most 50,000 pieces are worked out together, those of openings alike counted each, from at most 40,000 lengths on hand; their marks and profiles, each piece with its own, come to at most 4,000,000 bytes, and the seasons of all openings to 20,000. A sheet as HTML, PDF or SVG shows at most 2,500 pieces. */
export interface CutListRequest {
  /** The trims that its openings name. */
  trim_specs: Record<string, Trim>;
  /** The openings of the house. */
  openings: HouseOpening[];
  /** The currency of every price; it is only repeated in the answer. ISO 4217 code. */
  currency?: string;
  /** The length that is squared off each factory end, measured from that end in. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  end_trim?: LengthText;
  /** Openings trimmed together: those with heads in one line, or with one stool and apron under all of them; or joined units whose stool is too long for a stick. */
  groups?: HouseGroup[];
  /** Sections of the answer that are only worked out when asked for. */
  include?: Section[];
  /** An offcut of this length or longer is kept; it is measured from end to end. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  keep_length?: LengthText;
  /** The width of the kerf: what one cut eats, measured from one side of the cut to the other. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  kerf?: LengthText;
  /** The wood, and the air its joints will live through: the answer then says how far miters open. */
  movement?: Conditions | null;
  /** The time to search for cheaper sticks, in seconds, all profiles together, where the first plan is not proven cheapest. 0 takes the first plan. */
  planning_seconds?: number;
  /** It says how lengths are rounded. */
  rounding?: Rounding;
  /** It says how the shop works. */
  shop?: Shop;
  /** The sticks and lengths on hand that each profile can be cut from. */
  stock?: Stock[];
  /** The unit of lengths that are written without one; without it each must carry its own. */
  unit?: Unit | null;
}

/** One stick as it is cut. */
export interface CutStick {
  /** What sheets call it: a name stands for this one layout of one stick. */
  name: string;
  /** The length of the stick, measured from end to end. */
  length: MarkedLength;
  /** True where it is a length on hand, one on order too; false where it is one to buy. */
  on_hand: boolean;
  /** The price of the stick. An amount of money as decimal text with two places. */
  price: string;
  /** The pieces that it gives, from its left end to its right. */
  pieces: PlacedPiece[];
  /** The length that remains after the last cut, measured from there to the stick's end. */
  offcut: MarkedLength;
  /** Whether the offcut goes back on the rack. */
  kept: boolean;
}

/** Sticks that were cut just as they were planned. */
export interface CutSticks {
  /** The names of the sticks, as sheets and plans have them. */
  sticks: string[];
  /** Whether those that are laid out otherwise today were cut as they were printed before: their pieces are then recorded as they were, and the cut list says which of them do not fit any more. */
  as_printed?: boolean;
  /** Who cut them: needed for sticks that are claimed, by the name that claimed them. A name on one line, not starting with a space. */
  by?: string | null;
}

/** A cutout: it is sawn out of a stool's back edge between its ends, where it passes a mull or a stretch of wall. */
export interface Cutout {
  /** The place of the cutout, measured from the piece's left end as it lies on the saw. */
  at: MarkedLength;
  /** The length of the cutout, measured along the piece. */
  length: MarkedLength;
  /** The depth at the cutout's left end, measured from the back edge in. */
  depth: MarkedLength;
  /** The depth at the cutout's right end, measured from the back edge in; null where it is the same. */
  end_depth: MarkedLength | null;
}

/** A stretch of a stick that no piece may touch. */
export interface Defect {
  /** The start of the defect, measured from the left end of the stick as it lies, its face up. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  start: LengthText;
  /** The end of the defect, measured from the left end of the stick as it lies, its face up. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  end: LengthText;
}

/** A piece is cut, installed or spoiled. */
export type Done = "cut" | "installed" | "spoiled";

/** A door to be hung in a jamb made for it: the jamb's clear width and height follow from the door. The defaults are common practice. */
export interface Door {
  /** The door's own width, measured from edge to edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  width: LengthText;
  /** The door's own height, measured from its bottom to its top. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  height: LengthText;
  /** The distance from the door's bottom up to the bottom of its lowest hinge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  bottom_hinge?: LengthText;
  /** The gap under the door, measured from the finished floor to the door's bottom. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  floor_gap?: LengthText;
  /** The gap over the door, measured from its top to the underside of the head jamb. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  head_gap?: LengthText;
  /** The gap at the hinges, measured from the door's edge to the jamb. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  hinge_gap?: LengthText;
  /** The length of each hinge, measured from top to bottom. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  hinge_length?: LengthText;
  /** The side that the hinges are on, as seen from the room the trim is in. */
  hinge_side?: Hand;
  /** The number of hinges. */
  hinges?: number;
  /** The head jamb is let this deep into each side jamb, measured from the side jamb's face. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  housing?: LengthText;
  /** The width of the jamb stock, measured across the wall from edge to edge; of a window's readings `jamb_depth` is another measure, to the sash stop. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  jamb_depth?: LengthText;
  /** The thickness of the jamb stock, measured from face to face. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  jamb_thickness?: LengthText;
  /** The jamb stock's name at the yard. A name on one line, not starting with a space. */
  profile?: string;
  /** The height of the rough opening, measured from the finished floor to the underside of the header. Give it to have it checked. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  rough_height?: LengthText | null;
  /** The width of the rough opening, measured from stud to stud. Give it to have it checked. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  rough_width?: LengthText | null;
  /** The gap at the strike, measured from the door's latch edge to the jamb. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  strike_gap?: LengthText;
  /** The height of the strike, measured from the finished floor to the strike's middle. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  strike_height?: LengthText;
  /** The door's own thickness, measured from face to face. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  thickness?: LengthText;
  /** The distance from the door's top down to the top of its top hinge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  top_hinge?: LengthText;
}

/** The strip on a door's jamb that the closed door rests against. */
export interface DoorStop {
  /** The width of the stop, measured across its face from edge to edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  width: LengthText;
  /** The thickness of the stop, measured from the jamb out to its face. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  thickness: LengthText;
  /** It says how the pieces of the door stop meet at a corner. */
  corners?: BoxCorners;
  /** The name that the yard sells it under, as the `profile` of a stock has it. A name on one line, not starting with a space. */
  profile?: string;
}

/** One end of a piece as the saw makes it. The piece lies face up with its outer edge (the long-point edge of a mitered piece) against the fence. */
export interface End {
  /** The end as installed: the foot or head of a side casing, else the side of the opening that it meets: left, right, or of a head in several pieces the neighbor, as head 2. */
  at: string;
  /** It says which end of the piece that is as it lies on the saw. */
  on_saw: Hand | (string & {});
  /** The kind of cut: square, miter, bevel or compound. */
  cut: CutKind | (string & {});
  /** The saw's table is turned this far off a square cut, never negative. */
  miter_degrees: number;
  /** The side to which the front of the saw's table turns; null for a square table. */
  miter_direction: Hand | (string & {}) | null;
  /** The blade is tilted this far from upright, never negative. */
  bevel_degrees: number;
  /** The side to which the top of the blade leans; null for an upright blade. */
  bevel_direction: Hand | (string & {}) | null;
  /** "outer" where the long point is on the outer edge, "inner" where it is on the inner edge, "back" or "face" for a bevel, null for a square cut. */
  long_edge: string | null;
  /** The notch at this end; null without one. */
  notch: Notch | null;
  /** The tip that is trimmed off after the miter; null where the miter stays whole. */
  tip: Tip | null;
}

/** A casing's face: molded, its profile the same along the whole stick, so that two pieces meet only on the bisector of their corner; or flat, so that any two widths meet corner to corner. */
export type Face = "flat" | "molded";

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
  /** The place of the field, as a JSON pointer into the opening or the house. */
  pointer: string;
  /** What it was, as JSON; null when it was not there. */
  before: string | null;
  /** What it is, as JSON; null when it is not there. */
  after: string | null;
}

/** A number that something was computed from. */
export interface Figure {
  /** The name of the figure in words. */
  name: string;
  /** The amount, in `unit`. */
  value: number;
  /** The unit that it is counted in. */
  unit: string;
}

/** Something in the way, out of plane or out of level. It has changed no size: an answer that is taken up is sent back in its field. */
export interface Finding {
  /** A stable name for the kind of finding. */
  code: string;
  /** Where: left, right, head, sill, base, above or below; empty for a group's. */
  side: string;
  /** It says in words what was found. */
  detail: string;
  /** It says by how much. */
  amount: MarkedLength;
  /** The answers that can be given to it, the least work first. */
  offers: Offer[];
  /** What is in the way or was read, where a side may have two of a kind: "neighbor", "depth" or empty. */
  by: string;
  /** The field that it is about, a JSON pointer into the opening, in which `/trim` is the trim it names; null where it is about the room, the wall, or several openings. */
  field: string | null;
}

/** What trim is finished with, and so what is done to it: paint grade is primed, filled, caulked and painted; stain grade is stained and cleared, its nail holes closed with putty and no joint caulked; prefinished trim comes as it stays, and only its nail holes are closed. */
export type Finish = "paint_grade" | "prefinished" | "stain_grade";

/** A request to go back to an earlier revision. */
export interface GoBack {
  /** The number of the revision to go back to. */
  revision: number;
}

/** The way a board was sawn from the log. Look at its end: in a flat-sawn board the growth rings lie nearly along the wide face, in a quarter-sawn one they stand nearly square to it. */
export type Grain = "flat_sawn" | "quarter_sawn";

/** It says what became of the pieces that a group's openings share. */
export interface GroupChange {
  /** The mark of the group. */
  mark: string;
  /** It says what became of the group. */
  became: Became | (string & {});
  /** The changes of its pieces, one for each. */
  pieces: PieceChange[];
}

/** A side, as seen from the room or, at the saw, by whoever stands at it. */
export type Hand = "left" | "right";

/** A fillet under a butted head, or a cap over it. */
export interface HeadStrip {
  /** The name that the yard sells it under, as the `profile` of a stock has it. A name on one line, not starting with a space. */
  profile: string;
  /** The height of the strip as seen from the room, measured from its bottom to its top. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  height: LengthText;
  /** The depth of the strip, measured from the wall out to its face. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  depth: LengthText;
  /** It says how the ends are finished: square, or with a mitered return to the wall. */
  ends?: StripEnds;
  /** The strip runs this far past the outside edge of each side casing. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  overhang?: LengthText;
}

/** How casing meets at the head: mitered, head over the side casings, or both against a block. */
export type HeadStyle = "butted" | "corner_blocks" | "mitered";

/** It says whether the service can answer. */
export interface Health {
  /** "ok"; a service that is not answers with a problem instead. */
  status: "ok" | (string & {});
}

/** What is held when a cut is made: the stick, or the piece. */
export type Holding = "piece" | "stick";

/** A stool's own horns at this opening, where they are not the trim's: past the trim's outside edge. */
export interface Horns {
  /** The left horn's length, measured from the trim's outside edge to the stool's left end. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  left?: LengthText | null;
  /** The right horn's length, measured from the trim's outside edge to the stool's right end. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  right?: LengthText | null;
}

/** Hands-on hours by task, and drying waits, which are nobody's work, apart from them. */
export interface Hours {
  /** The hours of all tasks together. */
  hands_on_hours: number;
  /** The minutes of each task. */
  tasks: Labor[];
  /** The hours of all waits together. */
  wait_hours: number;
  /** The waits, in order. */
  waits: Wait[];
  /** The rates that were used. */
  rates: Rate[];
}

/** A house or a part of one: openings, the trim they name, and what to cut from. With no stock, pieces are computed and no sticks. At most 50,000 pieces are worked out together, those of openings alike counted each, from at most 40,000 lengths on hand; their marks and profiles, each piece with its own, come to at most 4,000,000 bytes, and the seasons of all openings to 20,000. */
export interface House {
  /** The trims that its openings name. */
  trim_specs: Record<string, Trim>;
  /** The openings of the house. */
  openings: HouseOpening[];
  /** The currency of every price; it is only repeated in the answer. ISO 4217 code. */
  currency?: string;
  /** The length that is squared off each factory end, measured from that end in. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  end_trim?: LengthText;
  /** Openings trimmed together: those with heads in one line, or with one stool and apron under all of them; or joined units whose stool is too long for a stick. */
  groups?: HouseGroup[];
  /** An offcut of this length or longer is kept; it is measured from end to end. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  keep_length?: LengthText;
  /** The width of the kerf: what one cut eats, measured from one side of the cut to the other. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  kerf?: LengthText;
  /** The wood, and the air its joints will live through: the answer then says how far miters open. */
  movement?: Conditions | null;
  /** It says how lengths are rounded. */
  rounding?: Rounding;
  /** It says how the shop works. */
  shop?: Shop;
  /** The sticks and lengths on hand that each profile can be cut from. */
  stock?: Stock[];
  /** The unit of lengths that are written without one; without it each must carry its own. */
  unit?: Unit | null;
}

/** Some of a house's openings, trimmed together. */
export interface HouseGroup {
  /** The group's own name. A name on one line, not starting with a space. */
  mark: string;
  /** The marks of its openings, left to right. */
  openings: string[];
  /** Widths of wall between the openings, left to right, each measured from one opening's right jamb face to the next one's left. */
  gaps?: LengthText[] | null;
  /** Heights of the heads, one an opening, each measured from one level line up to the head jamb's underside; they are checked for being in line. */
  heads?: LengthText[] | null;
  /** Places over which a joint may fall (studs, mulls), each measured from the first opening's left jamb face; where none is named, the middles of the gaps. */
  solid?: LengthText[];
  /** The longest stick for the shared stool, measured from end to end; a longer stool is scarfed. Left out where any length is to be had. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  stock_length?: LengthText | null;
}

/** One opening of a house. */
export interface HouseOpening {
  /** What it is called in the house; part of each piece's name. A name on one line, not starting with a space. */
  mark: string;
  /** The readings that the tape gave at this opening. */
  readings: Readings;
  /** The name of one of the house's trim specs. A name on one line, not starting with a space. */
  trim: string;
  /** It says what the casing stands on. */
  bottom?: Bottom;
  /** How sure its readings are: estimated before anybody was there with a tape, measured, or confirmed by measuring again. An estimated opening counts in the cost, and nothing is bought or cut for it. */
  certainty?: Certainty;
  /** The readings that were doubted and stand as they are. */
  confirmed?: Confirmed;
  /** The number of openings that are alike. */
  count?: number;
  /** Whether it is held back: it counts in the cost, and nothing is bought or cut for it until it is released. */
  held?: boolean;
  /** The horns of this opening, where they are not the trim's. */
  horns?: Horns;
  /** The reveals of this opening, where they are not the trim's. */
  reveals?: Reveals;
  /** Where it is; money is summed by room, too. */
  room?: string;
  /** It says what is done under a stool on a sill out of level. */
  sill_answer?: SillAnswer;
  /** The widest gap, measured at the open end of a miter, that cuts for square corners may leave: up to it an opening that is out of square is treated as square. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  square_gap?: LengthText;
  /** How far a reading of the tape is off as a rule, root mean square, measured between what was read and what is there; readings that check each other are weighed by it. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  tape_spread?: LengthText;
  /** The remedy chosen for a wall out of plane; until one is chosen no size changes for it. */
  wall_answer?: WallAnswer;
  /** It says how far the wall may lie off the jamb's edge before the casing is planed or the jamb extended. */
  wall_limits?: Limits;
  /** The widths that pieces of this opening are ripped to. */
  widths?: Widths;
  /** True leaves out the apron that the trim has. */
  without_apron?: boolean;
}

/** It lists what was brought in, or would be. */
export interface Imported {
  /** Whether it was only tried: nothing was kept then. */
  dry_run: boolean;
  /** The revision it made; the one that stands, when it made none. */
  revision: number;
  /** The marks that are new. */
  added: string[];
  /** The marks whose opening changed. */
  updated: string[];
  /** The number of openings that were there already, just so. */
  unchanged: number;
  /** Marks that went, since the import replaces the whole. */
  removed: string[];
}

/** One thing that a revision wrote. */
export interface ItemChanged {
  /** The kind of thing that was changed. */
  kind: "length" | "opening" | "piece" | "schedule" | (string & {});
  /** The id of the thing. */
  id: string;
  /** The opening's mark, where it is an opening that stays. */
  mark: string | null;
  /** True where the thing was removed. */
  gone: boolean;
}

/** Boards on the jamb's edge that bring it out to the wall. */
export interface JambExtension {
  /** The thickness of the board, measured from face to face. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  thickness: LengthText;
  /** It says how the boards meet at a corner. */
  corners?: BoxCorners;
  /** The name that the yard sells it under, as the `profile` of a stock has it. A name on one line, not starting with a space. */
  profile?: string;
  /** The jamb's edge that stays in sight, measured from the jamb's inside face to the extension's inside face. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  reveal?: LengthText;
}

/** Long work that was asked for: where it stands, and how far it has come. */
export interface JobAnswer {
  /** The name it has, with which its address ends. */
  id: string;
  /** What is done, by the id that this document gives it. */
  operation: string;
  /** Where it stands. */
  state: State | (string & {});
  /** How often it was begun; its third worker that is lost is the last. */
  tries: number;
  /** The latest of each profile whose sticks are searched; it never gets worse. */
  progress: PlanProgress[];
  /** When it was asked for, in UTC. */
  created_at: string;
  /** When it was last begun. */
  started_at: string | null;
  /** When it ended. */
  ended_at: string | null;
  /** When its result goes; a plan that was made stays with its schedule. */
  expires_at: string | null;
  /** Jobs that are begun before it. */
  ahead: number;
  /** Seconds in which it will be done, by how long the latest took; null where none has ended lately. */
  estimate: number | null;
  /** Where the answer is, once it is there. */
  result: string | null;
  /** Why there is none, where it failed. */
  problem: ProblemBody | null;
}

/** A record of what is said of a house as a whole. */
export interface KeptHouse {
  /** The name of the house. A name on one line, not starting with a space. */
  name: string;
  /** The currency of every price; it is only repeated in the answer. ISO 4217 code. */
  currency?: string;
  /** The length that is squared off each factory end, measured from that end in. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  end_trim?: LengthText;
  /** Openings trimmed together: those with heads in one line, or with one stool and apron under all of them; or joined units whose stool is too long for a stick. */
  groups?: HouseGroup[];
  /** An offcut of this length or longer is kept; it is measured from end to end. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  keep_length?: LengthText;
  /** The width of the kerf: what one cut eats, measured from one side of the cut to the other. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  kerf?: LengthText;
  /** The wood, and the air its joints will live through: the answer then says how far miters open. */
  movement?: Conditions | null;
  /** It says how lengths are rounded. */
  rounding?: Rounding;
  /** It says how the shop works. */
  shop?: Shop;
  /** A note about the site. Free text; may have several lines. */
  site_note?: string;
  /** The sticks and lengths on hand that each profile can be cut from. */
  stock?: StockForSale[];
  /** The trims that its openings name. */
  trim_specs?: Record<string, Trim>;
  /** The unit of lengths that are written without one; without it each must carry its own. */
  unit?: Unit | null;
}

/** A grid by which labels lie on their sheet. */
export interface LabelGrid {
  /** The number of labels side by side. */
  across: number;
  /** The number of labels under one another. */
  down: number;
  /** The width of one label, measured from its left to its right edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  width: LengthText;
  /** The height of one label, measured from its top to its bottom edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  height: LengthText;
  /** The distance from the sheet's left edge to the first label. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  left: LengthText;
  /** The distance from the sheet's top edge to the first label. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  top: LengthText;
  /** The gap between labels side by side, measured from one's right edge to the next one's left. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  gap_across?: LengthText;
  /** The gap between labels under one another, measured from one's bottom edge to the next one's top. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  gap_down?: LengthText;
}

/** A house, and the labels its pieces are to have. */
export interface LabelsRequest {
  /** The trims that its openings name. */
  trim_specs: Record<string, Trim>;
  /** The openings of the house. */
  openings: HouseOpening[];
  /** The currency of every price; it is only repeated in the answer. ISO 4217 code. */
  currency?: string;
  /** The length that is squared off each factory end, measured from that end in. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  end_trim?: LengthText;
  /** Where labels lie; without it 3 by 10 labels of 2 5/8 by 1 in on Letter, 3 by 8 of 70 by 37 mm on A4. */
  grid?: LabelGrid | null;
  /** Openings trimmed together: those with heads in one line, or with one stool and apron under all of them; or joined units whose stool is too long for a stick. */
  groups?: HouseGroup[];
  /** Sections of the answer that are only worked out when asked for. */
  include?: Section[];
  /** An offcut of this length or longer is kept; it is measured from end to end. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  keep_length?: LengthText;
  /** The width of the kerf: what one cut eats, measured from one side of the cut to the other. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  kerf?: LengthText;
  /** The wood, and the air its joints will live through: the answer then says how far miters open. */
  movement?: Conditions | null;
  /** The time to search for cheaper sticks, in seconds, all profiles together, where the first plan is not proven cheapest. 0 takes the first plan. */
  planning_seconds?: number;
  /** It says how lengths are rounded. */
  rounding?: Rounding;
  /** It says how the shop works. */
  shop?: Shop;
  /** Places on the first sheet that are used up. */
  skip?: number;
  /** The sticks and lengths on hand that each profile can be cut from. */
  stock?: Stock[];
  /** The unit of lengths that are written without one; without it each must carry its own. */
  unit?: Unit | null;
}

/** Hands-on minutes of one task. */
export interface Labor {
  /** The task that is done. */
  task: Task | (string & {});
  /** The amount of work, in `unit`. */
  quantity: number;
  /** What it is counted in: openings, cuts, feet, square feet and so on. */
  unit: string;
  /** The time that it takes, in minutes. */
  minutes: number;
  /** It says in words how the quantity was computed. */
  rule: string;
  /** The names of the rates it was computed at. */
  rates: string[];
  /** The minutes of each opening. */
  by_opening: Share[];
}

/** A length that goes back on the rack. */
export interface LeftOver {
  /** The profile that the offcut is of. */
  profile: string;
  /** The length of each offcut, measured from end to end. */
  length: MarkedLength;
  /** The number of such offcuts. */
  quantity: number;
}

/** A lot of lengths on hand, or on their way: of one profile, one length and one price. */
export interface LengthOnHand {
  /** The length of each length on hand, measured from end to end. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  length: LengthText;
  /** The profile's name, as trim specs and stock have it. A name on one line, not starting with a space. */
  profile: string;
  /** The stretches that no piece may touch. */
  defects?: Defect[];
  /** The number that came or were found in all. When left out, it is none of those that were ordered and, where nothing is said of an order, one. */
  delivered?: number | null;
  /** The name of these sticks, entered together; no other lot of the schedule has it. The service names it where this is left out. A name on one line, not starting with a space. */
  lot?: string | null;
  /** It says where the lot came from, or where it stands. Free text; may have several lines. */
  note?: string;
  /** How many were ordered in all; none when left out. */
  ordered?: number | null;
  /** The price that was paid for each; `price` is what using one is taken to cost when sticks are planned. Leave `price` out for those that are paid for, so that they are used before any are bought. An amount of money as decimal text, at most two places. */
  paid?: string;
  /** The amount that using it is taken to cost. An amount of money as decimal text, at most two places. */
  price?: string;
  /** The stick that it is left over from, where it is an offcut of one. */
  stick?: string | null;
  /** The number of them that are gone in all: cut, spoiled or given away. When left out, it is as many as were recorded before; none of a new lot. */
  used_up?: number | null;
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
  /** The answer has one for each length that was given. */
  lengths: LengthRead[];
}

/** Lengths on hand that are alike in length, price and defects: used first where that is cheaper. */
export interface LengthsOnHand {
  /** The length of each length on hand, measured from end to end. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  length: LengthText;
  /** The number of lengths that are just so. */
  count?: number;
  /** The stretches that no piece may touch, on each of them. */
  defects?: Defect[];
  /** The amount that using it is taken to cost. An amount of money as decimal text, at most two places. */
  price?: string;
}

/** Lengths to read. */
export interface LengthsRequest {
  /** The texts to read, each as it was written down. */
  lengths: LengthText[];
  /** It says how the answered lengths are rounded. */
  rounding?: Rounding;
  /** The unit of those that carry none; without it each must carry its own. */
  unit?: Unit | null;
}

/** How far the wall may lie off the jamb's edge; beyond `plane` the jamb is extended. Common practice, no source. */
export interface Limits {
  /** Caulk alone closes the joint of casing and wall where the wall's face stands no more than this proud or shy of the jamb's edge, measured square to the wall. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  caulk?: LengthText;
  /** No extension is needed where the wall's face lies no farther than this proud or shy of the jamb's edge, measured square to the wall: the wall is cut back with a plane, or the casing's back beveled to lie on both. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  plane?: LengthText;
}

/** A change that was made. */
export interface Made {
  /** The number of the schedule's revision that the change made: every change makes one, counted from 1. */
  revision: number;
}

/** A layout mark on a piece. */
export interface Mark {
  /** It says what to mark, in the trade's words. */
  name: string;
  /** The distance along the piece, measured from the farthest point of its left end as it lies on the saw. */
  at: MarkedLength;
  /** The distance across the piece, measured from its outer edge; null for a mark right across. */
  across: MarkedLength | null;
}

/** The point that a length is measured from, on the edge that is marked. free_end: the end of what is left of the stick from which the next piece is cut. left_end: the end of the stick that lay left in its drawing, before anything was cut. long_point: the long point of the piece's other end, that is there already. short_point: the short point of the piece's other end. square_end: the piece's other end, that is square. */
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

/** The amount that is used of a material, waste included, and the packages that cover it. */
export interface Material {
  /** A stable name of the material, as in `packages`. */
  code: string;
  /** The name of the material in words. */
  name: string;
  /** The amount that is used, in `unit`. */
  quantity: number;
  /** The unit that it is counted in. */
  unit: string;
  /** The packages to buy. */
  bought: Bought[];
  /** It says in words how the amount was computed. */
  rule: string;
  /** The figures it was computed from. */
  from: Figure[];
  /** Names of the rates it was computed at. */
  rates: string[];
  /** It says how much of the material is for each opening. */
  by_opening: Share[];
  /** They say what to check. */
  notes: string[];
}

/** What is bought beside sticks, and the unit it is counted in: nails; glue, caulk, filler, putty, primer, paint, stain and clear finish in fluid ounces; shims; tape in feet; abrasive in sheets. */
export type MaterialCode = "abrasive" | "caulk" | "clear_finish" | "filler" | "glue" | "nails_10d" | "nails_2d" | "nails_3d" | "nails_4d" | "nails_5d" | "nails_6d" | "nails_7d" | "nails_8d" | "nails_9d" | "paint" | "primer" | "putty" | "shims" | "stain" | "tape";

/** A list of what to buy beside the sticks. */
export interface Materials {
  /** The materials that are used, one a line. */
  lines: Material[];
  /** The rates that were used. */
  rates: Rate[];
}

/** Nails, glue, caulk, filler, primer, paint, shims, tape and abrasive, and what to beware of. */
export interface MaterialsAnswer {
  /** These are the materials to buy. */
  materials: Materials;
  /** They say what to know before work starts. */
  cautions: Caution[];
}

/** Which mark is taken: nearest (the longer of two equally near), up (never short), down (never long). */
export type Mode = "down" | "nearest" | "up";

/** A mitered piece in one set of conditions, against how it was when the joint was made. */
export interface Moved {
  /** The conditions, as they were named. */
  name: string;
  /** The moisture content that the wood comes to in them, in percent. */
  moisture_content: number;
  /** The change of the piece's width; negative where it shrank. */
  change: string;
  /** The angle by which the miter stands open. */
  opens_degrees: number;
  /** The width of the gap that opens, measured at its open end. */
  gap: string;
  /** "short point" when the wood dried, "long point" when it took up moisture, empty when neither. */
  opens_at: string;
  /** Whether both moisture contents lie where the coefficients hold. */
  within_table: boolean;
}

/** It says how a mitered piece moves. Coefficients are averages of clear wood: a board may move half as much again. */
export interface Movement {
  /** The wood's moisture content when the joint was made, in percent. */
  installed_moisture_content: number;
  /** The change per unit of width and per percent of moisture content. */
  coefficient: number;
  /** The piece in each set of conditions. */
  seasons: Moved[];
  /** The widest gap that the joint opens to in any season. */
  widest_gap: string;
  /** The source of the formulas and coefficients. */
  source: string;
  /** They say what else there is to know. */
  notes: string[];
}

/** A mitered piece, the conditions its joint was made in, and those it will live through. */
export interface MovementRequest {
  /** The species of the wood. */
  species: Species;
  /** The conditions in which the joint is made. */
  installed: Air;
  /** Each set of conditions it will live through. */
  seasons: Air[];
  /** The width of the piece, measured from edge to edge across its face. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  width: LengthText;
  /** The way the boards were sawn from the log: flat-sawn or quarter-sawn. A flat-sawn board shrinks and swells more across its width. */
  grain?: Grain;
  /** The miter of the piece, measured off a square cut. */
  miter_degrees?: number;
  /** The scale of the thermometer: Celsius or Fahrenheit. */
  scale?: Scale;
  /** The unit of lengths that are written without one; without it each must carry its own. */
  unit?: Unit | null;
}

/** A house's schedule, with its openings and lengths on hand where they are known already; an export looks the same. */
export interface NewSchedule {
  /** The name of the house. A name on one line, not starting with a space. */
  name: string;
  /** The currency of every price; it is only repeated in the answer. ISO 4217 code. */
  currency?: string;
  /** The length that is squared off each factory end, measured from that end in. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  end_trim?: LengthText;
  /** Openings trimmed together: those with heads in one line, or with one stool and apron under all of them; or joined units whose stool is too long for a stick. */
  groups?: HouseGroup[];
  /** An offcut of this length or longer is kept; it is measured from end to end. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  keep_length?: LengthText;
  /** The width of the kerf: what one cut eats, measured from one side of the cut to the other. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  kerf?: LengthText;
  /** The lots that are on hand, or on their way. */
  lengths?: LengthOnHand[];
  /** The wood, and the air its joints will live through: the answer then says how far miters open. */
  movement?: Conditions | null;
  /** The openings, in the order in which they are to be listed. */
  openings?: HouseOpening[];
  /** It says how lengths are rounded. */
  rounding?: Rounding;
  /** It says how the shop works. */
  shop?: Shop;
  /** A note about the site. Free text; may have several lines. */
  site_note?: string;
  /** The sticks and lengths on hand that each profile can be cut from. */
  stock?: StockForSale[];
  /** The trims that its openings name. */
  trim_specs?: Record<string, Trim>;
  /** The unit of lengths that are written without one; without it each must carry its own. */
  unit?: Unit | null;
}

/** A horn's notch: what is sawn out of a stool's back corner so that the horn lies on the wall. */
export interface Notch {
  /** The depth at the jamb, measured from the stool's back edge toward its nosing. */
  depth: MarkedLength;
  /** The length of the notch, measured from the stool's end to the jamb's inside face. */
  length: MarkedLength;
  /** The depth at the horn's end where the wall is out of plane, measured as `depth` is; null where it is the same. */
  end_depth: MarkedLength | null;
}

/** How the wall lies to the jamb's edge at one corner, where the casing's outside edge is to lie; neither where it is flush. */
export interface OffPlane {
  /** The wall stands this far past the jamb's edge, measured square to the wall. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  proud?: LengthText | null;
  /** The jamb's edge stands this far past the wall, measured square to the wall. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  shy?: LengthText | null;
}

/** One of the trade's answers to a finding. */
export interface Offer {
  /** A stable name of the offer, as "shorten_horn". */
  answer: string;
  /** It says in words what the offer means. */
  detail: string;
  /** The field that takes it up, a JSON pointer into the opening or, for what a group's openings have together, into the house; null where no one field does, as for caulk: `detail` then says what does. It was tried: with that value the answer comes without the finding, a group's once every opening of it that is offered one has its own. */
  field: string | null;
  /** The value to write in that field. */
  value: string | boolean | number | null;
  /** Lengths, and angles in degrees, that go with it, each by its name. */
  figures: Record<string, string>;
}

/** The joint of an opening that stands open the widest in one set of conditions. */
export interface OpenJoint {
  /** The conditions, as they were named. */
  name: string;
  /** The moisture content that the wood comes to in them, in percent. */
  moisture_content: number;
  /** The key of the piece on one side of it; null where no joint is mitered. */
  piece: string | null;
  /** The width of the gap at the joint's open end. */
  gap: string;
  /** Which end that is, "short point" or "long point"; empty where nothing moved. */
  opens_at: string;
  /** Whether the moisture contents lie where the coefficients hold. */
  within_table: boolean;
}

/** One opening worked out: its pieces and what was assumed. */
export interface OpeningAnswer {
  /** The name of the opening in the house. */
  mark: string;
  /** The room that the opening is in. */
  room: string;
  /** The number of openings that are alike. */
  count: number;
  /** Every piece of its trim; left and right are a mirrored pair, each a piece of its own. */
  pieces: Piece[];
  /** The number of each piece, by its key, as sheets print it: `K1-4` is number 4 of K1. Null for an opening by itself, whose pieces are numbered as they come. */
  numbers: Record<string, number> | null;
  /** The joint gap left by taking its corners as square: zero where they are, or where their own angles were cut. */
  square_gap: string;
  /** They say what was assumed. */
  notes: string[];
  /** What is in the way, out of plane or out of level; none has changed a size. */
  findings: Finding[];
  /** How the pieces close that are rounded together: casing, and a back band, mitered round a curve or a polygon. Empty where each piece is rounded by itself. */
  closings: Closing[];
  /** The widest miter season by season; null where no conditions were given. */
  movement: OpenJoint[] | null;
}

/** It says what became of one opening. */
export interface OpeningChange {
  /** The id of the opening. */
  id: string;
  /** The mark of the opening; the later one where it changed. */
  mark: string;
  /** The mark it had before; null when it is new. */
  mark_before: string | null;
  /** With trim_changed only the trim spec it names was changed; with group_changed it began or ceased to share a stool. */
  became: Became | (string & {});
  /** The readings that changed, each before and after. */
  readings: FieldChange[];
  /** The changes of its pieces, one for each. */
  pieces: PieceChange[];
}

/** It says what an opening costs, all of its count together. */
export interface OpeningCost {
  /** The mark of the opening. */
  opening: string;
  /** The room that the opening is in. */
  room: string;
  /** The cost of the opening, by category. */
  amounts: CostTotals;
}

/** One opening with its trim; answered with all of its pieces. */
export interface OpeningRequest {
  /** What it is called in the house; part of each piece's name. A name on one line, not starting with a space. */
  mark: string;
  /** The readings that the tape gave at this opening. */
  readings: Readings;
  /** The trim that is put round the opening. */
  trim: Trim;
  /** It says what the casing stands on. */
  bottom?: Bottom;
  /** The readings that were doubted and stand as they are. */
  confirmed?: Confirmed;
  /** The horns of this opening, where they are not the trim's. */
  horns?: Horns;
  /** The wood, and the air its joints will live through: the answer then says how far its miters open. */
  movement?: Conditions | null;
  /** The reveals of this opening, where they are not the trim's. */
  reveals?: Reveals;
  /** It says how lengths of the answer are rounded. */
  rounding?: Rounding;
  /** It says what is done under a stool on a sill out of level. */
  sill_answer?: SillAnswer;
  /** The widest gap, measured at the open end of a miter, that cuts for square corners may leave: up to it an opening that is out of square is treated as square. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  square_gap?: LengthText;
  /** How far a reading of the tape is off as a rule, root mean square, measured between what was read and what is there; readings that check each other are weighed by it. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  tape_spread?: LengthText;
  /** The unit of lengths that are written without one; without it each must carry its own. */
  unit?: Unit | null;
  /** The remedy chosen for a wall out of plane; until one is chosen no size changes for it. */
  wall_answer?: WallAnswer;
  /** It says how far the wall may lie off the jamb's edge before the casing is planed or the jamb extended. */
  wall_limits?: Limits;
  /** The widths that pieces of this opening are ripped to. */
  widths?: Widths;
  /** True leaves out the apron that the trim has. */
  without_apron?: boolean;
}

/** Openings to bring in. */
export interface Openings {
  /** The openings, in the order in which they are to be listed. */
  openings: HouseOpening[];
}

/** An operation of the saw order is one cut. */
export interface Operation {
  /** The place of the cut in the sequence, counted from 1. */
  number: number;
  /** The number of the setup that it is made at: a tool set once, as the order's `setups` list it. */
  setup: number;
  /** It says what is done: a square cut, a miter, a bevel, a compound cut, a rip or a notch. */
  kind: OperationKind | (string & {});
  /** The profile of the stock that is cut. */
  profile: string;
  /** The stick's name; null for a piece without stock. */
  stick: string | null;
  /** What it makes or cuts: two for a shared cut, all of the stick's where a whole stick is ripped. */
  pieces: PieceName[];
  /** The piece in words; empty where a whole stick is worked on. */
  title: string;
  /** The end of the piece as installed: left, foot, head and so on; empty where none is meant. */
  end: string;
  /** It says which end of the piece that is as it lies. */
  on_saw: Hand | (string & {}) | null;
  /** Whether its face, the side that is seen in the room, lies up. It lies down where a piece of stock that is `turnable` is turned over. */
  face_up: boolean;
  /** The edge that lies against the fence. Of a casing the inner edge is the one at the opening, and the outer edge the one away from it; of an apron top is the edge under the stool; of a stool back is the edge at the sash. */
  fence_edge: string;
  /** The length to mark; null where a stop block, or the corner of what is there, says where to cut. */
  mark: MarkedLength | null;
  /** The mark is measured from here. */
  mark_from: MarkFrom | (string & {}) | null;
  /** The edge that the cut has its long point on, where the mark is: outer and inner as at `fence_edge`; the stool's front, into the room, or back; an apron's top; the face, seen in the room, or the back, on the wall; outer_back and inner_back are the same edges on the piece's back; empty for a cut square across a square piece. */
  mark_edge: string;
  /** It says what is held when the cut is made. */
  holds: Holding | (string & {});
  /** The length of the piece or stick that is held, measured from end to end; of a stick, the longer part on either side of the cut. Null where no stick was planned. */
  held: MarkedLength | null;
  /** How far from the front edge the cut goes, where it stops: at a stool's notch, or at the back of a return that is narrower than its stick; null for a cut right through. */
  stops_after: MarkedLength | null;
  /** The `key` of the piece of the same opening that the piece cut here is the mirror image of; null for none. */
  mirror_of: string | null;
  /** Codes of the answer's cautions that bear on this cut. */
  cautions: string[];
}

/** What is done, each with one cut. rip_stick: a whole stick is ripped to width. square_end: a stick's free end, from which the next piece is cut, is cut square. cut_out: a stick is cut through beyond a defect. angled_end: a miter, bevel or compound cut at the end of a piece, to its corner or to a mark. cut_off: a square cut cuts a piece off its stick. angled_cut_off: a miter, bevel or compound cut cuts a piece off its stick and makes its end. shared_cut: the same, and the cut makes the end of the next piece too: that lies turned over, its face down, so that the slanted end which the cut leaves is the one it needs. rip: one piece is ripped to width. notch: a stool's notch is sawn out. */
export type OperationKind = "angled_cut_off" | "angled_end" | "cut_off" | "cut_out" | "notch" | "rip" | "rip_stick" | "shared_cut" | "square_end";

/** An order to cut in. stick_by_stick: each stick is finished before the next is picked up. opening_by_opening: each opening's pieces are finished before the next opening's. setting_by_setting: cuts of one setting are made together, whatever stick they are on. */
export type OrderKind = "opening_by_opening" | "setting_by_setting" | "stick_by_stick";

/** It says what one order comes to, by the shop's rates at the saw. */
export interface OrderSum {
  /** It says which order this is. */
  order: OrderKind | (string & {});
  /** The minutes at the saws, from the first stick picked up to the last piece labeled. */
  minutes: number;
  /** The part of those minutes that goes into setting the saws. */
  setting_minutes: number;
  /** The number of cuts made. */
  cuts: number;
  /** It counts how often a stick is picked up. */
  pick_ups: number;
  /** It counts how often a saw is set. */
  settings: number;
  /** The most openings that are begun and not finished at any one time. */
  open_at_once: number;
}

/** Something sold. Without a price it is bought and costs nothing in the answer. */
export interface Package {
  /** The material that it holds. */
  material: MaterialCode;
  /** The name that it is sold under. A name on one line, not starting with a space. */
  name: string;
  /** How much it holds, in the material's unit: nails by the piece; glue, caulk, filler, putty, primer, paint, stain and clear finish in fluid ounces; tape in feet; abrasive in sheets. */
  size: number;
  /** The price of one package. An amount of money as decimal text, at most two places. */
  price?: string | null;
}

/** One piece of trim. */
export interface Piece {
  /** It says which piece of the trim this is. */
  kind: PieceKind | (string & {});
  /** The side of the opening that it goes to: left, right, head and so on; empty for a piece that has no side. */
  side: string;
  /** The name of the stock that it is cut from. */
  profile: string;
  /** The length along the inner edge, measured between its two ends there: from short point to short point, or from a square end to the short point. */
  short_point: MarkedLength;
  /** The length of the piece along its outer edge, measured from tip to tip, as it is put up. */
  long_point: MarkedLength;
  /** The length that it takes from a stick, measured from its one farthest point to the other. */
  overall: MarkedLength;
  /** The finished width, measured across the face from edge to edge. */
  width: MarkedLength;
  /** The finished thickness, measured from back to face. */
  thickness: MarkedLength;
  /** The left and the right end as the piece lies on the saw. */
  ends: [End];
  /** The width to rip it to, measured from edge to edge at the wider end; null where the stock's own width is kept. */
  rip_width: MarkedLength | null;
  /** They say what to mark along it before it is cut or installed. */
  marks: Mark[];
  /** They say how each of its figures was computed. */
  how: Step[];
  /** The person who cuts and installs this piece should know these things. */
  notes: string[];
  /** The rip widths where they differ at its two ends; null where it is parallel. */
  taper: Taper | null;
  /** The cutouts that are sawn out of its back edge between its ends. */
  cutouts: Cutout[];
  /** The number of such pieces, those of openings alike taken together. */
  quantity: number;
  /** The name of the piece in words. */
  title: string;
  /** The name of the piece within its opening, by which it is named elsewhere. */
  key: string;
  /** The widest that a miter of it can stand open, measured across the joint, or be too tight to close, because `overall` was rounded, were all of its residual, rounded less exact, to fall on one joint. */
  joint_error: string;
  /** The width that it has while its ends are cut, measured across the face, where it is ripped afterwards; `overall` is its length then. Null where it is as wide as it stays. */
  mitered_width: MarkedLength | null;
}

/** What became of a piece; altered is the same length with other ends, width or stock. */
export type PieceBecame = "altered" | "gone" | "longer" | "new" | "shorter" | "unchanged";

/** It says what became of one piece of an opening. */
export interface PieceChange {
  /** The key of the piece. */
  piece: string;
  /** Longer and shorter go by what it takes of a stick, exactly. */
  became: PieceBecame | (string & {});
  /** The length that the piece took of a stick; null where there was none. */
  before: MarkedLength | null;
  /** The piece as the later revision has it; null where it is gone. */
  after: MarkedLength | null;
  /** The length after less the length before; negative when the piece became shorter. */
  longer_by: MarkedLength | null;
  /** The number of such pieces before. */
  quantity_before: number;
  /** The number of such pieces afterwards. */
  quantity_after: number;
}

/** What was done with one piece: it was cut as the cut list now has it, or installed, or spoiled. */
export interface PieceDone {
  /** Which part of it: its `key` in the cut list or, where work is recorded, its number as sheets have it, `K1-4` or, of several alike, `L1-4.2`. */
  piece: string;
  /** It says what was done. */
  state: Done;
  /** It says which of several alike this is, counted from 1. */
  instance?: number;
  /** A note about the piece. Free text; may have several lines. */
  note?: string;
  /** The opening's mark or id; may be left out where `piece` is the piece's number, which has it. A name on one line, not starting with a space. */
  opening?: string | null;
  /** The id of the piece it was cut again from, where it was. */
  recut_from?: string | null;
}

/** The kind that a piece is of. Legs stand at the sides; a return takes an end back to the wall; a door stop is the strip that the closed door rests against. */
export type PieceKind = "apron" | "apron_return" | "back_band" | "bottom_casing" | "cap" | "cap_return" | "corner_block" | "door_stop" | "fillet" | "fillet_return" | "head_casing" | "head_jamb" | "jamb_extension" | "jamb_leg" | "mull_casing" | "plinth_block" | "side_casing" | "stool" | "stool_return" | "tapered_shim";

/** A piece among all the house's. */
export interface PieceName {
  /** The mark of the piece's opening. */
  opening: string;
  /** The key of the piece within its opening. */
  piece: string;
  /** It says which of several alike this is, counted from 1. */
  instance: number;
}

/** The place in the house where a piece belongs. */
export interface PieceNeeded {
  /** The mark of the opening. */
  opening: string;
  /** The key of the piece within its opening. */
  piece: string;
  /** It says which of the pieces with this `key` it is, counted from 1, where the opening's `count` makes several. */
  instance: number;
  /** The length that is needed there. */
  length: MarkedLength;
}

/** What became of a piece that was cut; a spare is one whose place has another by now. */
export type PieceState = "cut" | "installed" | "spare" | "spoiled";

/** The pieces asked for, and what was assumed. */
export interface PiecesAnswer {
  /** The pieces, each with its length, its ends and how they were computed. */
  pieces: Piece[];
  /** They say what was assumed. */
  notes: string[];
}

/** A piece's place on a stick. */
export interface PlacedPiece {
  /** The mark of the piece's opening. */
  opening: string;
  /** The key of the piece within its opening. */
  piece: string;
  /** It says which of several alike this is, counted from 1. */
  instance: number;
  /** The place of the piece, measured from the stick's left end to the piece's left-most point. */
  start: MarkedLength;
  /** The length that the piece takes of the stick, measured from tip to tip. */
  length: MarkedLength;
  /** True where the piece lies turned over. */
  turned: boolean;
  /** True where the piece lies end for end. */
  reversed: boolean;
  /** Whether it shares its left cut with the piece before. */
  shares_cut: boolean;
}

/** A request that says how hard to look for the cheapest sticks. */
export interface PlanAsked {
  /** The time to search for cheaper sticks, in seconds, all profiles together, where the first. */
  planning_seconds?: number;
}

/** A plan in a list. */
export interface PlanLine {
  /** The number of the plan; the schedule's plans are counted from 1. */
  number: number;
  /** Whether it is the plan of what the schedule is now. */
  stands: boolean;
  /** The time at which the plan was made. RFC 3339, in UTC. */
  made_at: string;
  /** When something was first printed or cut from it; null while nothing was. Such a plan is kept; of the others the oldest go. RFC 3339, in UTC. */
  used_at: string | null;
  /** How long was allowed for the search; 0 took the first plan that was found. */
  planning_seconds: number;
  /** The cost of the sticks that were left to cut when it was made; of profiles in `unstocked` it holds nothing. An amount of money as decimal text with two places. */
  cost: string;
  /** A lower bound: no plan of those sticks costs less. An amount of money as decimal text with two places. */
  bound: string;
  /** How far the cost may be above the cheapest: zero is proven, where nothing is in `unstocked`. An amount of money as decimal text with two places. */
  above: string;
  /** Profiles that pieces needed and no stock was given for when it was made. */
  unstocked: string[];
  /** True where it is proven that no plan is cheaper; false where a profile was unstocked. */
  proven: boolean;
}

/** How far the search for one profile's sticks has come. */
export interface PlanProgress {
  /** Whose sticks. */
  profile: string;
  /** Of the best plan so far. An amount of money as decimal text with two places. */
  cost: string;
  /** No plan costs less. An amount of money as decimal text with two places. */
  bound: string;
  /** How far the cost may be from the cheapest, as a share of it. */
  gap: number;
  /** Since the search began. */
  seconds: number;
}

/** It says how good the sticks of one profile are. */
export interface PlannedSticks {
  /** The profile whose sticks these are. */
  profile: string;
  /** The names of the sticks, in the order they come to the saw. */
  sticks: string[];
  /** The cost of all of them. An amount of money as decimal text with two places. */
  cost: string;
  /** A lower bound: no plan costs less than this. An amount of money as decimal text with two places. */
  bound: string;
  /** The method that found the plan: `first_fit` lays each piece on the first stick that has room, `columns` combines patterns of cuts, `branching` tries one choice after the other. It changes nothing at the saw. */
  method: string;
  /** Why the search ended: it was proven, the effort that the budget allows was spent, the clock ran out first, or there was not the memory for it. */
  stopped: "clock" | "effort" | "memory" | "proven" | (string & {});
  /** The time that the search took, in seconds. */
  seconds: number;
  /** Openings that were to come from one stick each and that no stick can hold. */
  split_openings: string[];
}

/** Plinth blocks under a door's side casings. */
export interface Plinth {
  /** The width of each plinth block, measured across its face from edge to edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  width: LengthText;
  /** The height of each plinth block, measured from the floor up. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  height: LengthText;
  /** The thickness of each plinth block, measured from the wall out to its face. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  thickness: LengthText;
  /** The name that the yard sells it under, as the `profile` of a stock has it. A name on one line, not starting with a space. */
  profile?: string;
}

/** A place on the wall, measured from the left inside corner of the opening's base. */
export interface Point {
  /** The distance from the base's left inside corner along the base. */
  x: string;
  /** The distance from the base, square to it. */
  y: string;
}

/** What every refusal looks like: application/problem+json, as RFC 9457 has it. */
export interface ProblemBody {
  /** Where this kind of problem is explained, a path on this service; stable, so match on it. */
  type: string;
  /** The kind of problem, in a few words. */
  title: string;
  /** The HTTP status of the answer, repeated. */
  status: number;
  /** It says what happened this time. */
  detail: string;
  /** The path that was asked for. */
  instance: string;
  /** Everything that was wrong, each with where it was; may be empty. */
  errors: Fault[];
  /** The id of this request, as in the X-Request-Id header; give it when asking for help. */
  request_id: string;
}

/** What every refusal looks like: application/problem+json, as RFC 9457 has it. */
export interface ProblemBody {
  /** Where this kind of problem is explained, a path on this service; stable, so match on it. */
  type: string;
  /** The kind of problem, in a few words. */
  title: string;
  /** The HTTP status of the answer, repeated. */
  status: number;
  /** It says what happened this time. */
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
  /** The name of the profile. */
  profile: string;
  /** The sticks, each by itself, as they come to the saw. */
  sticks: CutStick[];
  /** The cost of all its sticks. An amount of money as decimal text with two places. */
  cost: string;
  /** A lower bound: no plan costs less than this. An amount of money as decimal text with two places. */
  bound: string;
  /** How far `cost` may be from the cheapest, as a share of it; 0 is proven. */
  gap: number;
  /** Whether none is cheaper than this one. */
  proven: boolean;
  /** The method that found the plan: first_fit, columns or branching. */
  method: string;
  /** Why the search ended: it was proven, the effort that the budget allows was spent, the clock ran out first, or there was not the memory for it. */
  stopped: "clock" | "effort" | "memory" | "proven" | (string & {});
  /** The time that the search took, in seconds. */
  seconds: number;
  /** Openings that were to come from one stick each and that no stick can hold. */
  split_openings: string[];
}

/** A rate that was reckoned with, and where it comes from. */
export interface Rate {
  /** The name of its field in the shop's `rates`. */
  name: string;
  /** The amount, in `unit`. */
  value: number;
  /** The unit: in, mil (1/1000 in), percent, each, ft2, s, min, h or penny. */
  unit: string;
  /** Where it comes from: a published source, common practice, or the caller. */
  source: string;
  /** It says in words what the rate is. */
  says: string;
}

/** The shop's own rates; the answer names the source of each rate it used. */
export interface Rates {
  /** The time to swing the saw to an angle off its detents; 12 s when left out (common practice, no source). */
  angle_seconds?: number | null;
  /** The time to tilt the blade; 15 s when left out (common practice, no source). */
  bevel_seconds?: number | null;
  /** The number of nails in a plinth or corner block; 4 when left out (common practice, no source). */
  block_nails?: number | null;
  /** The time to carry a piece to another saw, or back to one; 15 s when left out (common practice, no source). */
  carry_seconds?: number | null;
  /** The width of the caulk's bead, from the corner of casing and wall to the bead's edge on either; 3/16 in when left out (common practice, no source). */
  caulk_bead?: LengthText | null;
  /** The depth that the bead goes into the gap behind the casing, from the casing's edge; 1/8 in when left out (common practice, no source). */
  caulk_depth?: LengthText | null;
  /** The width of the gap behind the casing that the caulk fills, from wall to casing; 1/16 in when left out (common practice, no source). */
  caulk_gap?: LengthText | null;
  /** The time to caulk 1 ft; 0.3 min when left out (common practice, no source). */
  caulk_minutes?: number | null;
  /** The wait until caulk can be painted; 1 h when left out (common practice, no source; the label rules). */
  caulk_wait?: number | null;
  /** The share of the caulk in a tube that is left in tube and nozzle; 10% when left out (common practice, no source). */
  caulk_waste?: number | null;
  /** The number of coats of clear finish on faces and edges of stain-grade trim; 3 when left out (common practice, no source). */
  clear_coats?: number | null;
  /** The thickness of a dry coat of clear finish (1 mil is 0.001 in); 1 mil when left out (common practice, no source; the label rules). */
  clear_film?: number | null;
  /** The time to put one coat of clear finish on 1 ft2, on the bench; 1 min when left out (common practice, no source). */
  clear_minutes?: number | null;
  /** The clear finish that stays when it is dry, by volume; 30% when left out (common practice, no source; the label rules). */
  clear_solids?: number | null;
  /** The wait between coats of clear finish, and after the last; 3 h when left out (common practice, no source; the label rules). */
  clear_wait?: number | null;
  /** The number of nails across a mitered corner; 2 when left out (common practice, no source). */
  corner_nails?: number | null;
  /** The time to make a cut; 5 s when left out (common practice, no source). */
  cut_seconds?: number | null;
  /** The time to swing the saw to a detent; 4 s when left out (common practice, no source). */
  detent_seconds?: number | null;
  /** The thickness of the drywall, from the studs to the wall's face in the room; 1/2 in when left out (common practice, no source). */
  drywall?: LengthText | null;
  /** The time to set a rip fence; 60 s when left out (common practice, no source). */
  fence_seconds?: number | null;
  /** The time to fill the hole over one nail with filler and to sand it; 0.15 min when left out (common practice, no source). */
  fill_minutes?: number | null;
  /** The wait until filler can be sanded; 1 h when left out (common practice, no source; the label rules). */
  filler_wait?: number | null;
  /** The filler lost, proud and sanded off or dried up, as a share of what the nail holes hold; 100% when left out (common practice, no source). */
  filler_waste?: number | null;
  /** The time to put the last coat on 1 ft2, at the wall; 1.5 min when left out (common practice, no source). */
  final_coat_minutes?: number | null;
  /** The thickness of the film of wet glue on mitered joints and returns; 6 mil when left out (common practice, no source). */
  glue_film?: number | null;
  /** The glue squeezed out and wiped off, beside what stays in the joints; 50% when left out (common practice, no source). */
  glue_waste?: number | null;
  /** The depth of that hole, from the wood's face in to the nail's head; 1/8 in when left out (common practice, no source). */
  hole_depth?: LengthText | null;
  /** The width across the hole that a nail leaves when it is set below the face; 1/8 in when left out (common practice, no source). */
  hole_width?: LengthText | null;
  /** The nail's size of the nails that go into the jamb; 0 takes the shortest that reaches; 0 penny when left out (common practice, no source). */
  inner_nail?: 0 | 2 | 3 | 4 | 5 | 6 | 7 | 8 | 9 | 10 | null;
  /** The time to fit a piece at the wall; 5 min when left out (common practice, no source). */
  install_minutes?: number | null;
  /** The least depth that a nail goes into the jamb's edge; 3/4 in when left out (common practice, no source; gives casing of 5/8 to 3/4 in the 4d nails of NAVEDTRA 14044). */
  jamb_penetration?: LengthText | null;
  /** The time to tick and label a piece; 5 s when left out (common practice, no source). */
  label_seconds?: number | null;
  /** The time to measure and mark a length; 10 s when left out (common practice, no source). */
  mark_seconds?: number | null;
  /** The time to measure an opening; 10 min when left out (common practice, no source). */
  measure_minutes?: number | null;
  /** The distance from a piece's end to its first nail; 3 in when left out (common practice, no source). */
  nail_end_distance?: LengthText | null;
  /** The time to drive and set a nail; 0.2 min when left out (common practice, no source). */
  nail_minutes?: number | null;
  /** The distance from nail to nail along casing and apron; 16 in when left out (NAVEDTRA 14044: casing nailed in pairs about 16 in apart). */
  nail_spacing?: LengthText | null;
  /** The share of the nails that is bent or dropped; 10% when left out (common practice, no source). */
  nail_waste?: number | null;
  /** The time to saw out a notch at one end; 90 s when left out (common practice, no source). */
  notch_seconds?: number | null;
  /** The nail's size for what goes into studs; 0 takes the shortest that reaches; 0 penny when left out (common practice, no source). */
  outer_nail?: 0 | 2 | 3 | 4 | 5 | 6 | 7 | 8 | 9 | 10 | null;
  /** The number of coats of paint on faces and edges; 2 when left out (common practice, no source). */
  paint_coats?: number | null;
  /** The thickness of a dry coat of paint (1 mil is 0.001 in); 1.4 mil when left out (common practice, no source; the label rules). */
  paint_film?: number | null;
  /** The time to put one coat on 1 ft2, bundled on the bench; 1 min when left out (common practice, no source). */
  paint_minutes?: number | null;
  /** The paint that stays when it is dry, by volume; 35% when left out (common practice, no source; the label rules). */
  paint_solids?: number | null;
  /** The wait between coats of paint, and after the last; 4 h when left out (common practice, no source; the label rules). */
  paint_wait?: number | null;
  /** The share of the paint that is left in brush, roller and can; 15% when left out (common practice, no source). */
  paint_waste?: number | null;
  /** The number of coats of primer on the backs, which get no paint; 0 when left out (common practice, no source). */
  painted_backs?: number | null;
  /** The time to pick up a long stick and put it down; 20 s when left out (common practice, no source). */
  pick_up_seconds?: number | null;
  /** The number of coats of primer on faces and edges; 1 when left out (common practice, no source). */
  primer_coats?: number | null;
  /** The thickness of a dry coat of primer (1 mil is 0.001 in); 1.5 mil when left out (common practice, no source; the label rules). */
  primer_film?: number | null;
  /** The primer that stays when it is dry, by volume; 35% when left out (common practice, no source; the label rules). */
  primer_solids?: number | null;
  /** The wait until primer can be sanded; 2 h when left out (common practice, no source; the label rules). */
  primer_wait?: number | null;
  /** The width of a molded face, measured along its curves, as a share of its flat width; 110% when left out (common practice, no source). */
  profile_girth?: number | null;
  /** The time to press matched putty into the hole over one nail; 0.25 min when left out (common practice, no source). */
  putty_minutes?: number | null;
  /** The time to rip 1 ft; 0.5 min when left out (common practice, no source). */
  rip_minutes?: number | null;
  /** The time to rout 1 ft of a stool's nosing; 1 min when left out (common practice, no source). */
  rout_minutes?: number | null;
  /** The number of sandings before the first coat and between coats; 2 when left out (common practice, no source). */
  sandings?: number | null;
  /** The area sanded with one sheet; 40 ft2 when left out (common practice, no source). */
  sheet_area?: number | null;
  /** The space from a door's jamb to the stud, packed with shims; 1/2 in when left out (common practice, no source). */
  shim_space?: LengthText | null;
  /** The number of tapered shims under stool and jamb; 4 when left out (common practice, no source). */
  shims_per_opening?: number | null;
  /** The time to make a careful cut of a short piece; 20 s when left out (common practice, no source). */
  short_cut_seconds?: number | null;
  /** The number of coats of stain on faces and edges of stain-grade trim; 1 when left out (common practice, no source). */
  stain_coats?: number | null;
  /** The area that a gallon of stain covers; 400 ft2 when left out (common practice, no source; the label rules). */
  stain_covers?: number | null;
  /** The time to wipe a coat of stain on 1 ft2 and off again; 1.5 min when left out (common practice, no source). */
  stain_minutes?: number | null;
  /** The wait until stain can be coated; 8 h when left out (common practice, no source; the label rules). */
  stain_wait?: number | null;
  /** The distance from nail to nail along the stool; 12 in when left out (common practice, no source). */
  stool_nail_spacing?: LengthText | null;
  /** The time to set a stop block; 30 s when left out (common practice, no source). */
  stop_seconds?: number | null;
  /** The least depth that a nail goes into stud or sill; 3/4 in when left out (common practice, no source; gives casing of 5/8 to 3/4 in the 6d nails of NAVEDTRA 14044). */
  stud_penetration?: LengthText | null;
  /** The share of the tape that goes to overlaps and corners; 10% when left out (common practice, no source). */
  tape_waste?: number | null;
}

/** What the tape read, from the jamb's inside faces. A plumb-sided opening has `jamb_width` and `jamb_height`; where the two sides differ, `left_jamb_height` and `right_jamb_height` instead: a raked head. One out of square has a `head_width` too, and at least one diagonal or one corner's angle; further ones check the tape. A curved head has its `rise` and `head_pieces` or `departure`. Any other convex shape has `sides` and `angles`. Joined units have their `joined_widths` and the `mull_widths` between them in place of `jamb_width`. A `door` gives its jamb's width and height by itself. A stool needs `jamb_depth`, or `left_depth` and `right_depth`; where the wall is out of plane, the same depth at each horn's end too. */
export interface Readings {
  /** The interior angles, the base's right-hand corner first; a triangle needs none. */
  angles?: number[] | null;
  /** The inside angle of the bottom left corner. Degrees, inside the opening. */
  bottom_left_angle?: number | null;
  /** The inside angle of the bottom right corner. Degrees, inside the opening. */
  bottom_right_angle?: number | null;
  /** They say what is in the way, and how far off it is. */
  clearances?: Clearances;
  /** A limit to choose, not a reading: how far the middle of a straight head piece may lie inside the jamb's true curve, measured square to the piece. There are as many pieces as that takes. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  departure?: LengthText | null;
  /** The diagonal, measured from the bottom left inside corner to the top right one. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  diagonal_from_bottom_left?: LengthText | null;
  /** The diagonal, measured from the bottom right inside corner to the top left one. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  diagonal_from_bottom_right?: LengthText | null;
  /** The door that is to be hung here. */
  door?: Door | null;
  /** The number of straight pieces that a curved head is made of. */
  head_pieces?: number | null;
  /** The clear width at the top, measured from the left jamb's inside face to the right jamb's. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  head_width?: LengthText | null;
  /** The depth, measured from the wall's face back to the sash stop, where the stool's back edge lands. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  jamb_depth?: LengthText | null;
  /** The height, measured from the stool's top, the sill jamb or the floor up to the underside of the head jamb, or to the springing of a curve. Left out where the curve stands on the base. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  jamb_height?: LengthText | null;
  /** The thickness of the jamb, measured across its edge, on which reveal and casing must find room. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  jamb_thickness?: LengthText;
  /** The clear width, measured at the bottom from the left jamb's inside face to the right jamb's. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  jamb_width?: LengthText | null;
  /** The widths of the joined units, left to right, each measured from one jamb's inside face to the other's. */
  joined_widths?: LengthText[] | null;
  /** The depth at the left jamb, measured as `jamb_depth` is. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  left_depth?: LengthText | null;
  /** The depth at the left horn's end, measured as `jamb_depth` is. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  left_horn_depth?: LengthText | null;
  /** The height along the left jamb, measured as `jamb_height` is. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  left_jamb_height?: LengthText | null;
  /** The widths of the mulls between the units, left to right, each measured from one unit's inside jamb face to the next one's, so that both jambs' thicknesses count. */
  mull_widths?: LengthText[] | null;
  /** The depth at the right jamb, measured as `jamb_depth` is. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  right_depth?: LengthText | null;
  /** The depth at the right horn's end, measured as `jamb_depth` is. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  right_horn_depth?: LengthText | null;
  /** The height along the right jamb, measured as `jamb_height` is. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  right_jamb_height?: LengthText | null;
  /** The rise of a curved head, measured from the springing line up to the top of the curve. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  rise?: LengthText | null;
  /** The lengths of all sides, counterclockwise from the base as seen from the room, each measured from inside corner to inside corner. */
  sides?: LengthText[] | null;
  /** It says how the sill is out of level, or under a door the floor: with two heights that settles whether head or floor is out of level. Left out where no level was held to it, or a stool's sill is level. */
  sill?: SillLevel | null;
  /** The inside angle of the top left corner. Degrees, inside the opening. */
  top_left_angle?: number | null;
  /** The inside angle of the top right corner. Degrees, inside the opening. */
  top_right_angle?: number | null;
  /** It says how the wall lies to the jamb's edge at every corner, in the order of `angles`. */
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
  /** The reveal under the head casing, measured from the head jamb's underside up to the casing's lower edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  head?: LengthText | null;
  /** The reveal on the left jamb, measured from the jamb's inside face to the casing's inner edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  left?: LengthText | null;
  /** The reveal on the right jamb, measured from the jamb's inside face to the casing's inner edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  right?: LengthText | null;
  /** The reveal above a picture frame's bottom casing, measured from the sill jamb's face down to the casing's upper edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  sill?: LengthText | null;
}

/** One write to a schedule. */
export interface Revision {
  /** The number of the revision, counted from 1; the latest is the schedule as it stands. */
  number: number;
  /** The time of the write. RFC 3339, in UTC. */
  at: string;
  /** The name of the key that wrote. */
  who: string;
  /** The id of the key it was made with; null where no keys are made. */
  key_id: string | null;
  /** It says what was done. */
  action: string;
  /** The reason that was given for it. */
  why: string;
  /** A fingerprint (SHA-256) of everything that was written to the schedule, up to this revision: read again, it is the same unless the history was altered. */
  digest: string;
}

/** One write to a schedule, with all it wrote. */
export interface RevisionDetail {
  /** The number of the revision, counted from 1; the latest is the schedule as it stands. */
  number: number;
  /** The time of the write. RFC 3339, in UTC. */
  at: string;
  /** The name of the key that wrote. */
  who: string;
  /** The id of the key it was made with; null where no keys are made. */
  key_id: string | null;
  /** It says what was done. */
  action: string;
  /** The reason that was given for it. */
  why: string;
  /** A fingerprint (SHA-256) of everything that was written to the schedule, up to this revision: read again, it is the same unless the history was altered. */
  digest: string;
  /** The things that were written, each once. */
  wrote: ItemChanged[];
}

/** What a room costs: the sum of its openings. */
export interface RoomCost {
  /** The name of the room; it may be empty. */
  room: string;
  /** The number of openings in the room, those alike counted each. */
  openings: number;
  /** The cost of the room, by category. */
  amounts: CostTotals;
}

/** The fineness of the marks a length is rounded to. */
export type RoundTo = "0.5 mm" | "1 mm" | "1/16 in" | "1/32 in" | "1/64 in" | "1/8 in";

/** A rule by which lengths of the answer are rounded. */
export interface Rounding {
  /** Which mark is taken: the nearest (the longer of two equally near), the next up or the next down. */
  mode?: Mode;
  /** The fineness of the tape they will be marked with. It decides the unit of the answer, too. */
  to?: RoundTo;
}

/** The shop's own limits at the saw. Common practice, no source. */
export interface Saw {
  /** It says how finely the saw's scale can be set, in degrees. */
  angle_step?: number;
  /** The miters at which its table clicks in, degrees; 0, 15, 22.5, 31.6 and 45 when left out. */
  detents?: number[] | null;
  /** The most that the saw's table turns off a square cut, degrees. */
  sharpest_miter?: number;
  /** The shortest workpiece that is held by hand at the saw, measured from end to end. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  smallest_held?: LengthText;
  /** The shortest workpiece that is pushed through the table saw by hand, measured from end to end. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  smallest_ripped?: LengthText;
}

/** The cuts in an order to make them. */
export interface SawOrder {
  /** Which order it is: the one asked for, or else the quickest of three. */
  order: OrderKind | (string & {});
  /** It says in words why it is that order. */
  why: string;
  /** How many cuts there are: as many as operations, and as the hours reckon with. */
  cuts: number;
  /** It says what each of the three orders comes to. */
  orders: OrderSum[];
  /** Returns that are cut from another stick than their apron or stool: theirs has no room for them, or moving them would change what is kept of a stick. */
  apart: PieceName[];
  /** The settings of the tools, in order. */
  setups: Setup[];
  /** The cuts, in order. */
  operations: Operation[];
  /** The rates that the minutes were computed with. */
  rates: Rate[];
}

/** The thermometer's scale: what temperatures are in. */
export type Scale = "celsius" | "fahrenheit";

/** A schedule in a list. */
export interface ScheduleLine {
  /** The id of the schedule. */
  id: string;
  /** The name of the house. */
  name: string;
  /** The number of its latest revision. */
  revision: number;
  /** How many openings it has; alike ones under one mark are one. */
  opening_count: number;
  /** The time at which it was made. RFC 3339, in UTC. */
  created_at: string;
  /** The time at which it was last changed. RFC 3339, in UTC. */
  updated_at: string;
  /** When it was archived; null when it is not. RFC 3339, in UTC. */
  archived_at: string | null;
}

/** A part of the shop's answer. */
export type Section = "cost" | "hours" | "materials" | "saw_order";

/** It says how a tool is set. Two cuts at equal settings need one setup. */
export interface Setting {
  /** The tool that is set. */
  tool: Tool | (string & {});
  /** The side to which the front of the saw's table turns; null for a square table. */
  miter_direction: Hand | (string & {}) | null;
  /** The table is turned this far off a square cut, to the step of the saw's scale. */
  miter_degrees: number;
  /** The side to which the top of the blade leans; null for an upright blade. */
  bevel_direction: Hand | (string & {}) | null;
  /** The blade is tilted this far from upright, to the step of the saw's scale. */
  bevel_degrees: number;
  /** The distance from the blade's near side to the stop block, a block clamped to the saw's fence that the end of the stick is pushed against, so that pieces come out alike; null for a cut to a mark or to a corner. */
  stop: MarkedLength | null;
  /** The distance from the rip fence to the blade, at the wider end of a taper; null where nothing is ripped. */
  fence: MarkedLength | null;
  /** Widths at the left and at the right end as the piece lies, ripped on a taper jig, a carrier that holds the board at a slant to the rip fence; null where it is parallel. */
  taper: [MarkedLength] | null;
  /** The depth of the notch, measured from the stool's back edge in; null where nothing is notched. */
  notch_depth: MarkedLength | null;
  /** The length of the notch, measured from the stick's end in. */
  notch_length: MarkedLength | null;
  /** The depth at the horn's end, measured from the back edge in, where that is another depth. */
  notch_end_depth: MarkedLength | null;
}

/** A tool set once. */
export interface Setup {
  /** The number of the setup, counted from 1. */
  number: number;
  /** It says how the tool is set. */
  setting: Setting;
  /** The number of operations made so. */
  operations: number;
}

/** One opening's part of a quantity, all of its count together. */
export interface Share {
  /** The mark of the opening. */
  opening: string;
  /** This share of the whole, in its unit. */
  quantity: number;
}

/** A sheet's contents as data, for a page of one's own; drawings are in the HTML and the PDF alone. */
export interface SheetContents {
  /** It says which sheet this is. */
  name: string;
  /** The title at the sheet's head. */
  title: string;
  /** The name of the house. */
  house: string;
  /** Which plan its sticks are from and how good that is; empty where it shows none. */
  plan: string;
  /** The tables of the sheet, in order. */
  tables: TableContents[];
  /** The cautions and notes of the sheet, in order. */
  notes: string[];
  /** Each label's texts, on a sheet of labels. */
  labels: string[][];
}

/** The settings of the shop: its rates, packages, wages and saw, and the order it cuts in. */
export interface Shop {
  /** When the house was built: paint of before 1978, or of unknown age, may hold lead. */
  build_year?: number | null;
  /** The order to cut in; when left out, the one of three that takes least by its rates. */
  order?: OrderKind | null;
  /** What is sold and at which price; a material named here is bought in these alone, up to four of each. */
  packages?: Package[];
  /** The rates of the shop, where they are not the usual ones. */
  rates?: Rates;
  /** The limits of the shop at the saw. */
  saw?: Saw;
  /** They say what an hour of work costs. */
  wages?: Wages;
}

/** What is done under a stool on a sill out of level: shims, or one tapered strip. */
export type SillAnswer = "shim" | "tapered_shim";

/** How a sill, or the floor that trim stands on, lies to a level line from jamb to jamb. */
export interface SillLevel {
  /** The end that lies low; either one where it is level. */
  low: Hand;
  /** The end that `low` names lies this much lower than the other, measured straight down from a level line; 0 where it is level. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  by: LengthText;
}

/** The wood, by its common name. */
export type Species = "basswood" | "beech" | "black_cherry" | "black_walnut" | "douglas_fir" | "eastern_white_pine" | "mdf" | "ponderosa_pine" | "red_alder" | "red_maple" | "red_oak" | "sugar_maple" | "white_ash" | "white_oak" | "yellow_birch" | "yellow_poplar";

/** Where a job stands. */
export type State = "cancelled" | "done" | "failed" | "waiting" | "working";

/** It says how one figure was computed. */
export interface Step {
  /** The field of the piece that this step gives. */
  figure: string;
  /** The rule in words, with the names of its inputs. */
  rule: string;
  /** The inputs of the step, each by its name with its value. */
  inputs: Record<string, string>;
}

/** A length the yard sells. */
export interface Stick {
  /** The length of the stick, measured from factory end to factory end. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  length: LengthText;
  /** The price of one stick. An amount of money as decimal text, at most two places. */
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
  /** The length of the stick, measured from end to end. */
  length: MarkedLength;
  /** True where it is a length on hand, one on order too; false where it is one to buy. */
  on_hand: boolean;
  /** The price of the stick. An amount of money as decimal text with two places. */
  price: string;
  /** The pieces that it gives, from its left end to its right. */
  pieces: PlacedPiece[];
  /** The length that remains after the last cut, measured from there to the stick's end. */
  offcut: MarkedLength;
  /** Whether the offcut goes back on the rack. */
  kept: boolean;
  /** The profile that the stick is of. */
  profile: string;
  /** The name of the lot, the lengths on hand entered together, that it comes from; null for one to buy. */
  lot: string | null;
  /** Planned to be cut, cut already, or changed: laid out otherwise under other names by now. */
  state: "changed" | "cut" | "planned" | (string & {});
  /** The number of the plan that first had it. */
  plan: number;
  /** The name of who claimed it last; null where nobody has it claimed. */
  claimed_by: string | null;
  /** When that claim is over; it may be by now. RFC 3339, in UTC. */
  claimed_until: string | null;
  /** What else is to be known: a claim that was over when it was taken over. */
  notes: string[];
}

/** It says what is still to be cut of a house, and what became of what was cut before. */
export interface StillToCut {
  /** The schedule's revision it is worked out from. */
  revision: number;
  /** The plan that its sticks come from. */
  plan: PlanLine;
  /** Whether a search for a cheaper plan is under way: ask again in a moment. */
  searching: boolean;
  /** The number of pieces that the whole house needs. */
  needed: number;
  /** The number of them that are cut and as they should be. */
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
  /** The name of the profile, as the trim's pieces name theirs. A name on one line, not starting with a space. */
  profile: string;
  /** The lengths that the yard sells. */
  sticks: Stick[];
  /** The lengths that are on hand already. */
  lengths_on_hand?: LengthsOnHand[];
  /** Asks that each opening's pieces come side by side from one stick, so that their grain and color agree; those no stick can hold are named in the plan's `split_openings`. Openings alike under one mark count as one: give each its own mark where each is to have its own stick. */
  one_stick_each?: boolean;
  /** Pieces are cut off square and mitered afterwards: one more cut each, and what cuts a piece off from its stick eats the kerf alone. Otherwise a miter cuts the piece off, and eats more than a square cut. */
  square_first?: boolean;
  /** Flat and square-edged, its back as good as its face: a piece may be cut turned over, so that two mitered ends share a cut. */
  turnable?: boolean;
}

/** It says what the yard sells of one profile, and how its sticks may be laid out. */
export interface StockForSale {
  /** The name of the profile, as the trim's pieces name theirs. A name on one line, not starting with a space. */
  profile: string;
  /** The lengths that the yard sells. */
  sticks: Stick[];
  /** Asks that each opening's pieces come side by side from one stick, so that their grain and color agree; those no stick can hold are named in the plan's `split_openings`. Openings alike under one mark count as one: give each its own mark where each is to have its own stick. */
  one_stick_each?: boolean;
  /** Pieces are cut off square and mitered afterwards: one more cut each, and what cuts a piece off from its stick eats the kerf alone. Otherwise a miter cuts the piece off, and eats more than a square cut. */
  square_first?: boolean;
  /** Flat and square-edged, its back as good as its face: a piece may be cut turned over, so that two mitered ends share a cut. */
  turnable?: boolean;
}

/** The stool: the shelf at the bottom of a window, in the room; the side casing stands on it. */
export interface Stool {
  /** The thickness of the stock, measured from its underside to its top. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  thickness: LengthText;
  /** The length of each horn, measured from the trim's outside edge to the stool's end. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  horn: LengthText;
  /** The stool stands this far past the apron's face, measured from that face to the stool's front edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  nosing: LengthText;
  /** The radius that eased ends are rounded to, measured from the center of the round to its edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  ease?: LengthText;
  /** It says how the ends of the horns are finished. */
  ends?: StoolEnds;
  /** The name that the yard sells it under, as the `profile` of a stock has it. A name on one line, not starting with a space. */
  profile?: string;
  /** The gap left open, measured from the stool's back edge to the sash. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  sash_clearance?: LengthText;
  /** The wood left on each horn's wall edge, to be scribed to the wall; it is measured square to that edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  scribe?: LengthText;
  /** The width of the stock before ripping, measured from edge to edge, where it is known. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  stock_width?: LengthText | null;
}

/** A horn's end: cut square, square with its edges eased, or with a return of its nosing to the wall. */
export type StoolEnds = "eased" | "mitered_return" | "square";

/** A stool's readings and choices. Give `jamb_depth`, or `left_depth` and `right_depth` where they differ. */
export interface StoolRequest {
  /** The length of each horn, measured from the trim's outside edge to the stool's end. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  horn: LengthText;
  /** The stool stands this far past the apron's face, measured from that face to the stool's front edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  nosing: LengthText;
  /** The clear width, measured from the left jamb's inside face to the right jamb's. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  jamb_width: LengthText;
  /** The jamb's edge that stays in sight, measured from the jamb's inside face to the casing's inner edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  reveal: LengthText;
  /** The width of the side casing, measured across its face from inner to outer edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  casing_width: LengthText;
  /** The apron's thickness, measured from the wall to its face; the nosing stands past its face. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  apron_thickness: LengthText;
  /** The radius that eased ends are rounded to, measured from the center of the round to its edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  ease?: LengthText;
  /** It says how the ends of the horns are finished. */
  ends?: StoolEnds;
  /** The depth, measured from the wall's face back to the sash stop, where the stool's back edge lands. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  jamb_depth?: LengthText | null;
  /** The depth at the left jamb, measured as `jamb_depth` is. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  left_depth?: LengthText | null;
  /** The name that the yard sells it under, as the `profile` of a stock has it. A name on one line, not starting with a space. */
  profile?: string;
  /** The depth at the right jamb, measured as `jamb_depth` is. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  right_depth?: LengthText | null;
  /** It says how lengths of the answer are rounded. */
  rounding?: Rounding;
  /** The gap left open, measured from the stool's back edge to the sash. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  sash_clearance?: LengthText;
  /** The wood left on each horn's wall edge, to be scribed to the wall; it is measured square to that edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  scribe?: LengthText;
  /** The width of the stock before ripping, measured from edge to edge, where it is known. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  stock_width?: LengthText | null;
  /** The thickness of the stock, measured from its underside to its top. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  thickness?: LengthText;
  /** The unit of lengths that are written without one; without it each must carry its own. */
  unit?: Unit | null;
}

/** A lot of lengths on hand, as it was sent. */
export interface StoredLength {
  /** The length of each length on hand, measured from end to end. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  length: LengthText;
  /** The profile's name, as trim specs and stock have it. A name on one line, not starting with a space. */
  profile: string;
  /** The id of the lot. */
  id: string;
  /** The schedule's revision that last changed it. */
  revision: number;
  /** How many are left to plan with: what was ordered or, where more came, delivered, less those used up. */
  available: number;
  /** Those of these that are true of it now: ordered while some are to come, delivered when some came, on_hand while some of those that came are left, used_up when none is left to plan with. */
  states: (LengthState | (string & {}))[];
  /** What is odd of it: more came than were ordered. */
  notes: string[];
  /** The exact value of every length in it. Every length exactly, by its JSON pointer, as a fraction of an inch. */
  exact: Record<string, string>;
  /** The stretches that no piece may touch. */
  defects: Defect[];
  /** The number that came or were found in all. When left out, it is none of those that were ordered and, where nothing is said of an order, one. */
  delivered: number | null;
  /** The name of these sticks, entered together; no other lot of the schedule has it. The service names it where this is left out. A name on one line, not starting with a space. */
  lot: string | null;
  /** It says where the lot came from, or where it stands. Free text; may have several lines. */
  note: string;
  /** How many were ordered in all; none when left out. */
  ordered: number | null;
  /** The price that was paid for each; `price` is what using one is taken to cost when sticks are planned. Leave `price` out for those that are paid for, so that they are used before any are bought. An amount of money as decimal text, at most two places. */
  paid: string;
  /** The amount that using it is taken to cost. An amount of money as decimal text, at most two places. */
  price: string;
  /** The stick that it is left over from, where it is an offcut of one. */
  stick: string | null;
  /** The number of them that are gone in all: cut, spoiled or given away. When left out, it is as many as were recorded before; none of a new lot. */
  used_up: number | null;
}

/** An opening as it was sent, and the exact value of every length in it. */
export interface StoredOpening {
  /** What it is called in the house; part of each piece's name. A name on one line, not starting with a space. */
  mark: string;
  /** The readings that the tape gave at this opening. */
  readings: Readings;
  /** The name of one of the house's trim specs. A name on one line, not starting with a space. */
  trim: string;
  /** The id of the opening. */
  id: string;
  /** The schedule's revision that last changed it. */
  revision: number;
  /** Its place in the schedule's order; places may be skipped. */
  position: number;
  /** The exact value of every length in it. Every length exactly, by its JSON pointer, as a fraction of an inch. */
  exact: Record<string, string>;
  /** It says what the casing stands on. */
  bottom: Bottom | (string & {});
  /** How sure its readings are: estimated before anybody was there with a tape, measured, or confirmed by measuring again. An estimated opening counts in the cost, and nothing is bought or cut for it. */
  certainty: Certainty | (string & {});
  /** The readings that were doubted and stand as they are. */
  confirmed: Confirmed;
  /** The number of openings that are alike. */
  count: number;
  /** Whether it is held back: it counts in the cost, and nothing is bought or cut for it until it is released. */
  held: boolean;
  /** The horns of this opening, where they are not the trim's. */
  horns: Horns;
  /** The reveals of this opening, where they are not the trim's. */
  reveals: Reveals;
  /** Where it is; money is summed by room, too. */
  room: string;
  /** It says what is done under a stool on a sill out of level. */
  sill_answer: SillAnswer | (string & {});
  /** The widest gap, measured at the open end of a miter, that cuts for square corners may leave: up to it an opening that is out of square is treated as square. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  square_gap: LengthText;
  /** How far a reading of the tape is off as a rule, root mean square, measured between what was read and what is there; readings that check each other are weighed by it. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  tape_spread: LengthText;
  /** The remedy chosen for a wall out of plane; until one is chosen no size changes for it. */
  wall_answer: WallAnswer | (string & {});
  /** It says how far the wall may lie off the jamb's edge before the casing is planed or the jamb extended. */
  wall_limits: Limits;
  /** The widths that pieces of this opening are ripped to. */
  widths: Widths;
  /** True leaves out the apron that the trim has. */
  without_apron: boolean;
}

/** A piece that was cut. */
export interface StoredPiece {
  /** Which part of it: its `key` in the cut list or, where work is recorded, its number as sheets have it, `K1-4` or, of several alike, `L1-4.2`. */
  piece: string;
  /** It says which of several alike this is, counted from 1. */
  instance: number;
  /** A note about the piece. Free text; may have several lines. */
  note: string;
  /** What it was cut for: an opening, or a group for what its openings share. */
  opening_id: string;
  /** The mark of that opening or group when it was cut. */
  opening: string;
  /** It says what became of the piece. */
  state: PieceState | (string & {});
  /** The name of the stick it was cut from as planned; null where it was cut otherwise. */
  stick: string | null;
  /** The id of the piece. */
  id: string;
  /** The schedule's revision that last changed it. */
  revision: number;
  /** The stock it was cut from. */
  profile: string;
  /** The length that was marked, measured from one farthest point of the piece to the other. */
  length: MarkedLength;
}

/** A plan of a schedule's sticks. */
export interface StoredPlan {
  /** The number of the plan; the schedule's plans are counted from 1. */
  number: number;
  /** Whether it is the plan of what the schedule is now. */
  stands: boolean;
  /** The time at which the plan was made. RFC 3339, in UTC. */
  made_at: string;
  /** When something was first printed or cut from it; null while nothing was. Such a plan is kept; of the others the oldest go. RFC 3339, in UTC. */
  used_at: string | null;
  /** How long was allowed for the search; 0 took the first plan that was found. */
  planning_seconds: number;
  /** The cost of the sticks that were left to cut when it was made; of profiles in `unstocked` it holds nothing. An amount of money as decimal text with two places. */
  cost: string;
  /** A lower bound: no plan of those sticks costs less. An amount of money as decimal text with two places. */
  bound: string;
  /** How far the cost may be above the cheapest: zero is proven, where nothing is in `unstocked`. An amount of money as decimal text with two places. */
  above: string;
  /** Profiles that pieces needed and no stock was given for when it was made. */
  unstocked: string[];
  /** True where it is proven that no plan is cheaper; false where a profile was unstocked. */
  proven: boolean;
  /** It says how good the plan is, profile by profile. */
  profiles: PlannedSticks[];
  /** The sticks of the plan. */
  sticks: StoredStick[];
  /** Sticks of the plan before it that it has no more: their names are never used again. */
  changed: string[];
  /** The sticks that are still to be bought for it, a line for each profile and length. */
  buy: BuyLine[];
}

/** A schedule as it stands, its openings aside. */
export interface StoredSchedule {
  /** The id of the schedule. */
  id: string;
  /** The number of its latest revision. */
  revision: number;
  /** How many openings it has; alike ones under one mark are one. */
  opening_count: number;
  /** The time at which it was made. RFC 3339, in UTC. */
  created_at: string;
  /** The time at which it was last changed. RFC 3339, in UTC. */
  updated_at: string;
  /** When it was archived; null when it is not. RFC 3339, in UTC. */
  archived_at: string | null;
  /** All that is said of the house as a whole, as it was sent. */
  house: KeptHouse;
  /** The exact value of every length in it. Every length exactly, by its JSON pointer, as a fraction of an inch. */
  exact: Record<string, string>;
}

/** A stick of a plan that is kept. */
export interface StoredStick {
  /** What sheets call it: a name stands for this one layout of one stick. */
  name: string;
  /** The length of the stick, measured from end to end. */
  length: MarkedLength;
  /** True where it is a length on hand, one on order too; false where it is one to buy. */
  on_hand: boolean;
  /** The price of the stick. An amount of money as decimal text with two places. */
  price: string;
  /** The pieces that it gives, from its left end to its right. */
  pieces: PlacedPiece[];
  /** The length that remains after the last cut, measured from there to the stick's end. */
  offcut: MarkedLength;
  /** Whether the offcut goes back on the rack. */
  kept: boolean;
  /** The profile that the stick is of. */
  profile: string;
  /** The name of the lot, the lengths on hand entered together, that it comes from; null for one to buy. */
  lot: string | null;
  /** Planned to be cut, cut already, or changed: laid out otherwise under other names by now. */
  state: "changed" | "cut" | "planned" | (string & {});
}

/** The ends of a fillet or a cap over a butted head. */
export type StripEnds = "mitered_return" | "square";

/** A reading that alone could explain the disagreement. */
export interface Suspect {
  /** The field of `readings` that is suspected. */
  reading: string;
  /** The value as the tape read it. */
  measured: string;
  /** The value that it should read if every other reading is right. */
  would_be: string;
  /** The difference: what it should read, less what was measured. */
  change: string;
  /** It says what speaks for this reading being wrong. */
  why: string;
}

/** One table of a sheet. */
export interface TableContents {
  /** Its name, which `table` asks for in a CSV answer. */
  key: string;
  /** The title of the table. */
  caption: string;
  /** The headings of the columns, from left to right. */
  columns: string[];
  /** The cells, as they are printed. */
  rows: string[][];
}

/** Rip widths at a piece's two ends as it lies on the saw. */
export interface Taper {
  /** The width that the piece is ripped to at its left end, measured across its face. */
  left: MarkedLength;
  /** The width that the piece is ripped to at its right end, measured across its face. */
  right: MarkedLength;
}

/** What hands-on time goes to; `fill` closes the holes over nails with filler and sands them, `putty` those of trim that is not painted. */
export type Task = "caulk" | "clear_finish" | "cut" | "fill" | "final_coat" | "install" | "measure" | "nail" | "paint" | "putty" | "rip" | "rout" | "set_up" | "stain";

/** The tip of a mitered end that is trimmed off once both pieces are cut: it runs past the outer edge of a narrower neighbor. */
export interface Tip {
  /** What is trimmed off the outer edge, measured along it from the miter's long point. */
  along: MarkedLength;
  /** How far the cut runs into the piece, measured across the face from the outer edge to the miter. */
  across: MarkedLength;
}

/** A cut is made with one of these. */
export type Tool = "hand_saw" | "miter_saw" | "table_saw";

/** The trim chosen for one opening or for many. */
export interface Trim {
  /** The side casing, and the head and bottom casing unless these have their own; null leaves the opening uncased, the wall returning to the jamb. */
  casing: Casing | null;
  /** The jamb's edge that stays in sight, measured from the jamb's inside face to the casing's inner edge, on every side unless the opening says otherwise. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  reveal: LengthText;
  /** The apron; null where there is none. */
  apron?: Apron | null;
  /** The back band round mitered casing. */
  back_band?: BackBand | null;
  /** The bottom casing's stock, where it is not the side casing's. */
  bottom_casing?: Casing | null;
  /** The cap over a butted head. */
  cap?: HeadStrip | null;
  /** The corner blocks, for a head style that has them. */
  corner_block?: CornerBlock | null;
  /** The boards that bring the jamb out to the wall. */
  extension?: JambExtension | null;
  /** The fillet under a butted head. */
  fillet?: HeadStrip | null;
  /** What the trim is finished with; materials and hours follow from it. */
  finish?: Finish;
  /** The gap under a door's side casings, measured from the floor up to their ends. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  floor_clearance?: LengthText;
  /** The head casing's stock, where it is not the side casing's. */
  head_casing?: Casing | null;
  /** It says how the head casing meets the side casings: mitered, butted or with corner blocks. */
  head_style?: HeadStyle;
  /** The casing that covers the joints between units. */
  mull_casing?: Casing | null;
  /** A butted head runs this far past the outside edge of each side casing. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  overhang?: LengthText;
  /** The plinth blocks under a door's side casings. */
  plinth?: Plinth | null;
  /** The wood that the trim is of, as the yard names it; it is printed with the finish. A name on one line, not starting with a space. */
  species?: string | null;
  /** The stool; null where there is none. */
  stool?: Stool | null;
  /** The strip on a door's jamb that the closed door rests against, for a door to be hung. */
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

/** It says what an hour of hands-on work costs. Without either, labor has its hours and no money. */
export interface Wages {
  /** An hour of any task that has no wage of its own. An amount of money as decimal text, at most two places. */
  hour?: string | null;
  /** The tasks that cost otherwise. */
  tasks?: Record<string, string>;
}

/** A drying wait, the whole house's together. */
export interface Wait {
  /** The material that has to dry. */
  after: string;
  /** The time that it takes, in hours. */
  hours: number;
  /** The name of the rate it is taken from. */
  rate: string;
}

/** What is done where the wall does not lie flush. `flat` changes no size: the casing is cut as on a flush wall; `lean` cuts it to lean from the jamb onto the wall; `extend` brings the jamb out to the wall by boards. */
export type WallAnswer = "extend" | "flat" | "lean";

/** Widths that pieces are ripped to at this opening; without one the stock's own is kept. */
export interface Widths {
  /** The apron's width, measured down the wall from its upper to its lower edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  apron?: LengthText | null;
  /** The head casing's width, measured across its face from edge to edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  head?: LengthText | null;
  /** The left side casing's width, measured across its face from edge to edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  left?: LengthText | null;
  /** The right side casing's width, measured across its face from edge to edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  right?: LengthText | null;
  /** The width of a picture frame's bottom casing, measured across its face from edge to edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  sill?: LengthText | null;
}

/** Work that was done: pieces cut, installed or spoiled, new lengths on hand, and lengths used up. */
export interface Work {
  /** The lots that are new: what is left over from a cut, or was found. */
  lengths?: LengthOnHand[];
  /** They say what was done with each piece. */
  pieces?: PieceDone[];
  /** The lot of each length that was used up; a lot as often as lengths of it were. */
  used_lengths?: string[];
}

/** Work that was recorded. */
export interface WorkMade {
  /** The number of the schedule's revision that the work made: every change makes one, counted from 1. */
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
  /** The piece as it was cut. */
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
  /** Cancel a job */
  cancel_job: {
    method: "DELETE";
    path: "/v1/jobs/{job_id}";
    parameters: { "job_id": string };
    response: JobAnswer;
  };
  /** Read a job */
  get_job: {
    method: "GET";
    path: "/v1/jobs/{job_id}";
    parameters: { "job_id": string };
    response: JobAnswer;
  };
  /** Follow a job */
  get_job_events: {
    method: "GET";
    path: "/v1/jobs/{job_id}/events";
    parameters: { "job_id": string };
  };
  /** Fetch a job's result */
  get_job_result: {
    method: "GET";
    path: "/v1/jobs/{job_id}/result";
    parameters: { "job_id": string };
    response: unknown;
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
    query: { "room"?: Record<string, unknown>; "opening"?: Record<string, unknown> };
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
  /** Give up a claim */
  give_up_claim: {
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
  /** Record what was cut, installed or spoiled */
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
