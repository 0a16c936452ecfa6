import type { Citation, Cited, PrintedTable } from "../citation";
import type { Grade, LengthRounding } from "../port";
import type { EndLegRow, FormerRow, HookRow, PrintedBar } from "../shared/standard-tables";

export const BARS: PrintedTable<PrintedBar> = {
  cite: {
    document: "GB/T 1499.2",
    edition: "2018",
    clause: "bar table; areas to 12 and from 36 mm pi d2/4",
    provenance: "published",
    seen: "tianhewen.com answer 11928; doczj.com 139143562",
  },
  rows: [
    { size: "6", diameter: 6, area: 28.27, massPerMetre: 0.222 },
    { size: "8", diameter: 8, area: 50.27, massPerMetre: 0.395 },
    { size: "10", diameter: 10, area: 78.54, massPerMetre: 0.617 },
    { size: "12", diameter: 12, area: 113.1, massPerMetre: 0.888 },
    { size: "14", diameter: 14, area: 153.9, massPerMetre: 1.21 },
    { size: "16", diameter: 16, area: 201.1, massPerMetre: 1.58 },
    { size: "18", diameter: 18, area: 254.5, massPerMetre: 2 },
    { size: "20", diameter: 20, area: 314.2, massPerMetre: 2.47 },
    { size: "22", diameter: 22, area: 380.1, massPerMetre: 2.98 },
    { size: "25", diameter: 25, area: 490.9, massPerMetre: 3.85 },
    { size: "28", diameter: 28, area: 615.8, massPerMetre: 4.83 },
    { size: "32", diameter: 32, area: 804.2, massPerMetre: 6.31 },
    { size: "36", diameter: 36, area: 1018, massPerMetre: 7.99 },
    {
      size: "40",
      diameter: 40,
      area: 1257,
      massPerMetre: 9.87,
      conflict: "pi d2/4 gives 9.865; others print 9.86",
    },
    { size: "50", diameter: 50, area: 1964, massPerMetre: 15.42 },
  ],
};

/** Inside diameters. "frame corner": main bars bent at the top corner of a frame's end joint. */
export const FORMERS: PrintedTable<FormerRow> = {
  cite: {
    document: "GB 50204",
    edition: "2015",
    clause: "5.3",
    provenance: "memory",
    conflict:
      "the earlier edition, which was read (m.gc5.com/lqgc/dlgc/10266160.html), has 2.5d for plain 180 degree hooks, 4d for 135 degrees, 5d up to 90: 2015 is held",
  },
  rows: [
    { uses: ["frame corner"], upTo: 25, perDiameter: 12 },
    { uses: ["frame corner"], perDiameter: 16 },
    { grades: ["HPB300"], perDiameter: 2.5 },
    { grades: ["HRB335", "HRB400", "HRB400E"], perDiameter: 4 },
    { grades: ["HRB500", "HRB500E"], below: 28, perDiameter: 6 },
    { grades: ["HRB500", "HRB500E"], perDiameter: 7 },
  ],
};

const ANCHORAGE: Citation = {
  document: "GB 50010",
  edition: "2010",
  clause: "8.3.3, anchorage by a bent end",
  provenance: "memory",
};
const LINK_ENDS: Citation = {
  document: "GB 50204",
  edition: "2015",
  clause: "5.3, links",
  provenance: "memory",
  conflict:
    "5d is the general rule; against earthquakes and for torsion 135 degrees with 10d and 75 mm: ask the designer",
};

export const END_LEGS: PrintedTable<EndLegRow> = {
  cite: ANCHORAGE,
  rows: [{ uses: ["main", "frame corner"], straightPerDiameter: 12 }],
};

export const LINK_END_LEGS: PrintedTable<EndLegRow> = {
  cite: LINK_ENDS,
  rows: [{ uses: ["link"], straightPerDiameter: 5 }],
};

export const HOOKS: PrintedTable<HookRow> = {
  cite: ANCHORAGE,
  rows: [
    { uses: ["main", "frame corner"], turns: [90], extensionPerDiameter: 12 },
    { uses: ["main", "frame corner"], turns: [135], extensionPerDiameter: 5 },
  ],
};

/** 180: plain bars. */
export const MORE_HOOKS: PrintedTable<HookRow> = {
  cite: LINK_ENDS,
  rows: [
    { uses: ["main", "frame corner"], turns: [180], extensionPerDiameter: 3 },
    { uses: ["link"], turns: [90, 180], extensionPerDiameter: 5 },
    { uses: ["link"], turns: [135], extensionPerDiameter: 10, leastExtension: 75 },
  ],
};

const STEEL: Citation = { document: "GB/T 1499.1 and 1499.2", provenance: "memory" };

/** The single letters stand for the drawn signs of the grades in spreadsheets. */
export const GRADES: readonly Grade[] = [
  { name: "HRB400", prefixes: ["C"], yield: 400, cite: STEEL },
  { name: "HRB400E", prefixes: [], yield: 400, cite: STEEL },
  { name: "HRB500", prefixes: ["D"], yield: 500, cite: STEEL },
  { name: "HRB500E", prefixes: [], yield: 500, cite: STEEL },
  { name: "HPB300", prefixes: ["A"], yield: 300, plain: true, cite: STEEL },
  {
    name: "HRB335",
    prefixes: ["B"],
    yield: 335,
    superseded: "335 MPa bar, withdrawn in 2018: ask the designer whether HRB400 takes its place",
    cite: STEEL,
  },
];

export const GRADE_UNSAID = { main: "HRB400", link: "HRB400" };

export const LENGTH_ROUNDING: LengthRounding = {
  step: 5,
  direction: "up",
  cite: { document: "GB 50204 prints no step", provenance: "common practice" },
};

export const STOCK_LENGTH: Cited<number> = {
  value: 12000,
  cite: { document: "stock lengths in China: 9 and 12 m", provenance: "common practice" },
};
