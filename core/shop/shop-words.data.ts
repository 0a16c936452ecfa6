/** Heads of the Shop sheet's columns, the word written by us first; others are read as the same. */
export const SHOP_COLUMNS = {
  machine: ["machine", "bender", "cutter", "shear"],
  orbitRadius: ["orbit radius mm", "orbit radius", "pin orbit"],
  backRestDistance: ["back-rest distance mm", "back-rest distance", "backrest distance"],
  pins: ["pins mm", "pins", "pin diameter", "pin diameters"],
  formers: ["formers in the rack mm", "formers in the rack", "formers", "mandrels"],
  largestAngle: ["largest angle", "largest angle deg", "greatest angle"],
  guardRadius: ["guard radius mm", "guard radius"],
  work: ["work", "bends or cuts"],
  size: ["size", "bar size", "type and size"],
  yield: ["grade mpa", "grade", "yield mpa", "yield"],
  bars: ["bars at once", "bars"],
  kerf: ["kerf mm", "kerf"],
  endCrop: ["end crop mm", "end crop"],
  stockLength: ["stock length mm", "stock length", "stock"],
  count: ["bars held", "held", "count"],
  kind: ["kind"],
  heat: ["heat", "heat no", "heat number", "cast", "cast no", "certificate", "mill certificate"],
  limit: ["limit"],
  value: ["value"],
  supply: ["supply per tonne", "supply", "steel per tonne", "material per tonne"],
  cutting: ["cut per tonne", "cutting per tonne"],
  bending: ["bend per tonne", "bending per tonne"],
  fixing: ["fix per tonne", "fixing per tonne"],
  hours: ["hours per tonne"],
  bendHours: ["hours per 100 bends", "hours per hundred bends"],
  waste: ["waste %", "waste", "waste per cent"],
  pour: ["pour", "pour no", "pour number"],
  date: ["date", "pour date", "poured on", "day"],
  bentTo: ["bent to", "bent to deg"],
  released: ["released", "released deg", "comes back to"],
} as const;

/** Names of the rows under `limit`. */
export const SHOP_LIMITS = {
  hoist: ["hoist or crane kg", "hoist", "crane", "lifting limit"],
  handLift: ["lift by hand kg", "lift by hand", "hand lift"],
  transportWidth: ["transport width mm", "transport width"],
  lorryLoad: ["lorry load kg", "lorry load", "load of a lorry"],
  lorryLength: ["lorry length mm", "lorry length", "longest load"],
  leastRemnant: ["least remnant mm", "least remnant", "shortest remnant"],
  temperature: ["temperature c", "temperature", "shop temperature"],
} as const;

/** Sections in the order in which a new Shop sheet has them: a title, its columns, what each holds. */
export const SHOP_SECTIONS = [
  {
    title: "Benders, one a row. Leave blank what is not known: then the answer is unsure, not a pass.",
    columns: ["machine", "largestAngle", "guardRadius", "orbitRadius", "backRestDistance", "pins", "formers"],
    blankRows: 3,
  },
  {
    title: "What each machine's plate allows at once. The plate and the manual govern.",
    columns: ["machine", "work", "size", "yield", "bars"],
    blankRows: 8,
  },
  {
    title: "Cutters: kerf 0 for a shear",
    columns: ["machine", "kerf", "endCrop"],
    blankRows: 2,
  },
  {
    title:
      "Stock lengths; size blank serves every size, bars held blank is as many as needed, kind: stock or remnant, heat: number of the mill's certificate",
    columns: ["size", "stockLength", "count", "kind", "heat"],
    blankRows: 16,
  },
  {
    title: "Pours and the day of each, 2030-05-31: loads are made up by day",
    columns: ["pour", "date"],
    blankRows: 4,
  },
  {
    title:
      "Rates, in your own currency; the first row whose sizes fit counts. Sizes: 16, 10 to 16, up to 12, over 25; blank is every size",
    columns: ["size", "supply", "cutting", "bending", "fixing", "hours", "bendHours", "waste"],
    blankRows: 4,
  },
] as const;

/** Words that alone in a row, or first in a sentence alone in it, are the title of a table. */
export const SHOP_TITLES = {
  alone: ["bender", "plate", "cutter", "shears", "stock", "rates", "prices", "trials", "machines", "pours"],
  first: [
    "benders",
    "bending machines",
    "plates",
    "what each machine",
    "cutters",
    "stock lengths",
    "stock held",
    "remnants",
    "pours and",
    "pour dates",
    "rates",
    "limits",
    "trial bends",
    "trial log",
  ],
} as const;

/** Word under `kind` for a rest on hand. */
export const SHOP_REMNANT = "remnant";

/** Title and columns of a list of remnants that is put under what the sheet holds already. */
export const SHOP_REMNANTS_TITLE = "Remnants on hand: rests of cut lists that went back to the rack";
export const SHOP_REMNANT_COLUMNS = ["size", "stockLength", "count", "kind"] as const;

/** Title over the limits, and over the trial log with its columns. */
export const SHOP_LIMITS_TITLE = "Limits of this yard";
export const SHOP_TRIALS_TITLE =
  "Trial bends: angles are bend angles, 0 is straight; measure the released bar against its straight legs";
export const SHOP_TRIAL_COLUMNS = [
  "date",
  "machine",
  "size",
  "former",
  "grade",
  "form",
  "heat",
  "bent to",
  "released",
] as const;
