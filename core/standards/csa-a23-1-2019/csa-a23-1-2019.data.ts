import type { Citation, Cited, PrintedTable } from "../citation";
import type { Grade, LengthRounding } from "../port";
import type { EndLegRow, FormerRow, HookRow, PrintedBar } from "../shared/standard-tables";

export const BARS: PrintedTable<PrintedBar> = {
  cite: {
    document: "CSA G30.18",
    clause: "bar table",
    provenance: "published",
    seen: "seaintarchive.org mailarchive 2002c msg01442 (diameter, area); id.scribd.com/document/441003619 (mass)",
  },
  rows: [
    { size: "10M", diameter: 11.3, area: 100, massPerMetre: 0.785 },
    { size: "15M", diameter: 16, area: 200, massPerMetre: 1.57 },
    { size: "20M", diameter: 19.5, area: 300, massPerMetre: 2.355 },
    { size: "25M", diameter: 25.2, area: 500, massPerMetre: 3.925 },
    { size: "30M", diameter: 29.9, area: 700, massPerMetre: 5.495 },
    { size: "35M", diameter: 35.7, area: 1000, massPerMetre: 7.85 },
  ],
};

/** Diameter and area as read; the mass is the area x 0.00785. */
export const LARGE_BARS: PrintedTable<PrintedBar> = {
  cite: {
    document: "CSA G30.18",
    clause: "bar table",
    provenance: "derived",
    seen: "seaintarchive.org mailarchive 2002c msg01442 (diameter, area)",
  },
  rows: [
    { size: "45M", diameter: 43.7, area: 1500, massPerMetre: 11.775 },
    {
      size: "55M",
      diameter: 56.4,
      area: 2500,
      massPerMetre: 19.625,
      conflict: "a web table prints 49.5 mm, 2000 mm2 and 15.70 kg/m: it is wrong",
    },
  ],
};

const BENDS: Citation = {
  document: "CSA A23.1",
  edition: "2019",
  clause: "bend diameters",
  provenance: "memory",
  conflict:
    "recalled with little certainty: have them read in the standard before use; where no grade is said 400W is taken, the usual one, and the bends of 400R are larger",
};

/** A diameter between two bars takes the larger bar's. */
export const FORMERS: PrintedTable<FormerRow> = {
  cite: BENDS,
  rows: [
    { uses: ["main"], grades: ["400W"], upToSize: "10M", former: 60 },
    { uses: ["main"], grades: ["400W"], upToSize: "15M", former: 90 },
    { uses: ["main"], grades: ["400W"], upToSize: "20M", former: 100 },
    { uses: ["main"], grades: ["400W"], upToSize: "25M", former: 150 },
    { uses: ["main"], grades: ["400W"], upToSize: "30M", former: 200 },
    { uses: ["main"], grades: ["400W"], upToSize: "35M", former: 250 },
    { uses: ["main"], grades: ["400W"], upToSize: "45M", former: 400 },
    { uses: ["main"], grades: ["400W"], upToSize: "55M", former: 550 },
    { uses: ["main"], grades: ["400R"], upToSize: "10M", former: 70 },
    { uses: ["main"], grades: ["400R"], upToSize: "15M", former: 100 },
    { uses: ["main"], grades: ["400R"], upToSize: "20M", former: 120 },
    { uses: ["main"], grades: ["400R"], upToSize: "25M", former: 150 },
    { uses: ["main"], grades: ["400R"], upToSize: "30M", former: 250 },
    { uses: ["main"], grades: ["400R"], upToSize: "35M", former: 300 },
    { uses: ["main"], grades: ["400R"], upToSize: "45M", former: 450 },
    { uses: ["main"], grades: ["400R"], upToSize: "55M", former: 600 },
    { uses: ["link"], upToSize: "10M", former: 45 },
    { uses: ["link"], upToSize: "15M", former: 65 },
  ],
};

const ENDS: Citation = { document: "CSA A23.1", edition: "2019", clause: "hooks", provenance: "memory" };

export const END_LEGS: PrintedTable<EndLegRow> = {
  cite: ENDS,
  rows: [
    { uses: ["main"], straightPerDiameter: 12 },
    { uses: ["link"], straightPerDiameter: 6, leastStraight: 60 },
  ],
};

export const HOOKS: PrintedTable<HookRow> = {
  cite: ENDS,
  rows: [
    { turns: [180], extensionPerDiameter: 4, leastExtension: 60 },
    { uses: ["main"], turns: [90], extensionPerDiameter: 12 },
    { uses: ["link"], turns: [90, 135], extensionPerDiameter: 6, leastExtension: 60 },
  ],
};

const STEEL: Citation = { document: "CSA G30.18", provenance: "memory" };

export const GRADES: readonly Grade[] = [
  { name: "400W", prefixes: [], yield: 400, cite: STEEL },
  { name: "400R", prefixes: [], yield: 400, cite: STEEL, notWelded: STEEL },
];

/** What is usually rolled. */
export const GRADE_UNSAID = { main: "400W", link: "400W" };

export const LENGTH_ROUNDING: LengthRounding = {
  step: 5,
  direction: "up",
  cite: { document: "CSA A23.1 prints no step", provenance: "common practice" },
};

export const STOCK_LENGTH: Cited<number> = {
  value: 18000,
  cite: { document: "stock lengths in Canada: 12 and 18 m", provenance: "common practice" },
};
