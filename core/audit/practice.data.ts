import type { Citation, Cited } from "../standards/citation";

/** Facts of the trade that several rules rest on. */
export const PLAIN_BAR_PRACTICE: Citation = {
  document: "plain round bars are anchored by hooks",
  provenance: "common practice",
};

export const WELD_DISTANCE: Citation = {
  document: "EN 1992-1-1",
  edition: "2004",
  clause: "8.3, Table 8.1N b): from a weld 3 diameters away a former of 5 diameters, nearer one of 20",
  provenance: "memory",
};

export const COUPLER_STRAIGHT: Citation = {
  document: "straight that couplers need at a bar's end: as their maker says",
  provenance: "common practice",
};

export const SITE_REBENDING: Citation = {
  document: "EN 13670",
  clause: "6.3: re-bending only where the execution specification allows it",
  provenance: "memory",
};

export const CLEAR_SPACING: Citation = {
  document: "EN 1992-1-1",
  edition: "2004",
  clause: "8.2(2): the largest of the bar, the aggregate + 5 mm and 20 mm",
  provenance: "memory",
};

export const DUCTILITY_CLASS: Citation = {
  document: "EN 1998-1: reinforcement of seismic members is of class B or C",
  provenance: "memory",
};

export const CIRCULAR_TIE_LAP: Citation = {
  document: "ACI 318",
  clause: "circular ties overlap by at least 6 in (150 mm)",
  provenance: "published",
  seen: "errata pages of the CRSI Manual of Standard Practice, bend type 303; fdocuments.us and vdocuments.net",
};

/** Extra turns at each end of a spiral. */
export const SPIRAL_END_TURNS: Cited<number> = {
  value: 1.5,
  cite: {
    document: "ACI 318",
    clause: "25.7.3.4: one and a half extra turns at each end; IS 456 26.5.3.2 d) likewise",
    provenance: "published",
    seen: "seaintarchive.org 1997c msg00887; the clauses are recalled",
  },
};

export const COUNT_FROM_SPACING: Citation = {
  document: "bars at a spacing: width / spacing, rounded down or up, + 1",
  provenance: "derived",
};

export const CRANK_SLOPE: Citation = {
  document: "column bars are cranked at 1 in 6 at the steepest",
  provenance: "common practice",
};

export const BAR_PROTECTION: Citation = {
  document: "protruding bars are guarded against impalement, of any diameter and length: 29 CFR 1926.701(b)",
  provenance: "published",
  seen: "osha.gov interpretations 1994-03-23 and 2006-04-24",
};

export const COUPLER_ENDS: Citation = {
  document: "ends for couplers are sawn square: a sheared end is crushed and burred",
  provenance: "common practice",
};

export const COVER_GEOMETRY: Citation = {
  document: "member size less cover on both sides, outside to outside of the link",
  provenance: "geometry",
};

/** What the yard wrote down itself. */
export const OF_SHOP_SHEET: Citation = {
  document: "Shop sheet of this workbook",
  provenance: "own",
};

export const LEGS_OF_TOOLING: Citation = {
  document: "former, pin and back-rest of a central-former bender against the legs of the bar",
  provenance: "own",
};

export const HOOK_GAP: Citation = {
  document: "a hook bent beyond 180 degrees leans over the held leg",
  provenance: "derived",
};

export const TRIALS_FIRST: Citation = {
  document: "the first bar of a size, former and grade is a trial",
  provenance: "common practice",
};

/** Degrees Celsius below which to ask, where the standard names none. */
export const COLD_TO_ASK_ABOUT: Cited<number> = {
  value: 5,
  cite: {
    document: "BS 8110-1 (withdrawn): bars below 5 C are not bent cold without leave",
    provenance: "memory",
    conflict: "EN 13670 says -5 C",
  },
};

/** Of a bar between two faces of the concrete, by how large it is: mm. */
export const DEDUCTION_BETWEEN_FACES: Cited<{ readonly small: number; readonly large: number }> = {
  value: { small: 10, large: 20 },
  cite: {
    document: "BS 8110-1 (withdrawn)",
    clause: "Table 3.24; BS 8666:2020 has such a table as its Table 3, unread",
    provenance: "memory",
  },
};

export const CRANK_LINKS: Citation = {
  document: "ACI 318",
  edition: "2019",
  clause: "10.7.6.4: links within 6 in (150 mm) of the bends of an offset bar",
  provenance: "memory",
};

/** mm: the longest bar on an ordinary lorry. */
export const LORRY_LENGTH: Cited<number> = {
  value: 13500,
  cite: { document: "length of an ordinary lorry's load: 13.5 m", provenance: "common practice" },
};

/** Diameters by which offices round what a bend takes off, where their document prints no length formula. */
export const DEDUCTION_ROUNDED: Cited<number> = {
  value: 0.5,
  cite: { document: "deductions for bends by the office's own table", provenance: "common practice" },
};

export const ONE_MARK_A_BAR: Citation = {
  document: "bars of one member that are alike have one mark",
  provenance: "common practice",
};

export const HANDED_PAIRS: Citation = {
  document: "of bars in pairs a schedule says which are as drawn and which of the opposite hand",
  provenance: "common practice",
};

/** A size that one row alone has: in how long a list it is looked at, and how far a mass tells another size. */
export const STRAY_SIZE: Cited<{
  readonly leastRows: number;
  /** share that the mass of a metre is off its own size's, and near another's */
  readonly off: number;
  readonly near: number;
  /** sizes of a summary that may tell which are none of the list */
  readonly leastSizes: number;
  /** mm: no bar is thicker */
  readonly thickest: number;
}> = {
  value: { leastRows: 6, off: 0.08, near: 0.015, leastSizes: 3, thickest: 60 },
  cite: {
    document:
      "masses a metre of neighbouring sizes differ by 8 % or more, of one size in any table by 1.5 % at most",
    provenance: "derived",
  },
};

export const INCHES_PER_FOOT: Cited<number> = {
  value: 12,
  cite: { document: "a foot is twelve inches", provenance: "common practice" },
};
