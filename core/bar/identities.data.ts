import type { Cited } from "../standards/citation";

/** When a sheet's own products are believed, and how near a product must come. */
export const IDENTITIES: Cited<{
  /** share of the rows, and rows, that must keep an identity before it says anything of the others */
  readonly share: number;
  readonly rows: number;
  /** a typed total length against count x length; a typed mass against count x length x kg/m */
  readonly lengthWithin: number;
  readonly massWithin: number;
  readonly unitMassWithin: number;
  /** rows of one size from which its own kg/m is learnt, and how far it may be from the table's */
  readonly sizeRows: number;
  readonly fromTable: number;
  /** half a unit of the last place, a little more for what floats leave */
  readonly half: number;
}> = {
  value: {
    share: 0.7,
    rows: 4,
    lengthWithin: 0.003,
    massWithin: 0.012,
    unitMassWithin: 0.006,
    sizeRows: 3,
    fromTable: 0.12,
    half: 0.5000001,
  },
  cite: {
    document:
      "right readings of a hundred schedules keep .91 to 1.00 of their products, wrong ones at most .31",
    provenance: "derived",
  },
};

/** Rows whose marks stand for other bars too, from which on the column names members and no bars. */
export const MARKS_OF_MEMBERS: Cited<{ readonly share: number; readonly rows: number }> = {
  value: { share: 0.3, rows: 5 },
  cite: { document: "take-offs whose marks are those of footings and beams", provenance: "derived" },
};

/** mm: straight bars are rolled no longer. */
export const LONGEST_ROLLED: Cited<number> = {
  value: 18_000,
  cite: { document: "mills roll straight bars to 18 m", provenance: "common practice" },
};

/** A mark that comes again: where few marks do, it is a row entered twice; in a shorter list only word for word. */
export const TWICE: Cited<{
  readonly mostRepeated: number;
  readonly leastRows: number;
  readonly leastOfAlike: number;
  /** share of a list that stands in another before the whole list is told of */
  readonly leastOfList: number;
}> = {
  value: { mostRepeated: 0.08, leastRows: 8, leastOfAlike: 4, leastOfList: 0.8 },
  cite: {
    document: "rows entered twice in a hundred schedules against marks used again",
    provenance: "derived",
  },
};

/** How a sheet's own way of making lengths out of legs is learnt. mm unless said. */
export const LENGTH_HABIT: Cited<{
  /** rows of one shape that must keep it, and their share */
  readonly rows: number;
  readonly share: number;
  /** bars of different legs among them */
  readonly different: number;
  /** step of lengths where the sheet keeps none */
  readonly step: number;
  readonly slack: number;
  /** in diameters: offices round each bend's deduction their own way */
  readonly slackPerDiameter: number;
  /** diameters to which a deduction is told, and the most that bends and hooks can make */
  readonly within: number;
  readonly most: number;
  /** diameters that the two ends of a link add to its four sides, at most */
  readonly linkEnds: number;
  /** legs up to which any may count twice */
  readonly mostTwice: number;
  /** bent bars of a sheet that are as long as their legs together, from which few of a shape tell; and their share */
  readonly sumRows: number;
  readonly sumShare: number;
}> = {
  value: {
    rows: 4,
    share: 0.7,
    different: 3,
    step: 5,
    slack: 1,
    slackPerDiameter: 0.3,
    within: 0.5,
    most: 60,
    linkEnds: 30,
    mostTwice: 5,
    sumRows: 6,
    sumShare: 0.66,
  },
  cite: {
    document: "length is the sum of the legs less a deduction for each bend, by the office's own table",
    provenance: "common practice",
  },
};

/** From how many bars a sheet's own way of making lengths out of legs is learnt, whatever the shapes. */
export const LEG_CONVENTION: Cited<{
  /** different bars that keep it, and their share */
  readonly rows: number;
  readonly share: number;
  /** share of bars that may have a leg longer than they are */
  readonly few: number;
  /** diameters below which nothing is a leg: the bend alone takes more */
  readonly leastLeg: number;
  /** diameters that the ends of a link add at most */
  readonly mostEnds: number;
  /** share of a length that it is off by, from which no rounding and no hook makes it */
  readonly far: number;
}> = {
  value: { rows: 3, share: 0.6, few: 0.2, leastLeg: 3, mostEnds: 40, far: 0.05 },
  cite: {
    document: "length is the sum of the legs less a deduction for each bend, by the office's own way",
    provenance: "common practice",
  },
};

/** When a hook or an end is unlike the others of its list. */
export const SHORT_ENDS: Cited<{
  /** other bars of the shape at least */
  readonly others: number;
  /** how far apart the others may be */
  readonly alike: number;
  /** share of the least other that the odd one has at most */
  readonly less: number;
  /** diameters above which it is a leg and no hook */
  readonly most: number;
  /** diameters of straight without which no hook holds */
  readonly straight: number;
}> = {
  value: { others: 2, alike: 1.3, less: 0.6, most: 20, straight: 5 },
  cite: {
    document:
      "EN 1992-1-1, 8.5, Figure 8.5 a): the straight of a hook; a list makes its hooks alike, by diameters",
    provenance: "memory",
  },
};

/** Rolls in diameters of the bar, of thin bars and of those from a diameter (mm) on, by which lists deduct for bends. */
export const USUAL_ROLLS: Cited<
  readonly { readonly thin: number; readonly thick: number; readonly from: number }[]
> = {
  value: [
    { thin: 4, thick: 7, from: 17 },
    { thin: 5, thick: 8, from: 20 },
    { thin: 4, thick: 6, from: 19 },
    { thin: 6, thick: 8, from: 26 },
    { thin: 5, thick: 5, from: 100 },
  ],
  cite: {
    document:
      "EN 1992-1-1 Table 8.1N, the Russian code of practice, the Japanese and the American code, the Australian standard",
    provenance: "memory",
  },
};

/** Diameters that one right angle takes off the legs to the outside, at most: round a roll of ten diameters. */
export const MOST_OFF_BEND: Cited<number> = {
  value: 3.4,
  cite: { document: "2 (r + d) - pi / 2 (r + d / 2) with r of 5 d", provenance: "derived" },
};

/** Bars of one code that are off a document that nobody chose by one deviation, which is then the list's own. */
export const OWN_DEVIATION: Cited<{
  /** bars of a code that are looked at */
  readonly looked: number;
  /** different lengths that must keep it, and their share */
  readonly fewest: number;
  readonly share: number;
  /** diameters, either way */
  readonly most: number;
}> = {
  value: { looked: 60, fewest: 2, share: 0.5, most: 8 },
  cite: {
    document: "offices deduct for bends by tables of their own, the same for all bars of a shape",
    provenance: "common practice",
  },
};

/** When rows speak against a document that nobody chose: bars looked at, the fewest that break it, and their shares. */
export const DOCUMENT_KEPT: Cited<{
  readonly looked: number;
  readonly fewest: number;
  readonly lengths: number;
  readonly ends: number;
}> = {
  value: { looked: 60, fewest: 3, lengths: 0.3, ends: 0.6 },
  cite: {
    document: "lists that go by a document break it in one row in ten at most",
    provenance: "derived",
  },
};

/** Counts out of a run and a spacing: rows that must keep one way of rounding before the others are wrong. */
export const RUN_HABIT: Cited<{
  readonly share: number;
  readonly rows: number;
  readonly leastGaps: number;
  readonly mostGaps: number;
  readonly exact: number;
  /** bars over one run from which a count may be that of several members, and of how many */
  readonly leastOfSeveral: number;
  readonly mostTimes: number;
  /** columns without a known heading that are held against each other */
  readonly mostColumns: number;
  /** where words say both, fewer rows tell; and how many rows are looked at to see whether any do */
  readonly inWords: {
    readonly share: number;
    readonly rows: number;
    readonly least: number;
    readonly looked: number;
  };
}> = {
  value: {
    share: 0.75,
    rows: 5,
    leastGaps: 1.5,
    mostGaps: 1000,
    exact: 1e-6,
    leastOfSeveral: 8,
    mostTimes: 24,
    mostColumns: 6,
    inWords: { share: 0.6, rows: 2, least: 2, looked: 200 },
  },
  cite: {
    document: "gaps or bars, rounded up, down or to the nearest, as the office does",
    provenance: "common practice",
  },
};

/** Legs that the words of a row join, and how many rows must be as long as theirs before the others are wrong. */
export const LEGS_IN_WORDS: Cited<{
  readonly share: number;
  readonly rows: number;
  /** mm: such lists write to 10 mm or half an inch */
  readonly within: number;
  /** rows looked at to see whether any joins legs */
  readonly looked: number;
  /** letters of a text that is looked at */
  readonly longest: number;
}> = {
  value: { share: 0.7, rows: 3, within: 13, looked: 200, longest: 80 },
  cite: {
    document: "length is the sum of the legs, as lists that write them in one cell have it",
    provenance: "common practice",
  },
};

/** Legs of bars that are called by the letter which they look like. */
export const LEGS_OF_LETTER: Cited<Readonly<Record<string, number>>> = {
  value: { Z: 3, U: 3 },
  cite: { document: "bars called by the letters that they look like", provenance: "common practice" },
};
