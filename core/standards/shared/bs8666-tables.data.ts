import type { Cited, PrintedTable } from "../citation";
import type { Grade, ToleranceRow } from "../port";
import type { EndLegRow, FormerRow, HookRow, PrintedBar, RadiusRow } from "./standard-tables";

/** Preferred sizes 8 to 40; 6 and 50 are non-preferred. */
export const BARS: PrintedTable<PrintedBar> = {
  cite: {
    document: "BS 4449 bars",
    clause: "UK three-decimal table",
    provenance: "published",
    seen: "midlandrapid.co.uk/bs-8666-2005-standard-shapes; midlandsteelsupplies.ie/reinforcement-bars.html",
  },
  rows: [
    { size: "6", diameter: 6, area: 28.3, massPerMetre: 0.222 },
    { size: "8", diameter: 8, area: 50.3, massPerMetre: 0.395 },
    {
      size: "10",
      diameter: 10,
      area: 78.5,
      massPerMetre: 0.616,
      conflict:
        "EN 10080 tables print 0.617; this is 0.00785 x the area printed to 0.1 mm2, as UK schedules use it",
    },
    { size: "12", diameter: 12, area: 113.1, massPerMetre: 0.888 },
    {
      size: "16",
      diameter: 16,
      area: 201.1,
      massPerMetre: 1.579,
      conflict: "EN 10080 tables print 1.58; this is 0.00785 x the area printed to 0.1 mm2",
    },
    { size: "20", diameter: 20, area: 314.2, massPerMetre: 2.466 },
    {
      size: "25",
      diameter: 25,
      area: 490.9,
      massPerMetre: 3.854,
      conflict: "EN 10080 tables print 3.85; this is 0.00785 x the area printed to 0.1 mm2",
    },
    { size: "32", diameter: 32, area: 804.2, massPerMetre: 6.313 },
    {
      size: "40",
      diameter: 40,
      area: 1256.6,
      massPerMetre: 9.864,
      conflict: "EN 10080 tables print 9.86; this is 0.00785 x the area printed to 0.1 mm2",
    },
    { size: "50", diameter: 50, area: 1963.5, massPerMetre: 15.413 },
  ],
};

/** The former M of Table 2. */
export const FORMER_ROWS: readonly FormerRow[] = [
  { diameter: 6, former: 24 },
  { diameter: 8, former: 32 },
  { diameter: 10, former: 40 },
  { diameter: 12, former: 48 },
  { diameter: 16, former: 64 },
  { diameter: 20, former: 140 },
  { diameter: 25, former: 175 },
  { diameter: 32, former: 224 },
  { diameter: 40, former: 280 },
  { diameter: 50, former: 350 },
];

/** Diameters that Table 2 does not print. */
export const FORMER_RULE_ROWS: readonly FormerRow[] = [{ upTo: 16, perDiameter: 4 }, { perDiameter: 7 }];

/** The r of the formulas. */
export const RADIUS_ROWS: readonly RadiusRow[] = [
  { diameter: 6, radius: 12 },
  { diameter: 8, radius: 16 },
  { diameter: 10, radius: 20 },
  { diameter: 12, radius: 24 },
  { diameter: 16, radius: 32 },
  { diameter: 20, radius: 70 },
  {
    diameter: 25,
    radius: 87,
    conflict: "r is printed 87 beside M 175: 87 stands in the formulas, 175 is the former",
  },
  { diameter: 32, radius: 112 },
  { diameter: 40, radius: 140 },
  { diameter: 50, radius: 175 },
];

/** P: general with 5d of straight at least; links bent less than 150 degrees with 10d. Up to 12 mm practicality governs. */
export const END_LEG_ROWS: readonly EndLegRow[] = [
  { uses: ["main"], diameter: 6, outside: 110, straightPerDiameter: 5 },
  { uses: ["link"], diameter: 6, outside: 110, straightPerDiameter: 10 },
  { uses: ["main"], diameter: 8, outside: 115, straightPerDiameter: 5 },
  { uses: ["link"], diameter: 8, outside: 115, straightPerDiameter: 10 },
  { uses: ["main"], diameter: 10, outside: 120, straightPerDiameter: 5 },
  { uses: ["link"], diameter: 10, outside: 130, straightPerDiameter: 10 },
  { uses: ["main"], diameter: 12, outside: 125, straightPerDiameter: 5 },
  { uses: ["link"], diameter: 12, outside: 160, straightPerDiameter: 10 },
  { uses: ["main"], diameter: 16, outside: 130, straightPerDiameter: 5 },
  { uses: ["link"], diameter: 16, outside: 210, straightPerDiameter: 10 },
  { uses: ["main"], diameter: 20, outside: 190, straightPerDiameter: 5 },
  { uses: ["link"], diameter: 20, outside: 290, straightPerDiameter: 10 },
  { uses: ["main"], diameter: 25, outside: 240, straightPerDiameter: 5 },
  { uses: ["link"], diameter: 25, outside: 365, straightPerDiameter: 10 },
  { uses: ["main"], diameter: 32, outside: 305, straightPerDiameter: 5 },
  { uses: ["link"], diameter: 32, outside: 465, straightPerDiameter: 10 },
  { uses: ["main"], diameter: 40, outside: 380, straightPerDiameter: 5 },
  { uses: ["link"], diameter: 40, outside: 580, straightPerDiameter: 10 },
  { uses: ["main"], diameter: 50, outside: 475, straightPerDiameter: 5 },
  { uses: ["link"], diameter: 50, outside: 725, straightPerDiameter: 10 },
];

/** mm: up to this size P is governed by the practicality of bending. */
export const PRACTICAL_UP_TO = 12;

/** Diameters that Table 2 does not print. */
export const END_LEG_RULE_ROWS: readonly EndLegRow[] = [
  { uses: ["main"], straightPerDiameter: 5, roundedUpTo: 5 },
  { uses: ["link"], straightPerDiameter: 10, roundedUpTo: 5 },
];

/** An end hook reaches P; a link hook of 150 degrees or more takes the general column. */
export const HOOK_ROWS: readonly HookRow[] = [
  { uses: ["link"], turns: [90, 135], extensionPerDiameter: 10, endLegOf: "link" },
  { turns: [90, 135, 180], extensionPerDiameter: 5, endLegOf: "main" },
];

/** Printed in metres. Above it a bar is supplied straight. No entry for 50 mm. */
export const SUPPLY_RADIUS_ROWS: readonly RadiusRow[] = [
  { diameter: 6, radius: 2500 },
  { diameter: 8, radius: 2750 },
  { diameter: 10, radius: 3500 },
  { diameter: 12, radius: 4250 },
  { diameter: 16, radius: 7500 },
  { diameter: 20, radius: 14000 },
  { diameter: 25, radius: 30000 },
  { diameter: 32, radius: 43000 },
  { diameter: 40, radius: 58000 },
];

export const TOLERANCE_ROWS: readonly ToleranceRow[] = [
  { applies: "cut length", upTo: Infinity, plus: 25, minus: 25 },
  { applies: "bent dimension", upTo: 1000, plus: 5, minus: 5 },
  { applies: "bent dimension", upTo: 2000, plus: 5, minus: 10 },
  { applies: "bent dimension", upTo: Infinity, plus: 5, minus: 25 },
];

export const COLD_BENDING: Cited<number> = {
  value: -5,
  cite: {
    document: "EN 13670",
    clause: "6.3",
    provenance: "published",
    seen: "concrete.org.uk fingertips-document id=1057",
    conflict:
      "the withdrawn BS 8110-1 said +5 C; EN 13670 takes precedence, and BS 8666 itself names no temperature",
  },
};

export const REBENDING: Cited<string> = {
  value: "only where the execution specification allows it",
  cite: { document: "EN 13670", clause: "6.3", provenance: "memory" },
};

const OLD_LETTERS: Grade["cite"] = {
  document: "BS 4449 and BS 4466",
  clause: "type letters before 2005",
  provenance: "memory",
};

/** The letter of each steel of Table 1, without its source. */
export const TYPE_LETTERS: readonly Omit<Grade, "cite">[] = [
  { name: "B500A, B or C", prefixes: ["H"], yield: 500 },
  {
    name: "B500A",
    prefixes: ["A"],
    yield: 500,
    madeUpTo: {
      value: 12,
      cite: { document: "BS 4449", edition: "2005", clause: "B500A to 12 mm", provenance: "memory" },
    },
  },
  { name: "B500B or C", prefixes: ["B"], yield: 500 },
  { name: "B500C", prefixes: ["C"], yield: 500 },
  { name: "ribbed stainless", prefixes: ["S"], yield: 500 },
  { name: "as specified", prefixes: ["X"], yield: 0 },
];

export const OLD_GRADES: readonly Grade[] = [
  {
    name: "plain 250",
    prefixes: ["R"],
    yield: 250,
    plain: true,
    superseded: "plain round 250, no longer referenced since 2005: ask the designer which bar is meant",
    cite: OLD_LETTERS,
  },
  {
    name: "high yield 460",
    prefixes: ["T", "Y"],
    yield: 460,
    superseded: "high yield of the editions before 2005: today H, with the designer's leave",
    cite: OLD_LETTERS,
  },
];

/** Single figures of the tables and notes: mm, but the straight in diameters and bends in number. */
export const SINGLE_FIGURES = {
  lengthStep: 25,
  dimensionStep: 5,
  straightBetweenBends: 4,
  manyBends: 5,
  transportWidth: 2750,
  stockLength: 12000,
  largestCurveFormer: 400,
} as const;
