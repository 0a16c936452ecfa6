import type { Citation, Cited, PrintedTable } from "../citation";
import type { Grade, LengthRounding, RebendingLimit } from "../port";
import type { EndLegRow, FormerRow, HookRow, PrintedBar } from "../shared/standard-tables";

export const BARS: PrintedTable<PrintedBar> = {
  cite: {
    document: "DIN 488-2",
    edition: "2009",
    clause: "bar table",
    provenance: "published",
    seen: "suelzle-stahlpartner.de Bewehrungsdraht",
  },
  rows: [
    { size: "6", diameter: 6, area: 28.3, massPerMetre: 0.222 },
    { size: "8", diameter: 8, area: 50.3, massPerMetre: 0.395 },
    { size: "10", diameter: 10, area: 78.5, massPerMetre: 0.617 },
    { size: "12", diameter: 12, area: 113, massPerMetre: 0.888 },
    { size: "14", diameter: 14, area: 154, massPerMetre: 1.21 },
    { size: "16", diameter: 16, area: 201, massPerMetre: 1.58 },
  ],
};

export const LARGE_BARS: PrintedTable<PrintedBar> = {
  cite: { document: "DIN 488-2", edition: "2009", clause: "bar table", provenance: "memory" },
  rows: [
    { size: "20", diameter: 20, area: 314, massPerMetre: 2.47 },
    { size: "25", diameter: 25, area: 491, massPerMetre: 3.85 },
    { size: "28", diameter: 28, area: 616, massPerMetre: 4.83 },
    { size: "32", diameter: 32, area: 804, massPerMetre: 6.31 },
    { size: "40", diameter: 40, area: 1257, massPerMetre: 9.86 },
  ],
};

/** Hooks, cogs, loops and links; then bent-up and other curved bars by the concrete beside the bend. */
export const FORMERS: PrintedTable<FormerRow> = {
  cite: {
    document: "DIN EN 1992-1-1/NA",
    edition: "2013",
    clause: "Table 8.1DE a); bent-up bars by side cover c: over 100 mm and 7d, over 50 mm and 3d, less",
    provenance: "published",
    seen: "Bautechnisches Pruefamt Tipp 16/02, de.scribd.com/document/536122161; de.scribd.com/document/616186858",
  },
  rows: [
    {
      uses: ["main", "link"],
      below: 20,
      perDiameter: 4,
      conflict:
        "7d begins at 20 mm here and above 16 mm in EN 1992-1-1 Table 8.1N: they differ for 18 mm only, and the national annex is held",
    },
    { uses: ["main", "link"], perDiameter: 7 },
    { uses: ["bent-up c>100"], perDiameter: 10 },
    { uses: ["bent-up c>50"], perDiameter: 15 },
    { uses: ["bent-up"], perDiameter: 20 },
  ],
};

/** Welded before bending, static load. Clear: the weld is 4d or more from the bend. */
export const WELDED_FORMERS: PrintedTable<FormerRow> = {
  cite: { document: "DIN EN 1992-1-1/NA", edition: "2013", clause: "Table 8.1DE b)", provenance: "memory" },
  rows: [
    { uses: ["welded clear"], below: 20, perDiameter: 4 },
    { uses: ["welded clear"], perDiameter: 7 },
    { uses: ["welded near"], perDiameter: 20 },
  ],
};

const ENDS: Citation = {
  document: "DIN EN 1992-1-1/NA",
  edition: "2013",
  clause: "Figures 8.1DE and 8.5DE",
  provenance: "memory",
};

export const END_LEGS: PrintedTable<EndLegRow> = {
  cite: ENDS,
  rows: [{ uses: ["link"], straightPerDiameter: 10, leastStraight: 70 }, { straightPerDiameter: 5 }],
};

export const HOOKS: PrintedTable<HookRow> = {
  cite: ENDS,
  rows: [
    { uses: ["link"], turns: [90], extensionPerDiameter: 10, leastExtension: 70 },
    { uses: ["link"], turns: [135, 180], extensionPerDiameter: 5, leastExtension: 50 },
    { turns: [90, 135, 180], extensionPerDiameter: 5 },
  ],
};

const STEEL: Citation = { document: "DIN 488-1", edition: "2009", provenance: "memory" };

export const GRADES: readonly Grade[] = [
  { name: "B500A", prefixes: ["A"], yield: 500, cite: STEEL },
  { name: "B500B", prefixes: ["B"], yield: 500, cite: STEEL },
];

export const LENGTH_ROUNDING: LengthRounding = {
  step: 5,
  direction: "up",
  cite: { document: "DIN EN 1992-1-1 prints no step", provenance: "common practice" },
};

export const COLD_BENDING: Cited<number> = {
  value: -5,
  cite: {
    document: "EN 13670",
    clause: "6.3",
    provenance: "published",
    seen: "concrete.org.uk fingertips-document id=1057",
  },
};

const REBENDING_SOURCE: Citation = {
  document: "Austrian practice sheet on bending",
  provenance: "published",
  seen: "zimmerer-treff.com biege.htm",
  conflict: "a sheet of the neighbouring country: the German annex's own rule was not read",
};

export const REBENDING: Cited<string> = {
  value:
    "bars over 12 mm are not bent back; up to 12 mm once, from at most 90 degrees, and then 80 % of the strength counts",
  cite: REBENDING_SOURCE,
};

export const REBENDING_LIMIT: Cited<RebendingLimit> = {
  value: { upTo: 12, grade: null },
  cite: REBENDING_SOURCE,
};

export const STOCK_LENGTH: Cited<number> = {
  value: 12000,
  cite: { document: "stock lengths in Germany: 12 and 14 m", provenance: "common practice" },
};
