import type { Citation, Cited, PrintedTable } from "../citation";
import type { Grade, LengthRounding, ToleranceRow } from "../port";
import type { EndLegRow, FormerRow, HookRow, PrintedBar } from "../shared/standard-tables";

/** Nominal masses, without the rolling margin of about 2.5 % that price lists add. */
export const BARS: PrintedTable<PrintedBar> = {
  cite: { document: "AS/NZS 4671", edition: "2019", clause: "deformed bars", provenance: "memory" },
  rows: [
    { size: "N10", diameter: 10, area: 78.5, massPerMetre: 0.617 },
    { size: "N12", diameter: 12, area: 113, massPerMetre: 0.888 },
    { size: "N16", diameter: 16, area: 201, massPerMetre: 1.58 },
    { size: "N20", diameter: 20, area: 314, massPerMetre: 2.47 },
    { size: "N24", diameter: 24, area: 452, massPerMetre: 3.55 },
    { size: "N28", diameter: 28, area: 616, massPerMetre: 4.83 },
    { size: "N32", diameter: 32, area: 804, massPerMetre: 6.31 },
    { size: "N36", diameter: 36, area: 1020, massPerMetre: 7.99 },
    { size: "N40", diameter: 40, area: 1260, massPerMetre: 9.86 },
  ],
};

/** Before or after bending. */
export const GALVANIZED_FORMERS: PrintedTable<FormerRow> = {
  cite: {
    document: "AS 3600",
    edition: "2018",
    clause: "17.2.3.2(c)",
    provenance: "published",
    seen: "designmanual.gaa.com.au, bending and welding of galvanized bar",
  },
  rows: [
    { coatings: ["galvanized"], upTo: 16, perDiameter: 5 },
    {
      coatings: ["galvanized"],
      perDiameter: 8,
      conflict:
        "8d from 20 mm in the code as recalled, over 16 mm in the manual: no Australian bar lies between",
    },
  ],
};

export const EPOXY_FORMERS: PrintedTable<FormerRow> = {
  cite: { document: "AS 3600", edition: "2018", clause: "17.2.3.2(c)", provenance: "memory" },
  rows: [
    { coatings: ["epoxy"], upTo: 16, perDiameter: 5 },
    { coatings: ["epoxy"], perDiameter: 8 },
  ],
};

/** Pin diameters. "rebend": the bend is meant to be straightened or bent again. */
export const FORMERS: PrintedTable<FormerRow> = {
  cite: { document: "AS 3600", edition: "2018", clause: "17.2.3.2", provenance: "memory" },
  rows: [
    { uses: ["link"], grades: ["D500L", "R250N"], perDiameter: 3 },
    { uses: ["link"], grades: ["D500N"], perDiameter: 4 },
    { uses: ["rebend"], upTo: 16, perDiameter: 4 },
    { uses: ["rebend"], upTo: 24, perDiameter: 5 },
    { uses: ["rebend"], perDiameter: 6 },
    { perDiameter: 5 },
  ],
};

/** The straight after a hook of 180 degrees. */
export const END_LEGS: PrintedTable<EndLegRow> = {
  cite: { document: "AS 3600", edition: "2018", clause: "13.1.2.7", provenance: "memory" },
  rows: [{ straightPerDiameter: 4, leastStraight: 70 }],
};

/** Hook 180; a hook of 135 and a cog of 90 have the same length of bar. The cog's pin is 8d at most. */
export const HOOKS: PrintedTable<HookRow> = {
  cite: { document: "AS 3600", edition: "2018", clause: "13.1.2.7", provenance: "memory" },
  rows: [
    { turns: [180], extensionPerDiameter: 4, leastExtension: 70 },
    { turns: [90, 135], extensionPerDiameter: 4, leastExtension: 70, lengthOfFullHook: true },
  ],
};

const STEEL: Citation = {
  document: "AS/NZS 4671",
  edition: "2019",
  provenance: "published",
  seen: "SRIA TN4, studylib.net/doc/26177969 (classes); the type letters are recalled",
};

export const GRADES: readonly Grade[] = [
  { name: "D500N", prefixes: ["N"], yield: 500, cite: STEEL },
  { name: "D500L", prefixes: ["L"], yield: 500, cite: STEEL },
  { name: "R250N", prefixes: ["R"], yield: 250, plain: true, cite: STEEL },
  {
    name: "400Y",
    prefixes: ["Y"],
    yield: 400,
    superseded: "400 MPa bar of drawings before about 2000: ask the designer whether N takes its place",
    cite: { document: "AS 1302", provenance: "memory" },
  },
];

export const GRADE_UNSAID = { main: "D500N", link: "D500N" };

export const LENGTH_ROUNDING: LengthRounding = {
  step: 5,
  direction: "up",
  cite: { document: "AS 3600 prints no step", provenance: "common practice" },
};

export const TOLERANCES: Cited<readonly ToleranceRow[]> = {
  value: [
    { applies: "bent dimension", upTo: 600, plus: 0, minus: 25 },
    { applies: "bent dimension", upTo: Infinity, plus: 0, minus: 40 },
    { applies: "link dimension", upTo: Infinity, plus: 0, minus: 15 },
    { applies: "link dimension, plain bar and wire", upTo: Infinity, plus: 0, minus: 10 },
    { applies: "offset of a cranked column bar", upTo: Infinity, plus: 10, minus: 0 },
  ],
  cite: { document: "AS 3600", edition: "2018", clause: "17.2.2", provenance: "memory" },
};

export const REBENDING: Cited<string> = {
  value:
    "pin 4d to 16 mm, 5d to 24 mm, 6d above; no second bend within 20d of an earlier one; hot only to 600 C without quenching, and above 450 C the design takes 250 MPa; a road agency forbids it above 24 mm",
  cite: {
    document: "AS 3600",
    edition: "2018",
    clause: "17.2.3",
    provenance: "memory",
    conflict:
      "the agency's limit of 24 mm was read (RMS B0013, paperzz.com/doc/8606701); the code's text is recalled",
  },
};

export const STOCK_LENGTH: Cited<number> = {
  value: 12000,
  cite: { document: "stock lengths in Australia: 6, 9 and 12 m", provenance: "common practice" },
};
