import type { Citation, Cited, PrintedTable } from "../citation";
import type { Grade, LengthRounding, ToleranceRow } from "../port";
import type { EndLegRow, FormerRow, HookRow, PrintedBar } from "../shared/standard-tables";

/** Inch-pound columns and the metric ones that the page prints beside them. */
export const BARS: PrintedTable<PrintedBar> = {
  cite: {
    document: "ASTM A615 and A706",
    clause: "bar table",
    provenance: "published",
    seen: "PCI Design Handbook 7th ed., Design Aid 15.4.1, scribd 485243316; concreteconstruction.net rebar-size-and-weights agrees",
  },
  rows: [
    {
      size: "#3",
      diameterInches: 0.375,
      area: 71,
      areaSquareInches: 0.11,
      massPerMetre: 0.56,
      poundsPerFoot: 0.376,
      conflict: "some web tables print 0.52 kg/m: wrong",
    },
    {
      size: "#4",
      diameterInches: 0.5,
      area: 129,
      areaSquareInches: 0.2,
      massPerMetre: 0.994,
      poundsPerFoot: 0.668,
    },
    {
      size: "#5",
      diameterInches: 0.625,
      area: 199,
      areaSquareInches: 0.31,
      massPerMetre: 1.552,
      poundsPerFoot: 1.043,
      conflict: "some web tables print 200 mm2: rounded",
    },
    {
      size: "#6",
      diameterInches: 0.75,
      area: 284,
      areaSquareInches: 0.44,
      massPerMetre: 2.235,
      poundsPerFoot: 1.502,
    },
    {
      size: "#7",
      diameterInches: 0.875,
      area: 387,
      areaSquareInches: 0.6,
      massPerMetre: 3.042,
      poundsPerFoot: 2.044,
    },
    {
      size: "#8",
      diameterInches: 1,
      area: 510,
      areaSquareInches: 0.79,
      massPerMetre: 3.973,
      poundsPerFoot: 2.67,
    },
    {
      size: "#9",
      diameterInches: 1.128,
      area: 645,
      areaSquareInches: 1,
      massPerMetre: 5.06,
      poundsPerFoot: 3.4,
    },
    {
      size: "#10",
      diameterInches: 1.27,
      area: 819,
      areaSquareInches: 1.27,
      massPerMetre: 6.404,
      poundsPerFoot: 4.303,
    },
    {
      size: "#11",
      diameterInches: 1.41,
      area: 1006,
      areaSquareInches: 1.56,
      massPerMetre: 7.907,
      poundsPerFoot: 5.313,
    },
    {
      size: "#14",
      diameterInches: 1.693,
      area: 1452,
      areaSquareInches: 2.25,
      massPerMetre: 11.38,
      poundsPerFoot: 7.65,
    },
    {
      size: "#18",
      diameterInches: 2.257,
      area: 2581,
      areaSquareInches: 4,
      massPerMetre: 20.24,
      poundsPerFoot: 13.6,
    },
  ],
};

/** In A615 since 2016; outside the bend and hook tables. */
export const LARGEST_BAR: PrintedTable<PrintedBar> = {
  cite: { document: "ASTM A615", clause: "bar table", provenance: "memory" },
  rows: [
    {
      size: "#20",
      diameterInches: 2.5,
      area: 3167,
      areaSquareInches: 4.91,
      massPerMetre: 24.84,
      poundsPerFoot: 16.69,
    },
  ],
};

export const FORMERS: PrintedTable<FormerRow> = {
  cite: {
    document: "ACI 318",
    edition: "2019",
    clause: "Table 25.3.1",
    provenance: "published",
    seen: "scribd 655153874",
  },
  rows: [
    { uses: ["main"], upToSize: "#8", perDiameter: 6 },
    {
      uses: ["main"],
      upToSize: "#11",
      perDiameter: 8,
      conflict:
        "detailing lists print finished diameters of 9.5, 10.75 and 12 in for #9 to #11, a handbook 9, 10 and 11 in: the code's multiple is held as the least",
    },
    {
      uses: ["main"],
      upToSize: "#18",
      perDiameter: 10,
      conflict:
        "detailing lists print finished diameters of 18.25 and 24 in for #14 and #18, a handbook 17.5 and 22.5 in: the code's multiple is held as the least",
    },
  ],
};

const HOOK_TABLE_1999 =
  "muhaz.org, ACI 315-99 Table 1 (cont.), stirrup and tie hooks, which meet ACI 318: D of 1 1/2, 2, 2 1/2, 4 1/2, 5 1/4 and 6 in";

/** Stirrups, ties, hoops and spirals. */
export const LINK_FORMERS: PrintedTable<FormerRow> = {
  cite: {
    document: "ACI 318",
    edition: "2019",
    clause: "Table 25.3.2",
    provenance: "published",
    seen: HOOK_TABLE_1999,
  },
  rows: [
    { uses: ["link"], upToSize: "#5", perDiameter: 4 },
    { uses: ["link"], upToSize: "#8", perDiameter: 6 },
  ],
};

export const EPOXY_FORMERS: PrintedTable<FormerRow> = {
  cite: {
    document: "ACI 318 with ASTM A775 and A934",
    edition: "2019",
    clause: "bend diameters unchanged by the coating",
    provenance: "memory",
  },
  rows: [
    { coatings: ["epoxy"], uses: ["link"], upToSize: "#5", perDiameter: 4 },
    { coatings: ["epoxy"], uses: ["link"], upToSize: "#8", perDiameter: 6 },
    { coatings: ["epoxy"], uses: ["main"], upToSize: "#8", perDiameter: 6 },
    { coatings: ["epoxy"], uses: ["main"], upToSize: "#11", perDiameter: 8 },
    { coatings: ["epoxy"], uses: ["main"], upToSize: "#18", perDiameter: 10 },
  ],
};

/** Bent cold before galvanizing, #7 and #8: printed as 7 in and 8 in. */
export const GALVANIZED_FORMERS: PrintedTable<FormerRow> = {
  cite: {
    document: "ASTM A767",
    clause: "bend diameters before galvanizing",
    provenance: "published",
    seen: "PCI Design Handbook 7th ed., Design Aid 15.4.1, note",
  },
  rows: [{ coatings: ["galvanized"], sizes: ["#7", "#8"], perDiameter: 8 }],
};

export const GALVANIZED_FORMERS_RECALLED: PrintedTable<FormerRow> = {
  cite: { document: "ASTM A767", clause: "bend diameters before galvanizing", provenance: "memory" },
  rows: [
    { coatings: ["galvanized"], upToSize: "#6", perDiameter: 6 },
    { coatings: ["galvanized"], upToSize: "#11", perDiameter: 8 },
    { coatings: ["galvanized"], upToSize: "#18", perDiameter: 10 },
  ],
};

/** The extension of the standard hook; of the stirrup hook for links. */
export const END_LEGS: PrintedTable<EndLegRow> = {
  cite: {
    document: "ACI 318",
    edition: "2019",
    clause: "Table 25.3.1",
    provenance: "published",
    seen: "scribd 655153874",
  },
  rows: [{ uses: ["main"], upToSize: "#18", straightPerDiameter: 12 }],
};

const STIRRUP_HOOKS: Citation = {
  document: "ACI 318",
  edition: "2019",
  clause: "Table 25.3.2",
  provenance: "published",
  seen: "errata pages of the CRSI Manual of Standard Practice, fdocuments.us and vdocuments.net; A and G of 135 degree hooks in ACI 315-99 Table 1, muhaz.org",
};

export const LINK_END_LEGS: PrintedTable<EndLegRow> = {
  cite: STIRRUP_HOOKS,
  rows: [
    {
      uses: ["link"],
      upToSize: "#5",
      straightPerDiameter: 6,
      leastStraight: 3,
      conflict: "the older 7.1.3, which was read, has no least of 3 in; the edition of 2019 is held",
    },
    { uses: ["link"], upToSize: "#8", straightPerDiameter: 12 },
  ],
};

export const HOOKS: PrintedTable<HookRow> = {
  cite: {
    document: "ACI 318",
    edition: "2019",
    clause: "Table 25.3.1",
    provenance: "published",
    seen: "scribd 655153874",
  },
  rows: [
    { uses: ["main"], turns: [90], upToSize: "#18", extensionPerDiameter: 12 },
    { uses: ["main"], turns: [180], upToSize: "#18", extensionPerDiameter: 4, leastExtension: 2.5 },
  ],
};

export const LINK_HOOKS: PrintedTable<HookRow> = {
  cite: STIRRUP_HOOKS,
  rows: [
    {
      uses: ["link"],
      turns: [90],
      upToSize: "#5",
      extensionPerDiameter: 6,
      leastExtension: 3,
      conflict: "the older 7.1.3, which was read, has no least of 3 in; the edition of 2019 is held",
    },
    { uses: ["link"], turns: [90], upToSize: "#8", extensionPerDiameter: 12 },
    { uses: ["link"], turns: [180], upToSize: "#8", extensionPerDiameter: 4, leastExtension: 2.5 },
    {
      uses: ["link"],
      turns: [135],
      upToSize: "#8",
      extensionPerDiameter: 6,
      leastExtension: 3,
      conflict:
        "the older 7.1.3, which was read, has no least of 3 in, and ACI 315-99 has it for seismic hooks alone; the edition of 2019 is held",
    },
  ],
};

const STEEL: Citation = { document: "ASTM A615 and A706", provenance: "memory" };

/** Weldable only as A706, or after its analysis. */
const A615: Citation = {
  document: "ACI 318",
  edition: "2019",
  clause: "26.6.4: bars other than ASTM A706 are welded only after a report of their weldability",
  provenance: "memory",
};

export const GRADES: readonly Grade[] = [
  { name: "Grade 60", prefixes: [], yield: 420, cite: STEEL, notWelded: A615 },
  { name: "Grade 40", prefixes: [], yield: 280, cite: STEEL, notWelded: A615 },
  { name: "Grade 80", prefixes: [], yield: 550, cite: STEEL, notWelded: A615 },
  { name: "Grade 100", prefixes: [], yield: 690, cite: STEEL, notWelded: A615 },
  {
    name: "Grade 75",
    prefixes: [],
    yield: 520,
    superseded: "grade 75, in place of which grade 80 is rolled today: ask the designer",
    cite: STEEL,
    notWelded: A615,
  },
];

/** Inches. */
export const LENGTH_ROUNDING: LengthRounding = {
  step: 0.25,
  direction: "up",
  cite: { document: "ACI 318 prints no step", provenance: "common practice" },
};

/** Inches. Stirrups and ties: #3 to #5 with a gross length to 12 ft. */
export const TOLERANCES: Cited<readonly ToleranceRow[]> = {
  value: [
    { applies: "cut length", upTo: Infinity, plus: 1, minus: 1 },
    { applies: "cut length, #14 and #18", upTo: Infinity, plus: 2, minus: 2 },
    { applies: "bent dimension", upTo: Infinity, plus: 1, minus: 1 },
    { applies: "link dimension", upTo: Infinity, plus: 0.5, minus: 0.5 },
    { applies: "link dimension, #6 and larger", upTo: Infinity, plus: 1, minus: 1 },
    { applies: "height of a truss bar", upTo: Infinity, plus: 0, minus: 0.5 },
    { applies: "diameter of a spiral or round tie", upTo: Infinity, plus: 0.5, minus: 0.5 },
  ],
  cite: { document: "ACI 117 and ACI 315", clause: "fabrication tolerances", provenance: "memory" },
};

export const REBENDING: Cited<string> = {
  value:
    "bars partly embedded in concrete are bent in the field only where the drawings show it or the licensed professional permits it; heating as approved",
  cite: { document: "ACI 318", edition: "2019", clause: "26.6.3", provenance: "memory" },
};

/** Inches: 60 ft. */
export const STOCK_LENGTH: Cited<number> = {
  value: 720,
  cite: { document: "stock lengths in the USA: 20, 30, 40 and 60 ft", provenance: "common practice" },
};
