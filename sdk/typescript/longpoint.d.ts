// Requests and answers of Longpoint 0.1.0. Generated from the OpenAPI document; do not edit.

/** A length as text with its unit, as a tape reads: `34 1/2 in`, `876 mm`. */
export type LengthText = string;

/** One page of a list; `next` is the cursor of the next one, null on the last. */
export interface Page<T> {
  items: T[];
  next: string | null;
}

/** Conditions that the wood has come to rest in: the air's `temperature` and `relative_humidity` in percent, or the `moisture_content` that a meter showed. */
export interface AirIn {
  moisture_content?: number | null;
  name?: string;
  relative_humidity?: number | null;
  temperature?: number | null;
}

/** Amounts by category. `stock` is what is in pieces, `waste` kerfs, trims and short offcuts, `kept_offcut` what goes back on the rack. */
export interface AmountsOut {
  stock: string;
  waste: string;
  kept_offcut: string;
  /** Materials beside the sticks. */
  consumable: string;
  /** Hands-on hours at the wages given. */
  labour: string;
  /** All of them. */
  total: string;
}

/** An apron's end: returned to the wall, cut square, or cut back at an angle below the stool. */
export type ApronEnds = "angled" | "mitred_return" | "square";

/** An apron under the stool: its width down the wall, its thickness off the wall, how its ends are cut. `end_angle` is that of angled ends, cut back below the stool. */
export interface ApronIn {
  width: LengthText;
  thickness: LengthText;
  /** Degrees off a square cut. */
  end_angle?: number;
  ends?: ApronEnds;
  profile?: string;
}

/** An apron's readings and choices: it ends flush with the casing's outside edges. */
export interface ApronRequest {
  jamb_width: LengthText;
  reveal: LengthText;
  casing_width: LengthText;
  thickness: LengthText;
  ends?: ApronEnds;
  profile?: string;
  rounding?: RoundingIn;
  /** The unit of lengths that are written without one; without it each must carry its own. */
  unit?: Unit | null;
  width?: LengthText;
}

/** A band round mitred casing: its width across its face, its thickness off the wall, and how far it laps over the casing. */
export interface BackBandIn {
  width: LengthText;
  thickness: LengthText;
  lap?: LengthText;
  profile?: string;
}

/** What became of an opening. */
export type Became = "changed" | "gone" | "group_changed" | "new" | "trim_changed";

/** Packages of one size; `price` is of each, null where none was given. */
export interface BoughtOut {
  /** Its name. */
  package: string;
  size: number;
  /** How many to buy. */
  count: number;
  price: string | null;
  /** Of them all. */
  cost: string | null;
}

/** How the boards of a jamb extension meet: head over the legs, or mitred. */
export type BoxCorners = "butted" | "mitred";

/** A line for the yard. */
export interface BuyLineOut {
  profile: string;
  /** Of each stick. */
  length: LengthOut;
  /** How many of them. */
  quantity: number;
  /** Of one. */
  price: string;
  /** Of them all. */
  cost: string;
}

/** Casing stock: its profile's name, its width across the face and its thickness at the thick edge. */
export interface CasingIn {
  width: LengthText;
  thickness: LengthText;
  profile?: string;
}

/** Casing's readings and choices, for plumb sides. Give `leg_height`, or `left_height` and `right_height`. */
export interface CasingRequest {
  jamb_width: LengthText;
  reveal: LengthText;
  casing_width: LengthText;
  casing_thickness?: LengthText;
  floor_clearance?: LengthText;
  foot_style?: Foot;
  head_style?: HeadStyle;
  left_height?: LengthText | null;
  leg_height?: LengthText | null;
  overhang?: LengthText;
  plinth_height?: LengthText | null;
  profile?: string;
  right_height?: LengthText | null;
  rounding?: RoundingIn;
  /** The unit of lengths that are written without one; without it each must carry its own. */
  unit?: Unit | null;
}

/** What to know before starting: it informs and defers, and approves nothing. `applies_to` names openings; empty for the whole job. `source` is what it leans on. */
export interface CautionOut {
  /** A stable name for it. */
  code: string;
  /** The caution, in words. */
  text: string;
  source: string;
  applies_to: string[];
}

/** What changed between two revisions. */
export interface ChangesOut {
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

/** What is in the way. `left` and `right` are from the jamb's inside face, `above` from the head jamb's underside, `below` from the stool's top or the base; a neighbour's distance is from jamb face to jamb face. */
export interface ClearancesIn {
  above?: LengthText | null;
  below?: LengthText | null;
  left?: LengthText | null;
  left_neighbour?: LengthText | null;
  right?: LengthText | null;
  right_neighbour?: LengthText | null;
}

/** A compound cut: the table's turn off a square cut, and the blade's tilt from upright. */
export interface CompoundOut {
  mitre_degrees: number;
  bevel_degrees: number;
}

/** The wood, the conditions its joints are made in, and those they will live through. `scale` is the thermometer's. */
export interface ConditionsIn {
  species: Species;
  installed: AirIn;
  /** Each set of conditions they will live through. */
  seasons: AirIn[];
  grain?: Grain;
  scale?: Scale;
}

/** A square block at each corner, at least as wide as the casing it ends. */
export interface CornerBlockIn {
  width: LengthText;
  thickness: LengthText;
  profile?: string;
}

/** One inside corner of the jamb. `sides` meet there. `gap_if_square` is the joint gap that cutting for a square corner would leave, null where the corner is far from square. `compound` is the saw's setting where `spring_degrees` was given. */
export interface CornerOut {
  sides: [string];
  /** The inside angle. */
  degrees: number;
  /** How far that is from 90; positive where it is wider. */
  off_square_degrees: number;
  gap_if_square: string | null;
  at: PointOut;
  compound: CompoundOut | null;
}

/** Every corner, the base's right-hand one first, and the casing cut to them. `square` says that no joint would open by more than `square_gap` were all corners taken as square. `computed_by` is the diagonal or angle that decided the shape. `suspects` are told where readings disagree, the likeliest wrong one first: one reading too many shows that something is wrong, not for certain which. */
export interface CornersOut {
  corners: CornerOut[];
  /** The casing. */
  pieces: PartOut[];
  square: boolean;
  computed_by: string | null;
  /** Readings that the shape did not need, against it. */
  checks: TapeCheckOut[];
  suspects: SuspectOut[];
}

/** Readings of an opening that may be out of square, and the casing that is to go round it. `square_gap` is the joint gap below which the opening is called square. `spring_degrees` is the angle between a leaning casing's back and the upright of the wall's plane: 90 lies flat, and gives no bevel. */
export interface CornersRequest {
  readings: ReadingsIn;
  casing_width: LengthText;
  reveal: LengthText;
  casing_thickness?: LengthText;
  foot_style?: Foot;
  head_casing_width?: LengthText | null;
  profile?: string;
  rounding?: RoundingIn;
  spring_degrees?: number | null;
  square_gap?: LengthText;
  /** The unit of lengths that are written without one; without it each must carry its own. */
  unit?: Unit | null;
}

/** A line of the whole-house view. `by_opening` has each opening's amount in the order of `openings`; they add up to `amount`. */
export interface CostLineOut {
  category: string;
  name: string;
  amount: string;
  by_opening: string[];
}

/** The same money by line, by opening and by room: each view adds up to the same cent. */
export interface CostOut {
  currency: string;
  total: AmountsOut;
  /** By what it is spent on. */
  lines: CostLineOut[];
  /** By opening. */
  openings: OpeningCostOut[];
  /** By room. */
  rooms: RoomCostOut[];
  /** What had no price and so is not in the sum. */
  unpriced: UnpricedOut[];
}

/** An end's cut: square; a mitre, the table turned; a bevel, the blade tilted; compound, both. */
export type CutKind = "bevel" | "compound" | "mitre" | "square";

/** A cut list: every opening's parts, the sticks they come from, what to buy and what is left over. `cost` is the sticks'. The sections that `include` did not name are null. */
export interface CutListOut {
  openings: OpeningOut[];
  /** The sticks of each profile and what is cut from each. */
  plans: ProfilePlanOut[];
  /** What to buy, a line for each profile and length. */
  buy: BuyLineOut[];
  cost: string;
  currency: string;
  /** Whether no plan of any profile can be cheaper. */
  proven: boolean;
  /** What goes back on the rack. */
  offcuts: OffcutOut[];
  /** What was assumed or left out. */
  notes: string[];
  /** What to know before starting. */
  cautions: CautionOut[];
  /** The money by line, by opening and by room. */
  cost_sheet: CostOut | null;
  /** Hands-on time, and drying waits. */
  hours: HoursOut | null;
  /** What to buy beside the sticks. */
  materials: MaterialsOut | null;
  /** The cuts in the order to make them. */
  saw_order: SawOrderOut | null;
}

/** A house or a part of one: openings, the trim specs they name, and the stock to cut from. `kerf` is what one cut eats, `end_trim` what is squared off each factory end, and an offcut of `keep_length` or more goes back on the rack. With no stock, parts are computed and no sticks. `include` names the sections of the answer that are only worked out when asked for; `shop` is how that shop works. At most 50,000 pieces are worked out together, those of openings alike counted each, from at most 40,000 remnants; their marks and profiles, each piece with its own, come to at most 4,000,000 bytes, and the seasons of all openings to 20,000. A sheet as HTML, PDF or SVG shows at most 2,500 pieces. */
export interface CutListRequest {
  openings: OpeningIn[];
  trim_specs: Record<string, TrimIn>;
  /** ISO 4217 code; only repeated in the answer. */
  currency?: string;
  end_trim?: LengthText;
  /** Openings trimmed together, or joined units whose stool is too long for a stick. */
  groups?: GroupIn[];
  include?: Section[];
  keep_length?: LengthText;
  kerf?: LengthText;
  /** The wood, and the air its joints will live through: the answer then tells how far mitres open. */
  movement?: ConditionsIn | null;
  /** How long to search for cheaper sticks, all profiles together, where first-fit is not proven cheapest; 0 takes first-fit. */
  planning_seconds?: number;
  rounding?: RoundingIn;
  shop?: ShopIn | null;
  stock?: StockIn[];
  /** The unit of lengths that are written without one; without it each must carry its own. */
  unit?: Unit | null;
}

/** What is sawn out of a stool's back edge where it passes a mull or a stretch of wall: `at` from its left end, `depth` at its left, `end_depth` at its right where that is another. */
export interface CutoutOut {
  at: LengthOut;
  length: LengthOut;
  depth: LengthOut;
  end_depth: LengthOut | null;
}

/** A stretch of a stick that no piece may touch, measured from its left end. */
export interface DefectIn {
  start: LengthText;
  end: LengthText;
}

/** What was done with a piece. */
export type Done = "cut" | "fitted" | "spoiled";

/** A door to be hung in a jamb made for it: `width`, `height` and `thickness` are the door's own. Gaps are left between door and jamb and under the door. `housing` is how deep the head jamb is let into the legs. The rough opening is told where it is to be checked. Hinges are measured from the door's top and bottom to the hinge's near end, the strike from the floor to its middle; the defaults are common practice. */
export interface DoorIn {
  width: LengthText;
  height: LengthText;
  bottom_hinge?: LengthText;
  floor_gap?: LengthText;
  head_gap?: LengthText;
  hinge_gap?: LengthText;
  hinge_length?: LengthText;
  hinge_side?: Hand;
  hinges?: number;
  housing?: LengthText;
  jamb_depth?: LengthText;
  jamb_thickness?: LengthText;
  profile?: string;
  rough_height?: LengthText | null;
  rough_width?: LengthText | null;
  strike_gap?: LengthText;
  strike_height?: LengthText;
  thickness?: LengthText;
  top_hinge?: LengthText;
}

/** One end of a part as it lies on the saw: face up, outer edge against the fence. `at` is the end as installed (a leg's foot or head, else the side it meets), `on_saw` the end as it lies. `mitre_degrees` is the table's turn off a square cut towards `swing`; `bevel_degrees` the blade's tilt from upright towards `tilt`. `long_edge` is the edge or face that keeps the long point. */
export interface EndOut {
  at: string;
  on_saw: Hand | (string & {});
  cut: CutKind | (string & {});
  mitre_degrees: number;
  swing: Hand | (string & {}) | null;
  bevel_degrees: number;
  tilt: Hand | (string & {}) | null;
  long_edge: string | null;
  /** What is sawn out of a stool's back corner at this end; null for none. */
  notch: NotchOut | null;
}

/** Boards on the jamb's edge that bring it out to the wall; `reveal` is the jamb left showing inside them. */
export interface ExtensionIn {
  thickness: LengthText;
  corners?: BoxCorners;
  profile?: string;
  reveal?: LengthText;
}

/** One thing that was wrong, where it was, and what to do about it. */
export interface Fault {
  /** A short stable name for the kind of fault, for programs. */
  code: string;
  /** A sentence for people: what was wrong and what to send instead. */
  detail: string;
  /** The column of a CSV body, as the file names it. */
  column?: string;
  /** The header field at fault, when it is one. */
  header?: string;
  /** The query or path parameter at fault, when it is one. */
  parameter?: string;
  /** RFC 6901 JSON pointer into the body; "" is the whole body. Absent when it is not in the body. */
  pointer?: string;
  /** The row of a CSV body, the first being 1; absent when it is not in one. */
  row?: number;
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
export interface FigureOut {
  /** What it is. */
  name: string;
  /** How much, in `unit`. */
  value: number;
  unit: string;
}

/** Something found. It has changed no size: an answer that is taken up is sent back in its field. */
export interface FindingOut {
  /** A stable name for the kind of finding. */
  code: string;
  /** Where: left, right, head, sill, base, above or below; empty for a group's. */
  side: string;
  /** What was found, in words. */
  detail: string;
  /** How much it is. */
  amount: LengthOut;
  /** What can be done about it, the least work first. */
  offers: OfferOut[];
}

/** What the trim stands on. */
export type Foot = "floor" | "picture_frame" | "plinth" | "stool";

/** How the board was sawn: its face shows flat (tangential) or quartered (radial) grain. */
export type Grain = "flat_sawn" | "quarter_sawn";

/** What became of the pieces that a group's openings share. */
export interface GroupChange {
  /** The group's. */
  mark: string;
  became: Became | (string & {});
  /** Each of its parts. */
  parts: PartChange[];
}

/** Openings trimmed together, left to right by their marks; or one of joined units, its `gaps` an empty list, whose stool is too long for a stick. `heads` are the heights of their head jambs' undersides over one level line, to be checked for being in line. With `gaps`, from each opening's right jamb face to the next one's left, they share one stool and apron; a stool longer than `stock_length` is scarfed over one of `solid`, places from the first opening's left jamb face, or over the middles of the gaps. */
export interface GroupIn {
  mark: string;
  /** Their marks, left to right. */
  openings: string[];
  gaps?: LengthText[] | null;
  heads?: LengthText[] | null;
  solid?: LengthText[];
  stock_length?: LengthText | null;
}

/** A side, as seen from the room or, at the saw, by whoever stands at it. */
export type Hand = "left" | "right";

/** A fillet under a butted head, or a cap over it: its height as seen, its depth off the wall, and how far it runs past the legs' outside edges. */
export interface HeadStripIn {
  profile: string;
  height: LengthText;
  depth: LengthText;
  ends?: StripEnds;
  overhang?: LengthText;
}

/** How casing meets at the head: mitred, head over the legs, or both against a block. */
export type HeadStyle = "butted" | "corner_blocks" | "mitred";

/** How the service is. */
export interface Health {
  /** "ok"; a service that is not answers with a problem instead. */
  status: "ok" | (string & {});
}

/** A stool's own horns at this opening, past the trim's outside edge. */
export interface HornsIn {
  left?: LengthText | null;
  right?: LengthText | null;
}

/** Hands-on hours by task, and drying waits, which are nobody's work, apart from them. */
export interface HoursOut {
  hands_on_hours: number;
  /** Minutes by task. */
  tasks: LabourOut[];
  /** All waits together. */
  wait_hours: number;
  waits: WaitOut[];
  /** Every rate that was used. */
  rates: RateOut[];
}

/** What is said of a house as a whole. */
export interface HouseIn {
  /** What the house is called. A name on one line, not starting with a space. */
  name: string;
  /** ISO 4217 code; only repeated in the answer. */
  currency?: string;
  /** What is squared off each factory end. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  end_trim?: LengthText;
  /** Openings trimmed together, each named by its mark; one that is named can neither go nor be renamed. */
  groups?: GroupIn[];
  /** An offcut this long or longer goes on the rack. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  keep_length?: LengthText;
  /** What one cut eats. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  kerf?: LengthText;
  /** The wood, and the air its joints will live through: cut lists then tell how far mitres open. */
  movement?: ConditionsIn | null;
  /** How lengths of the answers are rounded; its `to` decides the unit they are shown in. */
  rounding?: RoundingIn;
  /** How the shop works: its rates, wages, packages and saw. */
  shop?: ShopIn | null;
  /** Anything about the site. Free text; may have several lines. */
  site_note?: string;
  /** What the yard sells. */
  stock?: StockForSaleIn[];
  /** Trim chosen for many openings, by name. */
  trim_specs?: Record<string, TrimIn>;
  /** The unit of lengths written without one, here and in the openings. */
  unit?: Unit | null;
}

/** Openings to bring in. */
export interface ImportIn {
  /** In the order they are to be listed. */
  openings: OpeningIn[];
}

/** What was brought in, or would be. */
export interface ImportOut {
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
  kind: "offcut" | "opening" | "piece" | "schedule" | (string & {});
  /** Its id. */
  id: string;
  /** The opening's mark, where it is an opening that stays. */
  mark: string | null;
  /** Whether it went. */
  gone: boolean;
}

/** Where labels lie on their sheet. */
export interface LabelGridIn {
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
  openings: OpeningIn[];
  trim_specs: Record<string, TrimIn>;
  /** ISO 4217 code; only repeated in the answer. */
  currency?: string;
  end_trim?: LengthText;
  /** Where labels lie; without it 3 by 10 labels of 2 5/8 by 1 in on Letter, 3 by 8 of 70 by 37 mm on A4. */
  grid?: LabelGridIn | null;
  /** Openings trimmed together, or joined units whose stool is too long for a stick. */
  groups?: GroupIn[];
  include?: Section[];
  keep_length?: LengthText;
  kerf?: LengthText;
  /** The wood, and the air its joints will live through: the answer then tells how far mitres open. */
  movement?: ConditionsIn | null;
  /** How long to search for cheaper sticks, all profiles together, where first-fit is not proven cheapest; 0 takes first-fit. */
  planning_seconds?: number;
  rounding?: RoundingIn;
  shop?: ShopIn | null;
  /** Places on the first sheet that are used up. */
  skip?: number;
  stock?: StockIn[];
  /** The unit of lengths that are written without one; without it each must carry its own. */
  unit?: Unit | null;
}

/** Hands-on minutes of one task: `quantity` of `unit`, by the rule, at the rates named. */
export interface LabourOut {
  task: Task | (string & {});
  quantity: number;
  unit: string;
  minutes: number;
  rule: string;
  rates: string[];
  /** Minutes of each opening. */
  by_opening: ShareOut[];
}

/** A length going out. */
export interface LengthOut {
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

/** Lengths to read. */
export interface LengthsIn {
  /** Each as it was written down. */
  lengths: LengthText[];
  /** How to round them. */
  rounding?: RoundingIn;
  /** The unit of those that carry none; without it each must carry its own. */
  unit?: Unit | null;
}

/** The lengths that were read, in the order they came. */
export interface LengthsOut {
  /** One for each that was given. */
  lengths: LengthRead[];
}

/** A change that was made. */
export interface Made {
  /** The schedule's revision it made. */
  revision: number;
}

/** A layout mark: `at` from the part's left end as it lies on the saw. */
export interface MarkOut {
  /** What it marks. */
  name: string;
  at: LengthOut;
}

/** What is bought beside sticks, and the unit it is counted in: nails; glue, caulk, filler, primer and paint in fluid ounces; shims; tape in feet; abrasive in sheets. */
export type MaterialCode = "abrasive" | "caulk" | "filler" | "glue" | "nails_10d" | "nails_2d" | "nails_3d" | "nails_4d" | "nails_5d" | "nails_6d" | "nails_7d" | "nails_8d" | "nails_9d" | "paint" | "primer" | "shims" | "tape";

/** What is used of a material, waste included, and the packages that cover it. `rule` says how it was computed, `from` from which figures, `rates` at which rates. */
export interface MaterialOut {
  /** A stable name, as in `packages`. */
  code: string;
  /** Its name in words. */
  name: string;
  /** How much is used, in `unit`. */
  quantity: number;
  unit: string;
  /** The packages to buy. */
  bought: BoughtOut[];
  rule: string;
  from: FigureOut[];
  rates: string[];
  /** How much of it is for each opening. */
  by_opening: ShareOut[];
  /** What was assumed. */
  notes: string[];
}

/** Nails, glue, caulk, filler, primer, paint, shims, tape and abrasive, and what to beware of. */
export interface MaterialsAnswer {
  materials: MaterialsOut;
  cautions: CautionOut[];
}

/** What to buy beside the sticks, and every rate that was used. */
export interface MaterialsOut {
  lines: MaterialOut[];
  rates: RateOut[];
}

/** Openings, the trim specs they name, the groups that some of them form, and how the shop works. */
export interface MaterialsRequest {
  openings: OpeningIn[];
  trim_specs: Record<string, TrimIn>;
  groups?: GroupIn[];
  rounding?: RoundingIn;
  shop?: ShopIn | null;
  /** The unit of lengths that are written without one; without it each must carry its own. */
  unit?: Unit | null;
}

/** Which mark is taken: nearest (the longer of two equally near), up (never short), down (never long). */
export type Mode = "down" | "nearest" | "up";

/** How the piece moves. Coefficients are averages of clear wood: one board may move half as much again. `coefficient` is the change per unit of width and per percent of moisture content. */
export interface MovementOut {
  /** When the joint was made, in percent. */
  installed_moisture_content: number;
  coefficient: number;
  seasons: SeasonOut[];
  /** The widest of all seasons. */
  widest_gap: string;
  /** Where formulas and coefficients come from. */
  source: string;
  notes: string[];
}

/** A mitred piece, the conditions its joint was made in, and those it will live through. `mitre_degrees` is off a square cut. */
export interface MovementRequest {
  species: Species;
  installed: AirIn;
  /** Each set of conditions they will live through. */
  seasons: AirIn[];
  width: LengthText;
  grain?: Grain;
  mitre_degrees?: number;
  scale?: Scale;
  /** The unit of lengths that are written without one; without it each must carry its own. */
  unit?: Unit | null;
}

/** What is sawn out of a stool's back corner: `depth` from the back edge, `length` from the end. `end_depth` is the depth at the horn's end where the wall is out of plane. */
export interface NotchOut {
  depth: LengthOut;
  length: LengthOut;
  end_depth: LengthOut | null;
}

/** How the wall lies to the jamb's edge at one corner: `proud` of it or `shy` of it; neither where it is flush. */
export interface OffPlaneIn {
  proud?: LengthText | null;
  shy?: LengthText | null;
}

/** A length of stock on the rack. */
export interface OffcutIn {
  /** The profile's name, as the trim specs have it. A name on one line, not starting with a space. */
  profile: string;
  /** From end to end. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  length: LengthText;
  /** Stretches no piece may touch. */
  defects?: DefectIn[];
  /** Where it came from, or stands. Free text; may have several lines. */
  note?: string;
  /** What using it is taken to cost. An amount of money as decimal text, at most two places. */
  price?: string;
}

/** What goes back on the rack. */
export interface OffcutOut {
  profile: string;
  length: LengthOut;
  quantity: number;
}

/** A length of stock on the rack, as it was sent. */
export interface OffcutStored {
  id: string;
  /** The schedule's revision that put it there. */
  revision: number;
  profile: string;
  length: string;
  price: string;
  defects: DefectIn[];
  note: string;
  /** Every length exactly, by its JSON pointer, as a fraction of an inch. */
  exact: Record<string, string>;
}

/** One of the trade's answers. */
export interface OfferOut {
  /** its name. */
  answer: string;
  /** what it means. */
  detail: string;
  /** the field that takes it up, a JSON pointer into the opening or, for what a group's openings have together, into the cut list's body; null where no one field does, as for caulk: `detail` then says what does. It was tried: with that value the answer comes without the finding, a group's once every opening of it that is offered one has its own. */
  field: string | null;
  /** what to write there. */
  value: string | boolean | null;
  /** the lengths, and the angles in degrees, that go with it. */
  figures: Record<string, string>;
}

/** The joint of an opening that stands open the widest in one set of conditions: the `part` on one side of it, empty where none is mitred; `gap` at its open end, the short or the long point. */
export interface OpenJointOut {
  /** The conditions, as they were named. */
  name: string;
  /** What the wood comes to in them, in percent. */
  moisture_content: number;
  part: string;
  gap: string;
  opens_at: string;
  /** Whether the moisture contents lie where the coefficients hold. */
  within_table: boolean;
}

/** What became of one opening. */
export interface OpeningChange {
  id: string;
  /** Its mark, the later one. */
  mark: string;
  /** The mark it had before; null when it is new. */
  mark_before: string | null;
  /** With trim_changed only the trim spec it names was changed; with group_changed it began or ceased to share a stool. */
  became: Became | (string & {});
  /** What was said of it differently. */
  readings: FieldChange[];
  /** Each of its parts. */
  parts: PartChange[];
}

/** What an opening costs, all of its count together. */
export interface OpeningCostOut {
  opening: string;
  room: string;
  amounts: AmountsOut;
}

/** One opening of a house. `trim` names one of the request's trim specs; `count` is how many are alike. */
export interface OpeningIn {
  /** What it is called in the house; part of each piece's name. A name on one line, not starting with a space. */
  mark: string;
  readings: ReadingsIn;
  trim: string;
  count?: number;
  /** What the trim stands on. */
  foot_style?: Foot;
  /** Its own, where they are not the trim's. */
  horns?: HornsIn;
  /** Its own, where they are not the trim's. */
  reveals?: RevealsIn;
  /** Where it is; money is told by room, too. */
  room?: string;
  /** What is done under a stool on a sill out of level. */
  sill_answer?: SillAnswer;
  /** The joint gap below which an opening that is out of square is treated as square. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  square_gap?: LengthText;
  /** Takes up what was found of a wall out of plane; until one is chosen no size changes for it. */
  wall_answer?: WallAnswer;
  /** How far the wall may lie off the jamb's edge before the casing is planed or the jamb extended. */
  wall_limits?: WallLimitsIn;
  /** Its own, where pieces are ripped. */
  widths?: WidthsIn;
  /** Leaves the trim's apron out. */
  without_apron?: boolean;
}

/** One opening worked out: its parts and what was assumed. `square_gap` is the joint gap left by taking its corners as square: nought where they are, or where their own angles were cut. `findings` are what is in the way, out of plane or out of level, and none of them has changed a size. `movement` is the widest mitre season by season, null where no conditions were given. */
export interface OpeningOut {
  mark: string;
  room: string;
  /** How many are alike; each part's `quantity` is of them all together. */
  count: number;
  /** Every piece of its trim. */
  parts: PartOut[];
  square_gap: string;
  /** What was assumed. */
  notes: string[];
  findings: FindingOut[];
  movement: OpenJointOut[] | null;
}

/** One opening with its trim; answered with all of its parts. With `movement`, the answer also says how far its mitres will open as the wood moves. */
export interface OpeningRequest {
  /** What it is called in the house; part of each piece's name. A name on one line, not starting with a space. */
  mark: string;
  readings: ReadingsIn;
  trim: TrimIn;
  /** What the trim stands on. */
  foot_style?: Foot;
  /** Its own, where they are not the trim's. */
  horns?: HornsIn;
  movement?: ConditionsIn | null;
  /** Its own, where they are not the trim's. */
  reveals?: RevealsIn;
  rounding?: RoundingIn;
  /** What is done under a stool on a sill out of level. */
  sill_answer?: SillAnswer;
  /** The joint gap below which an opening that is out of square is treated as square. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  square_gap?: LengthText;
  /** The unit of lengths that are written without one; without it each must carry its own. */
  unit?: Unit | null;
  /** Takes up what was found of a wall out of plane; until one is chosen no size changes for it. */
  wall_answer?: WallAnswer;
  /** How far the wall may lie off the jamb's edge before the casing is planed or the jamb extended. */
  wall_limits?: WallLimitsIn;
  /** Its own, where pieces are ripped. */
  widths?: WidthsIn;
  /** Leaves the trim's apron out. */
  without_apron?: boolean;
}

/** An opening as it was sent, and the exact value of every length in it. */
export interface OpeningStored {
  id: string;
  /** The schedule's revision that last changed it. */
  revision: number;
  /** Its place in the schedule's order; places may be skipped. */
  position: number;
  mark: string;
  room: string;
  trim: string;
  count: number;
  foot_style: Foot | (string & {});
  readings: ReadingsIn;
  reveals: RevealsIn;
  square_gap: string;
  horns: HornsIn;
  widths: WidthsIn;
  without_apron: boolean;
  wall_answer: WallAnswer | (string & {});
  wall_limits: WallLimitsIn;
  sill_answer: SillAnswer | (string & {});
  /** Every length exactly, by its JSON pointer, as a fraction of an inch. */
  exact: Record<string, string>;
}

/** What is done. square_ends: both factory ends of a stick are squared off. cut_out: a defect is sawn out of a stick. rip_stick: a whole stick is ripped to width. part_off: a piece too short to hold is cut from the stick while that is long. crosscut: a piece is cut square to its overall length against the stop block. shared_cut: one angled cut makes the end of two pieces that lie turned over on the stick. angled_end: a mitre, bevel or compound cut at the end of a piece, to the corner. rip: one piece is ripped to width. notch: a stool's notch is sawn out. */
export type OperationKind = "angled_end" | "crosscut" | "cut_out" | "notch" | "part_off" | "rip" | "rip_stick" | "shared_cut" | "square_ends";

/** One step at the saw, made at the setup of that number. `stick` is the stick's number in its profile's plan, null for a part without stock. `end` is the end of the piece as installed, `on_saw` the end as it lies, face up, outer edge against the fence. `mark` is where to cut: from the stick's left end (cut_out, to `mark_to`), from its free end (part_off, and what square_ends takes off), or along the fence from the left end of the row (shared_cut). `held` is the length of the workpiece in hand. `mirror_of` is the part that this one is the mirror image of; `cautions` are codes of the answer's cautions. */
export interface OperationOut {
  number: number;
  setup: number;
  kind: OperationKind | (string & {});
  profile: string;
  stick: number | null;
  /** What it makes or cuts. */
  pieces: PieceOut[];
  /** The step in words. */
  title: string;
  end: string;
  on_saw: Hand | (string & {}) | null;
  mark: LengthOut | null;
  mark_to: LengthOut | null;
  held: LengthOut | null;
  mirror_of: string;
  cautions: string[];
}

/** Something sold: its size in the material's unit (nails by the piece; glue, caulk, filler, primer and paint in fluid ounces; tape in feet; abrasive in sheets). Without a price it is bought and costs nothing in the answer. */
export interface PackageIn {
  material: MaterialCode;
  name: string;
  size: number;
  price?: string | null;
}

/** What became of a part; altered is the same length with other ends, width or stock. */
export type PartBecame = "altered" | "gone" | "longer" | "new" | "shorter" | "unchanged";

/** What became of one part of an opening. */
export interface PartChange {
  /** The part's key. */
  part: string;
  /** Longer and shorter go by what it takes of a stick, exactly. */
  became: PartBecame | (string & {});
  /** What it took of a stick. */
  before: LengthOut | null;
  /** What it takes. */
  after: LengthOut | null;
  /** The difference, exactly, as a fraction of an inch; negative when it became shorter. */
  longer_by: string | null;
  /** How many there were. */
  quantity_before: number;
  /** How many there are. */
  quantity_after: number;
}

/** What a part is. Legs stand at the sides; a return takes an end back to the wall. */
export type PartKind = "apron" | "apron_return" | "back_band" | "cap" | "cap_return" | "casing_head" | "casing_leg" | "casing_sill" | "corner_block" | "door_stop" | "fillet" | "fillet_return" | "head_jamb" | "jamb_extension" | "jamb_leg" | "levelling_strip" | "mull_casing" | "plinth_block" | "stool" | "stool_return";

/** One piece of trim. `short_point` runs along the inner edge, `long_point` along the outer edge; `overall` is what it takes of a stick. `rip_width` is null where the stock keeps its own width. `joint_error` is the widest a mitre of this part can open or bind because `overall` was rounded, were all of the residual to fall on one joint. */
export interface PartOut {
  /** Its name in its opening, as `casing_leg/left`: what `part` and `piece` are elsewhere. */
  key: string;
  kind: PartKind | (string & {});
  /** Its opening's mark. */
  opening: string;
  /** Where it goes at the opening: left, right, head and so on. */
  side: string;
  /** The stock it is cut from. */
  profile: string;
  /** How many there are, alike openings' taken together. */
  quantity: number;
  short_point: LengthOut;
  long_point: LengthOut;
  overall: LengthOut;
  width: LengthOut;
  thickness: LengthOut;
  rip_width: LengthOut | null;
  /** Rip widths at its two ends, where they differ; else null. */
  taper: TaperOut | null;
  cutouts: CutoutOut[];
  /** Its left and its right end as it lies on the saw. */
  ends: [EndOut];
  /** What to mark along it before it is cut or fitted. */
  marks: MarkOut[];
  joint_error: string;
  /** How each of its figures was computed. */
  how: StepOut[];
  /** What was assumed of it. */
  notes: string[];
}

/** The parts asked for, and what was assumed. */
export interface PartsOut {
  parts: PartOut[];
  notes: string[];
}

/** What was done with one piece: it was cut as the cut list now has it, or fitted, or spoiled. */
export interface PieceIn {
  /** The opening's mark or id. A name on one line, not starting with a space. */
  opening: string;
  /** Which part of it. The part's `key` in the cut list, as `casing_leg/left`. */
  part: string;
  /** What was done. */
  state: Done;
  /** Which of several alike, counted from 1. */
  instance?: number;
  /** Anything worth knowing. Free text; may have several lines. */
  note?: string;
  /** The id of the piece it was cut again from, where it was. */
  recut_from?: string | null;
}

/** A piece: its opening's mark, its part's key, and which of the count it is. */
export interface PieceOut {
  opening: string;
  part: string;
  instance: number;
}

/** What became of a piece that was cut; a spare is one whose place has another by now. */
export type PieceState = "cut" | "fitted" | "spare" | "spoiled";

/** A piece that was cut. */
export interface PieceStored {
  id: string;
  /** The schedule's revision that last changed it. */
  revision: number;
  /** The opening it was cut for. */
  opening_id: string;
  /** That opening's mark when it was cut. */
  opening: string;
  /** Which part of it. */
  part: string;
  /** Which of several alike. */
  instance: number;
  /** What became of it. */
  state: PieceState | (string & {});
  /** The stock it was cut from. */
  profile: string;
  /** Its farthest extent, as it was marked. */
  length: LengthOut;
  note: string;
}

/** Where a piece belongs. */
export interface Place {
  /** The opening's mark. */
  opening: string;
  /** Which part of it. */
  part: string;
  /** Which of several alike. */
  instance: number;
  /** What is needed there. */
  length: LengthOut;
}

/** A piece's place on a stick: `start` from the stick's left end to the piece's left-most point. `turned` lies turned over; `reversed` lies end for end; `shares_cut` shares its left cut with the piece before. */
export interface PlacedOut {
  /** The mark of the piece's opening. */
  opening: string;
  /** The part's `key` there. */
  part: string;
  /** Which of several alike, counted from 1. */
  instance: number;
  start: LengthOut;
  length: LengthOut;
  turned: boolean;
  reversed: boolean;
  shares_cut: boolean;
}

/** Plinth blocks under a door's legs. */
export interface PlinthIn {
  width: LengthText;
  height: LengthText;
  thickness: LengthText;
  profile?: string;
}

/** A place on the wall, from the base's left inside corner, x along the base, as decimal text. */
export interface PointOut {
  x: string;
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

/** One profile's sticks. No plan costs less than `bound`; `proven` says that none is cheaper than this one. `split_openings` are those that were to come from one stick each and that no stick can hold. */
export interface ProfilePlanOut {
  profile: string;
  sticks: StickOut[];
  cost: string;
  bound: string;
  /** How far `cost` may be from the cheapest, as a share of it; 0 is proven. */
  gap: number;
  proven: boolean;
  /** What found it: first_fit, columns or branching. */
  method: string;
  /** How long the search took. */
  seconds: number;
  split_openings: string[];
}

/** A rate that was reckoned with, and where it comes from. */
export interface RateOut {
  /** Its field in the shop's `rates`. */
  name: string;
  /** How much, in `unit`. */
  value: number;
  /** in, mil, percent, each, ft2, min, h or penny. */
  unit: string;
  /** Where it comes from: a published source, common practice, or the caller. */
  source: string;
  /** What it is, in words. */
  says: string;
}

/** The shop's own rates; the answer names the source of each rate it used. */
export interface RatesIn {
  block_nails?: number | null;
  caulk_depth?: LengthText | null;
  caulk_fillet?: LengthText | null;
  caulk_gap?: LengthText | null;
  caulk_minutes?: number | null;
  caulk_wait?: number | null;
  caulk_waste?: number | null;
  corner_nails?: number | null;
  cut_minutes?: number | null;
  drywall?: LengthText | null;
  fill_minutes?: number | null;
  filler_wait?: number | null;
  filler_waste?: number | null;
  final_coat_minutes?: number | null;
  fit_minutes?: number | null;
  glue_film?: number | null;
  glue_waste?: number | null;
  hole_depth?: LengthText | null;
  hole_width?: LengthText | null;
  inner_nail?: 0 | 2 | 3 | 4 | 5 | 6 | 7 | 8 | 9 | 10 | null;
  jamb_penetration?: LengthText | null;
  measure_minutes?: number | null;
  nail_end_distance?: LengthText | null;
  nail_minutes?: number | null;
  nail_spacing?: LengthText | null;
  nail_waste?: number | null;
  outer_nail?: 0 | 2 | 3 | 4 | 5 | 6 | 7 | 8 | 9 | 10 | null;
  paint_coats?: number | null;
  paint_film?: number | null;
  paint_minutes?: number | null;
  paint_solids?: number | null;
  paint_wait?: number | null;
  paint_waste?: number | null;
  painted_backs?: number | null;
  primer_coats?: number | null;
  primer_film?: number | null;
  primer_solids?: number | null;
  primer_wait?: number | null;
  profile_girth?: number | null;
  rip_minutes?: number | null;
  rout_minutes?: number | null;
  sandings?: number | null;
  setup_minutes?: number | null;
  sheet_area?: number | null;
  shim_space?: LengthText | null;
  shims_per_opening?: number | null;
  stool_nail_spacing?: LengthText | null;
  stud_penetration?: LengthText | null;
  tape_waste?: number | null;
}

/** What the tape read, from the jamb's inside faces. A plumb-sided opening has `jamb_width` and `leg_height` (stool top, sill jamb or floor to the underside of the head jamb); where the two sides differ, `left_height` and `right_height` instead: a raked head. One out of square has a `head_width` too, and at least one diagonal, inside corner to inside corner, or one corner's angle; further ones check the tape. A curved head has its `rise` above the springing (`leg_height` is up to the springing, left out where the curve stands on the base) and `head_pieces`, its number of straight pieces, or `departure`, how far a piece's middle may lie from the true curve. Any other convex shape has `sides`, anticlockwise from the base as seen from the room, and the interior `angles`, the base's right-hand corner first (a triangle needs none). Joined units have their `lights`, left to right, and the `mull_widths` between them in place of `jamb_width`. A `door` gives its jamb's width and height by itself. A stool needs `jamb_depth`, wall face back to the sash stop, or `left_depth` and `right_depth`; where the wall is out of plane, the same depth at each horn's end too. `wall` tells at every corner, in the order of `angles`, how the wall lies to the jamb's edge. */
export interface ReadingsIn {
  angles?: number[] | null;
  bottom_left_angle?: number | null;
  bottom_right_angle?: number | null;
  clearances?: ClearancesIn;
  departure?: LengthText | null;
  diagonal_from_bottom_left?: LengthText | null;
  diagonal_from_bottom_right?: LengthText | null;
  door?: DoorIn | null;
  head_pieces?: number | null;
  head_width?: LengthText | null;
  jamb_depth?: LengthText | null;
  jamb_thickness?: LengthText;
  jamb_width?: LengthText | null;
  left_depth?: LengthText | null;
  left_height?: LengthText | null;
  left_horn_depth?: LengthText | null;
  leg_height?: LengthText | null;
  lights?: LengthText[] | null;
  mull_widths?: LengthText[] | null;
  right_depth?: LengthText | null;
  right_height?: LengthText | null;
  right_horn_depth?: LengthText | null;
  rise?: LengthText | null;
  sides?: LengthText[] | null;
  sill?: SillIn | null;
  top_left_angle?: number | null;
  top_right_angle?: number | null;
  wall?: OffPlaneIn[] | null;
}

/** A piece of stock on hand: used first where that is cheaper. Its price is what using it is taken to cost. */
export interface RemnantIn {
  length: LengthText;
  /** How many there are just so. */
  count?: number;
  /** Stretches no piece may touch, on each of them. */
  defects?: DefectIn[];
  /** An amount of money as decimal text, at most two places. */
  price?: string;
}

/** Which revision to go back to. */
export interface RestoreIn {
  /** Its number. */
  revision: number;
}

/** A side's own reveal, where it is not the trim's. */
export interface RevealsIn {
  head?: LengthText | null;
  left?: LengthText | null;
  right?: LengthText | null;
  sill?: LengthText | null;
}

/** One write to a schedule, with all it wrote. */
export interface RevisionDetail {
  /** Counts from 1; the latest is the schedule as it stands. */
  number: number;
  /** RFC 3339, in UTC. */
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

/** One write to a schedule. */
export interface RevisionOut {
  /** Counts from 1; the latest is the schedule as it stands. */
  number: number;
  /** RFC 3339, in UTC. */
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

/** What a room costs: the sum of its openings. */
export interface RoomCostOut {
  room: string;
  openings: number;
  amounts: AmountsOut;
}

/** The fineness of the marks a length is rounded to. */
export type RoundTo = "0.5 mm" | "1 mm" | "1/16 in" | "1/32 in" | "1/64 in" | "1/8 in";

/** How lengths of the answer are rounded. */
export interface RoundingIn {
  /** Which mark is taken: the nearest (the longer of two equally near), the next up or the next down. */
  mode?: Mode;
  /** The fineness of the tape they will be marked with. It decides the unit of the answer, too. */
  to?: RoundTo;
}

/** The shop's limits at the saw: the shortest workpiece held by hand, the shortest pushed through the table saw, the sharpest mitre the table turns to, and how finely its scale can be set, in degrees. */
export interface SawIn {
  /** In degrees. */
  angle_step?: number;
  /** In degrees off a square cut. */
  sharpest_mitre?: number;
  /** The shortest workpiece held by hand. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  smallest_held?: LengthText;
  /** The shortest pushed through the table saw. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  smallest_ripped?: LengthText;
}

/** The cuts in the order that sets the saws least. `setup_count` is how often a tool is set, `setup_count_by_opening` how often it would be, cutting one opening after the other. */
export interface SawOrderOut {
  setup_count: number;
  setup_count_by_opening: number;
  /** Each tool setting, in order. */
  setups: SetupOut[];
  /** Each step, in order. */
  operations: OperationOut[];
}

/** The thermometer's scale: what temperatures are in. */
export type Scale = "celsius" | "fahrenheit";

/** What is still to be cut of a house, and what became of what was cut before. */
export interface ScheduleCutListOut {
  /** The schedule's revision it is worked out from. */
  revision: number;
  /** How many pieces the whole house needs. */
  needed: number;
  /** How many of them are cut and as they should be. */
  right: number;
  /** Pieces that are not as they should be any more. */
  wrong: WrongPiece[];
  /** Pieces to be cut from stock once more, their place's piece having been spoiled or become wrong. */
  cut_again: Place[];
  /** What is still to be cut from stock: recut pieces and those that are right are left out. */
  cut_list: CutListOut;
}

/** A house's schedule, with its openings and its rack where they are known already; an export looks the same. */
export interface ScheduleIn {
  /** What the house is called. A name on one line, not starting with a space. */
  name: string;
  /** ISO 4217 code; only repeated in the answer. */
  currency?: string;
  /** What is squared off each factory end. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  end_trim?: LengthText;
  /** Openings trimmed together, each named by its mark; one that is named can neither go nor be renamed. */
  groups?: GroupIn[];
  /** An offcut this long or longer goes on the rack. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  keep_length?: LengthText;
  /** What one cut eats. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one. */
  kerf?: LengthText;
  /** The wood, and the air its joints will live through: cut lists then tell how far mitres open. */
  movement?: ConditionsIn | null;
  /** In the order they are to be listed. */
  openings?: OpeningIn[];
  /** Offcuts on hand. */
  rack?: OffcutIn[];
  /** How lengths of the answers are rounded; its `to` decides the unit they are shown in. */
  rounding?: RoundingIn;
  /** How the shop works: its rates, wages, packages and saw. */
  shop?: ShopIn | null;
  /** Anything about the site. Free text; may have several lines. */
  site_note?: string;
  /** What the yard sells. */
  stock?: StockForSaleIn[];
  /** Trim chosen for many openings, by name. */
  trim_specs?: Record<string, TrimIn>;
  /** The unit of lengths written without one, here and in the openings. */
  unit?: Unit | null;
}

/** A schedule in a list. */
export interface ScheduleLine {
  id: string;
  name: string;
  /** The number of its latest revision. */
  revision: number;
  /** How many openings it has; alike ones under one mark are one. */
  opening_count: number;
  /** RFC 3339, in UTC. */
  created_at: string;
  /** RFC 3339, in UTC. */
  updated_at: string;
  /** When it was archived; null when it is not. */
  archived_at: string | null;
}

/** A schedule as it stands, its openings aside. */
export interface ScheduleOut {
  id: string;
  /** The number of its latest revision. */
  revision: number;
  /** How many openings it has; alike ones under one mark are one. */
  opening_count: number;
  /** RFC 3339, in UTC. */
  created_at: string;
  /** RFC 3339, in UTC. */
  updated_at: string;
  /** When it was archived; null when it is not. */
  archived_at: string | null;
  /** What is said of the house as a whole, as it was sent. */
  house: HouseIn;
  /** Every length exactly, by its JSON pointer, as a fraction of an inch. */
  exact: Record<string, string>;
}

/** The piece in one set of conditions. `change` is of its width, negative where it shrank; `gap` is the mitre's opening at its open end, `opens_at` the short or the long point, empty where nothing moved. */
export interface SeasonOut {
  /** The conditions, as they were named. */
  name: string;
  /** What the wood comes to in them, in percent. */
  moisture_content: number;
  change: string;
  /** By how much the joint opens. */
  opens_degrees: number;
  gap: string;
  opens_at: string;
  /** Whether the moisture contents lie where the coefficients hold. */
  within_table: boolean;
}

/** A part of the shop's answer. */
export type Section = "cost" | "hours" | "materials" | "saw_order";

/** How a tool is set. `mitre_degrees` is the table's turn towards `swing`, `bevel_degrees` the blade's tilt towards `tilt`, both to the step of the saw's scale. `stop` is blade to stop block, null for a cut to a mark or to the piece's corner; `fence` is rip fence to blade, and a tapered rip has its widths at the left and right end as the piece lies; the notch is gauged `notch_depth` from the back edge and `notch_length` from the end, `notch_end_depth` at the horn's end where that is another. */
export interface SettingOut {
  tool: Tool | (string & {});
  swing: Hand | (string & {}) | null;
  mitre_degrees: number;
  tilt: Hand | (string & {}) | null;
  bevel_degrees: number;
  stop: LengthOut | null;
  fence: LengthOut | null;
  taper: LengthOut[] | null;
  notch_depth: LengthOut | null;
  notch_length: LengthOut | null;
  notch_end_depth: LengthOut | null;
}

/** A tool set once, and how many operations are made so. */
export interface SetupOut {
  number: number;
  setting: SettingOut;
  operations: number;
}

/** One opening's part of a quantity, all of its count together. */
export interface ShareOut {
  opening: string;
  quantity: number;
}

/** A sheet's contents as data, for a page of one's own; drawings are in the HTML and the PDF alone. */
export interface SheetOut {
  /** What the sheet is. */
  name: string;
  /** At its head. */
  title: string;
  /** Whose house it is. */
  job: string;
  /** Every table, in order. */
  tables: TableOut[];
  /** Cautions and notes, in order. */
  notes: string[];
  /** Each label's texts, on a sheet of labels. */
  labels: string[][];
}

/** How the shop works. A material named in `packages` is bought in these alone, up to four of each. `build_year` is the house's: paint of before 1978, or of unknown age, may hold lead. */
export interface ShopIn {
  build_year?: number | null;
  packages?: PackageIn[];
  rates?: RatesIn;
  saw?: SawIn;
  /** What an hour of work costs. */
  wages?: WagesIn | null;
}

/** What is done under a stool on a sill out of level: shims, or one tapered strip. */
export type SillAnswer = "shim" | "tapered_strip";

/** A sill out of level: the end that lies low, and by how much over the jamb's width. */
export interface SillIn {
  low: Hand;
  by: LengthText;
}

/** The wood, by its common name. */
export type Species = "basswood" | "beech" | "black_cherry" | "black_walnut" | "douglas_fir" | "eastern_white_pine" | "mdf" | "ponderosa_pine" | "red_alder" | "red_maple" | "red_oak" | "sugar_maple" | "white_ash" | "white_oak" | "yellow_birch" | "yellow_poplar";

/** How a figure was computed: the rule in words and the readings it used, exact. */
export interface StepOut {
  /** What it is of, as `length`. */
  figure: string;
  /** The rule in words. */
  rule: string;
  /** Each reading or choice by its name, exact. */
  inputs: Record<string, string>;
}

/** A length the yard sells, its price, and how many there are where that is limited. */
export interface StickIn {
  length: LengthText;
  /** An amount of money as decimal text, at most two places. */
  price: string;
  /** How many the yard has; as many as are needed when left out. */
  available?: number | null;
  /** Stretches no piece may touch, on each of them. */
  defects?: DefectIn[];
}

/** One stick as it is cut. `offcut` is what remains; `kept` says whether it goes back on the rack. */
export interface StickOut {
  /** Its number in the plan, counted from 1. */
  number: number;
  length: LengthOut;
  /** Whether it is a remnant on hand and not one to buy. */
  remnant: boolean;
  price: string;
  /** From its left end to its right. */
  pieces: PlacedOut[];
  offcut: LengthOut;
  kept: boolean;
}

/** Sticks of the schedule's cut list that were cut just as it has them. */
export interface SticksIn {
  /** Whose sticks. A name on one line, not starting with a space. */
  profile: string;
  /** Their numbers in the cut list. */
  sticks: number[];
}

/** One profile's sticks at the yard. `turnable` stock is flat and square-edged, so mitred ends may share a cut. */
export interface StockForSaleIn {
  /** The profile's name, as the trim specs have it. A name on one line, not starting with a space. */
  profile: string;
  /** The lengths to be had. */
  sticks: StickIn[];
  /** Whether it is flat, square-edged stock. */
  turnable?: boolean;
}

/** One profile's stock. `turnable` stock is flat and square-edged, so mitred ends may share a cut. `one_stick_each` asks that each opening's pieces come side by side from one stick, so that their grain and colour agree; those no stick can hold are named in the plan's `split_openings`. Openings alike under one mark count as one: give each its own mark where each is to have its own stick. */
export interface StockIn {
  /** Its name, as the trim's pieces name theirs. A name on one line, not starting with a space. */
  profile: string;
  /** The lengths the yard sells. */
  sticks: StickIn[];
  one_stick_each?: boolean;
  /** What is on hand already. */
  remnants?: RemnantIn[];
  turnable?: boolean;
}

/** A horn's end: cut square, square with its edges eased, or its nosing returned to the wall. */
export type StoolEnds = "eased" | "mitred_return" | "square";

/** A stool: the horn runs past the trim's outside edge, the nosing past the apron's face. `sash_clearance` is left open between its back edge and the sash; `stock_width` is the width before ripping. `ease` is the radius of eased ends; `scribe` is left on each horn's wall edge, to be scribed to the wall. */
export interface StoolIn {
  thickness: LengthText;
  horn: LengthText;
  nosing: LengthText;
  ease?: LengthText;
  ends?: StoolEnds;
  profile?: string;
  sash_clearance?: LengthText;
  scribe?: LengthText;
  stock_width?: LengthText | null;
}

/** A stool's readings and choices. Give `jamb_depth`, or `left_depth` and `right_depth` where they differ. */
export interface StoolRequest {
  jamb_width: LengthText;
  reveal: LengthText;
  casing_width: LengthText;
  horn: LengthText;
  nosing: LengthText;
  apron_thickness: LengthText;
  jamb_depth?: LengthText | null;
  left_depth?: LengthText | null;
  profile?: string;
  right_depth?: LengthText | null;
  rounding?: RoundingIn;
  sash_clearance?: LengthText;
  thickness?: LengthText;
  /** The unit of lengths that are written without one; without it each must carry its own. */
  unit?: Unit | null;
}

/** A door's stop: its width across its face, its thickness off the jamb. */
export interface StopIn {
  width: LengthText;
  thickness: LengthText;
  corners?: BoxCorners;
  profile?: string;
}

/** The ends of a fillet or a cap over a butted head. */
export type StripEnds = "mitred_return" | "square";

/** A reading that alone could explain the disagreement: what it would be, and by how much it would change. */
export interface SuspectOut {
  reading: string;
  measured: string;
  would_be: string;
  change: string;
  why: string;
}

/** One table of a sheet. */
export interface TableOut {
  /** Its name, which `table` asks for in a CSV answer. */
  key: string;
  /** Its title. */
  caption: string;
  /** Headings from left to right. */
  columns: string[];
  /** The cells, as they are printed. */
  rows: string[][];
}

/** A reading that the shape did not need, against what the others make of it; `difference` is measured less computed. */
export interface TapeCheckOut {
  reading: string;
  measured: string;
  computed: string;
  difference: string;
  agrees: boolean;
}

/** Rip widths at a part's two ends as it lies on the saw. */
export interface TaperOut {
  left: LengthOut;
  right: LengthOut;
}

/** What hands-on time goes to. */
export type Task = "caulk" | "cut" | "fill" | "final_coat" | "fit" | "measure" | "nail" | "paint" | "rip" | "rout" | "set_up";

/** What a cut is made with. */
export type Tool = "hand_saw" | "mitre_saw" | "table_saw";

/** The trim chosen for one opening or for many. `casing` is that of the legs, and of head and sill unless they have their own; null leaves the opening uncased, the wall returning to the jamb. `reveal` is the jamb left showing; `overhang` is how far a butted head runs past the legs' outside edges; `floor_clearance` is left under a door's legs. A `fillet` and a `cap` go with a butted head, a `corner_block` with a head of corner blocks, a `back_band` with a mitred one. `mull_casing` covers the joints between units. */
export interface TrimIn {
  casing: CasingIn | null;
  reveal: LengthText;
  /** Null for none. */
  apron?: ApronIn | null;
  back_band?: BackBandIn | null;
  cap?: HeadStripIn | null;
  corner_block?: CornerBlockIn | null;
  /** Boards that bring the jamb out to the wall. */
  extension?: ExtensionIn | null;
  fillet?: HeadStripIn | null;
  floor_clearance?: LengthText;
  /** The head's own, where it is not that of the legs. */
  head_casing?: CasingIn | null;
  head_style?: HeadStyle;
  mull_casing?: CasingIn | null;
  overhang?: LengthText;
  /** Blocks under a door's legs. */
  plinth?: PlinthIn | null;
  /** A picture frame's sill's own, where it is not that of the legs. */
  sill_casing?: CasingIn | null;
  /** Null for none. */
  stool?: StoolIn | null;
  /** A door's stop, for a door to be hung. */
  stop?: StopIn | null;
}

/** A unit of length, named as it is written after a number. */
export type Unit = "cm" | "ft" | "in" | "m" | "mm";

/** A material or a task that no price was given for: it costs nothing here. */
export interface UnpricedOut {
  /** consumable for a material, labour for a task. */
  category: string;
  /** The material's code, or the task. */
  name: string;
}

/** What an hour of hands-on work costs: `hour`, and `tasks` that cost otherwise. Without either, labour has its hours and no money. */
export interface WagesIn {
  hour?: string | null;
  tasks?: Record<string, string>;
}

/** A drying wait, the whole job's together. */
export interface WaitOut {
  /** What has to dry. */
  after: string;
  hours: number;
  /** The rate it is taken from. */
  rate: string;
}

/** What is done where the wall does not lie flush: nothing that changes a size, casing that leans on it, or a jamb extension. */
export type WallAnswer = "extend" | "flat" | "lean";

/** How far the wall may lie off the jamb's edge: up to `caulk` it is caulked, up to `plane` planed or the casing back-bevelled; beyond, the jamb is extended. The defaults are common practice. */
export interface WallLimitsIn {
  caulk?: LengthText;
  plane?: LengthText;
}

/** Widths that pieces are ripped to at this opening. */
export interface WidthsIn {
  apron?: LengthText | null;
  head?: LengthText | null;
  left?: LengthText | null;
  right?: LengthText | null;
  sill?: LengthText | null;
}

/** Work that was done: pieces cut, fitted or spoiled, and what came onto the rack and off it. */
export interface WorkIn {
  /** Lengths put on the rack. */
  offcuts?: OffcutIn[];
  /** What was done with each piece. */
  pieces?: PieceIn[];
  /** Ids of the lengths taken off it. */
  used_offcuts?: string[];
}

/** Work that was recorded. */
export interface WorkMade {
  /** The schedule's revision it made. */
  revision: number;
  /** Every piece it touched, as it now is; those cut again from are gone. */
  pieces: PieceStored[];
  /** Ids of the lengths it put on the rack. */
  offcuts: string[];
}

/** A piece that was cut and is not what its place needs any more. */
export interface WrongPiece {
  /** As it was cut. */
  piece: PieceStored;
  /** What its place needs now; null when the house has no such place any more. */
  needed: Place | null;
  /** What it can be cut again into; null when it does for nothing that is still needed. */
  recut_into: Place | null;
}

/** Every operation, by its id: where it is, what it takes and what it gives. */
export interface Operations {
  /** Work out a house's cut list */
  compute_cut_list: {
    method: "POST";
    path: "/v1/cut-list";
    query: { "paper"?: "letter" | "a4"; "title"?: string; "feet"?: boolean; "table"?: string };
    request: CutListRequest;
    response: CutListOut;
  };
  /** Work out a house's materials */
  compute_materials: {
    method: "POST";
    path: "/v1/materials";
    request: MaterialsRequest;
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
    response: ScheduleIn;
  };
  /** Import openings */
  import_openings: {
    method: "POST";
    path: "/v1/schedules/{schedule_id}/import";
    parameters: { "schedule_id": string };
    query: { "existing"?: "refuse" | "update" | "replace"; "dry_run"?: boolean; "why"?: string };
    header: { "If-Match"?: string; "Idempotency-Key"?: string };
    request: ImportIn;
    response: ImportOut;
  };
  /** Read lengths */
  read_lengths: {
    method: "POST";
    path: "/v1/lengths";
    request: LengthsIn;
    response: LengthsOut;
  };
  /** Work out an apron */
  compute_apron: {
    method: "POST";
    path: "/v1/apron";
    request: ApronRequest;
    response: PartsOut;
  };
  /** Work out casing */
  compute_casing: {
    method: "POST";
    path: "/v1/casing";
    request: CasingRequest;
    response: PartsOut;
  };
  /** Work out corners out of square */
  compute_corners: {
    method: "POST";
    path: "/v1/corners";
    request: CornersRequest;
    response: CornersOut;
  };
  /** Work out how wood moves */
  compute_movement: {
    method: "POST";
    path: "/v1/movement";
    request: MovementRequest;
    response: MovementOut;
  };
  /** Work out one opening */
  compute_opening: {
    method: "POST";
    path: "/v1/opening";
    query: { "drawing"?: "elevation" | "section" | "piece"; "piece"?: string; "feet"?: boolean };
    request: OpeningRequest;
    response: OpeningOut;
  };
  /** Work out a stool */
  compute_stool: {
    method: "POST";
    path: "/v1/stool";
    request: StoolRequest;
    response: PartsOut;
  };
  /** List openings */
  list_openings: {
    method: "GET";
    path: "/v1/schedules/{schedule_id}/openings";
    parameters: { "schedule_id": string };
    query: { "limit"?: number; "cursor"?: string; "room"?: string; "trim"?: string; "foot_style"?: Foot };
    header: { "If-None-Match"?: string };
    response: Page<OpeningStored>;
  };
  /** Add an opening */
  add_opening: {
    method: "POST";
    path: "/v1/schedules/{schedule_id}/openings";
    parameters: { "schedule_id": string };
    query: { "why"?: string };
    header: { "If-Match"?: string; "Idempotency-Key"?: string };
    request: OpeningIn;
    response: OpeningStored;
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
    response: OpeningStored;
  };
  /** Measure an opening again */
  replace_opening: {
    method: "PUT";
    path: "/v1/schedules/{schedule_id}/openings/{opening}";
    parameters: { "schedule_id": string; "opening": string };
    query: { "why"?: string };
    header: { "If-Match": string };
    request: OpeningIn;
    response: OpeningStored;
  };
  /** List what is on the rack */
  list_offcuts: {
    method: "GET";
    path: "/v1/schedules/{schedule_id}/offcuts";
    parameters: { "schedule_id": string };
    query: { "limit"?: number; "cursor"?: string; "profile"?: string };
    response: Page<OffcutStored>;
  };
  /** Put a length on the rack */
  add_offcut: {
    method: "POST";
    path: "/v1/schedules/{schedule_id}/offcuts";
    parameters: { "schedule_id": string };
    query: { "why"?: string };
    header: { "If-Match"?: string; "Idempotency-Key"?: string };
    request: OffcutIn;
    response: OffcutStored;
  };
  /** Take a length off the rack */
  remove_offcut: {
    method: "DELETE";
    path: "/v1/schedules/{schedule_id}/offcuts/{offcut_id}";
    parameters: { "schedule_id": string; "offcut_id": string };
    query: { "why"?: string };
    header: { "If-Match": string };
    response: Made;
  };
  /** Read an offcut */
  get_offcut: {
    method: "GET";
    path: "/v1/schedules/{schedule_id}/offcuts/{offcut_id}";
    parameters: { "schedule_id": string; "offcut_id": string };
    header: { "If-None-Match"?: string };
    response: OffcutStored;
  };
  /** Compare two revisions */
  compare_revisions: {
    method: "GET";
    path: "/v1/schedules/{schedule_id}/changes";
    parameters: { "schedule_id": string };
    query: { "from": number; "to"?: number };
    header: { "If-None-Match"?: string };
    response: ChangesOut;
  };
  /** Go back to a revision */
  restore_revision: {
    method: "POST";
    path: "/v1/schedules/{schedule_id}/restore";
    parameters: { "schedule_id": string };
    query: { "why"?: string };
    header: { "If-Match": string; "Idempotency-Key"?: string };
    request: RestoreIn;
    response: ScheduleOut;
  };
  /** List revisions */
  list_revisions: {
    method: "GET";
    path: "/v1/schedules/{schedule_id}/revisions";
    parameters: { "schedule_id": string };
    query: { "limit"?: number; "cursor"?: string };
    response: Page<RevisionOut>;
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
    request: ScheduleIn;
    response: ScheduleOut;
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
    response: ScheduleOut;
  };
  /** Change what is said of the house */
  replace_schedule: {
    method: "PUT";
    path: "/v1/schedules/{schedule_id}";
    parameters: { "schedule_id": string };
    query: { "why"?: string };
    header: { "If-Match": string };
    request: HouseIn;
    response: ScheduleOut;
  };
  /** Put a schedule away */
  archive_schedule: {
    method: "POST";
    path: "/v1/schedules/{schedule_id}/archive";
    parameters: { "schedule_id": string };
    query: { "why"?: string };
    header: { "If-Match": string; "Idempotency-Key"?: string };
    response: ScheduleOut;
  };
  /** Take a schedule out of the archive */
  unarchive_schedule: {
    method: "POST";
    path: "/v1/schedules/{schedule_id}/unarchive";
    parameters: { "schedule_id": string };
    query: { "why"?: string };
    header: { "If-Match": string; "Idempotency-Key"?: string };
    response: ScheduleOut;
  };
  /** Get a blank measure sheet */
  get_blank_measure_sheet: {
    method: "GET";
    path: "/v1/sheets/blank-measure-sheet";
    query: { "paper"?: "letter" | "a4"; "title"?: string; "feet"?: boolean; "table"?: string };
    header: { "If-None-Match"?: string };
    response: SheetOut;
  };
  /** Make the cost sheet */
  make_cost_sheet: {
    method: "POST";
    path: "/v1/sheets/cost-sheet";
    query: { "paper"?: "letter" | "a4"; "title"?: string; "feet"?: boolean; "table"?: string };
    request: CutListRequest;
    response: SheetOut;
  };
  /** Make the fitting sheet */
  make_fitting_sheet: {
    method: "POST";
    path: "/v1/sheets/fitting-sheet";
    query: { "paper"?: "letter" | "a4"; "title"?: string; "feet"?: boolean; "table"?: string };
    request: CutListRequest;
    response: SheetOut;
  };
  /** Make the measure sheet */
  make_measure_sheet: {
    method: "POST";
    path: "/v1/sheets/measure-sheet";
    query: { "paper"?: "letter" | "a4"; "title"?: string; "feet"?: boolean; "table"?: string };
    request: CutListRequest;
    response: SheetOut;
  };
  /** Make the piece labels */
  make_piece_labels: {
    method: "POST";
    path: "/v1/sheets/piece-labels";
    query: { "paper"?: "letter" | "a4"; "title"?: string; "feet"?: boolean; "table"?: string };
    request: LabelsRequest;
    response: SheetOut;
  };
  /** Make the saw sheet */
  make_saw_sheet: {
    method: "POST";
    path: "/v1/sheets/saw-sheet";
    query: { "paper"?: "letter" | "a4"; "title"?: string; "feet"?: boolean; "table"?: string };
    request: CutListRequest;
    response: SheetOut;
  };
  /** Make the yard list */
  make_yard_list: {
    method: "POST";
    path: "/v1/sheets/yard-list";
    query: { "paper"?: "letter" | "a4"; "title"?: string; "feet"?: boolean; "table"?: string };
    request: CutListRequest;
    response: SheetOut;
  };
  /** Work out what is still to be cut */
  compute_schedule_cut_list: {
    method: "GET";
    path: "/v1/schedules/{schedule_id}/cut-list";
    parameters: { "schedule_id": string };
    query: { "include"?: Section[] };
    header: { "If-None-Match"?: string };
    response: ScheduleCutListOut;
  };
  /** Record sticks cut as the cut list has them */
  cut_sticks: {
    method: "POST";
    path: "/v1/schedules/{schedule_id}/cut-sticks";
    parameters: { "schedule_id": string };
    query: { "why"?: string };
    header: { "If-Match": string; "Idempotency-Key"?: string };
    request: SticksIn;
    response: WorkMade;
  };
  /** Draw the sticks to scale */
  get_sticks_drawing: {
    method: "GET";
    path: "/v1/schedules/{schedule_id}/drawings/sticks";
    parameters: { "schedule_id": string };
    query: { "feet"?: boolean };
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
    parameters: { "schedule_id": string; "sheet": "cut-list" | "fitting-sheet" | "saw-sheet" | "yard-list" | "cost-sheet" | "measure-sheet" | "piece-labels" };
    query: { "paper"?: "letter" | "a4"; "title"?: string; "feet"?: boolean; "table"?: string; "format"?: "html" | "pdf" | "csv" | "json"; "skip"?: number };
    header: { "If-None-Match"?: string };
    response: SheetOut;
  };
  /** List pieces that were cut */
  list_pieces: {
    method: "GET";
    path: "/v1/schedules/{schedule_id}/work";
    parameters: { "schedule_id": string };
    query: { "limit"?: number; "cursor"?: string; "opening"?: string; "state"?: PieceState };
    response: Page<PieceStored>;
  };
  /** Record what was cut, fitted or spoiled */
  record_work: {
    method: "POST";
    path: "/v1/schedules/{schedule_id}/work";
    parameters: { "schedule_id": string };
    query: { "why"?: string };
    header: { "If-Match"?: string; "Idempotency-Key"?: string };
    request: WorkIn;
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
    response: PieceStored;
  };
}
