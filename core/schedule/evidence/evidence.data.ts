import type { Cited } from "../../standards/citation";

/**
 * Every number that weighs columns against each other. They were tuned on a hundred invented schedules of some
 * thirty countries and on random sheets; each line says what it keeps apart. Scores are natural logarithms of odds.
 */
const WEIGHED = {
  document: "scores of right and wrong readings of a hundred schedules in the ways of thirty countries",
  provenance: "derived",
} as const;

/** Which rows are looked at. */
export const LOOK: Cited<{
  readonly mostRows: number;
  readonly sampled: number;
  readonly stretches: number;
  readonly tested: number;
  readonly tried: number;
  readonly window: number;
  readonly valuesOfBar: number;
  readonly textsOfHeader: number;
  readonly textsAlone: number;
  readonly numbersOfHeader: number;
  readonly keyFilled: number;
  readonly keyOfRow: number;
  readonly leastKeys: number;
  readonly leastRows: number;
  readonly rounds: number;
  readonly alike: number;
  readonly present: number;
  readonly profileFilled: number;
}> = {
  value: {
    // rows after a header that are looked through: units do not change further down
    mostRows: 2000,
    // rows parsed of them, in stretches so that running numbers and repeats are still seen
    sampled: 400,
    stretches: 10,
    // rows that a hypothesis is tested on, and those that reject it first
    tested: 160,
    tried: 24,
    // rows of a table's profile
    window: 400,
    // a bar has at least size, count and length
    valuesOfBar: 3,
    // a header has four words and few numbers
    textsOfHeader: 4,
    // words alone, as over a summary: size, length, mass
    textsAlone: 3,
    numbersOfHeader: 0.25,
    // columns filled in most rows are the core of a table; a row that lacks much of it is a total or a note
    keyFilled: 0.7,
    keyOfRow: 0.6,
    leastKeys: 2,
    leastRows: 3,
    rounds: 2,
    // stretches whose columns hold the same kinds are one table under repeated headers
    alike: 0.75,
    present: 0.5,
    profileFilled: 0.3,
  },
  cite: WEIGHED,
};

/** What tells a sheet whose bars run down its columns, and tables that stand side by side. */
export const LAYOUT: Cited<{
  readonly sizesAcross: number;
  readonly repeats: number;
  readonly timesDown: number;
  readonly sizeFilled: number;
  readonly repeatsDown: number;
  readonly leastBeside: number;
  readonly leastStep: number;
  readonly spare: number;
}> = {
  value: {
    // sizes in one row, with repeats: without them every header by size looks transposed
    sizesAcross: 5,
    repeats: 0.8,
    timesDown: 2,
    // a column of sizes and no running labels
    sizeFilled: 0.6,
    repeatsDown: 0.7,
    // columns of numbers on either side of an empty one
    leastBeside: 3,
    leastStep: 2,
    // columns that may stand behind the last group
    spare: 1,
  },
  cite: WEIGHED,
};

/** What a column's own values say. */
export const COLUMN: Cited<{
  readonly mostly: number;
  readonly lowShare: number;
  readonly highShare: number;
  readonly mostDecimals: number;
  readonly decimalsOf: number;
  readonly leastFilled: number;
}> = {
  value: {
    mostly: 0.5,
    lowShare: 0.1,
    highShare: 0.9,
    // places kept tell the rounding; a formula's tail of digits says nothing more
    mostDecimals: 6,
    decimalsOf: 400,
    // a number in fifty rows is a column still: the last size of a list by size
    leastFilled: 0.02,
  },
  cite: WEIGHED,
};

/** Columns by size: neighbours of which each row fills one. */
export const BY_SIZE: Cited<{
  readonly mostFilled: number;
  readonly one: number;
  readonly many: number;
  readonly leastColumns: number;
}> = {
  value: { mostFilled: 0.97, one: 0.7, many: 0.06, leastColumns: 2 },
  cite: WEIGHED,
};

/** Sizes that lists call off in one text with mark and spacing. */
export const CALLED_OFF_SIZES: Cited<readonly number[]> = {
  value: [6, 8, 10, 12, 16, 20, 25, 32, 40],
  cite: { document: "BS 4449, sizes of bars", provenance: "memory" },
};

/** Which columns may be the size, the count and the length. */
export const CANDIDATE: Cited<{
  readonly sizeInTable: number;
  readonly numberWhole: number;
  readonly numberInTable: number;
  readonly numberInInches: number;
  readonly mostSizes: number;
  readonly sizeFilled: number;
  readonly tagged: number;
  readonly largestInInches: number;
  readonly sizes: number;
  readonly tagBonus: number;
  readonly commonShare: number;
  readonly commonBonus: number;
  readonly constantSize: number;
  readonly perColumn: number;
  readonly differentShare: number;
  readonly differentRows: number;
  readonly different: number;
  readonly countWhole: number;
  readonly mostCount: number;
  readonly countFilled: number;
  readonly lengthFilled: number;
  readonly running: number;
  readonly factorMiddle: number;
  readonly factorRunning: number;
  readonly factorsDistinct: number;
  readonly likeSizeShare: number;
  readonly likeSizeDistinct: number;
  readonly likeSize: number;
  readonly runningCount: number;
  readonly noCount: number;
  readonly twoFactors: number;
  readonly inchesHigh: number;
  readonly feetHigh: number;
  readonly feetWhole: number;
  readonly feetFilled: number;
  readonly inchesFilled: number;
  readonly inchesPerFoot: number;
  readonly inchHalf: number;
}> = {
  value: {
    // share of a size column's values that are bars of a table; plain numbers must do better
    sizeInTable: 0.7,
    numberWhole: 0.6,
    numberInTable: 0.8,
    numberInInches: 0.85,
    mostSizes: 14,
    sizeFilled: 0.6,
    tagged: 0.5,
    // #11 is the last of the running inch numbers
    largestInInches: 11,
    // size columns tried
    sizes: 5,
    // H16 or #5 says size itself; the everyday sizes, too; all different is a mark
    tagBonus: 5,
    commonShare: 0.85,
    commonBonus: 2,
    constantSize: -2,
    perColumn: -0.15,
    differentShare: 0.9,
    differentRows: 6,
    different: -6,
    countWhole: 0.85,
    mostCount: 5000,
    countFilled: 0.4,
    lengthFilled: 0.4,
    running: 0.6,
    // members and bars of one member
    factorMiddle: 200,
    factorRunning: 0.8,
    factorsDistinct: 2,
    // a column of everyday sizes is less likely a count; numbers that run are none; two factors only where one will not do
    likeSizeShare: 0.95,
    likeSizeDistinct: 8,
    likeSize: -1,
    runningCount: -6,
    noCount: -6,
    twoFactors: -4,
    // feet beside inches: whole feet of a bar up to 130, inches below 12
    inchesHigh: 12.01,
    feetHigh: 130,
    feetWhole: 0.9,
    feetFilled: 0.7,
    inchesFilled: 0.5,
    inchesPerFoot: 12,
    inchHalf: 0.05,
  },
  cite: WEIGHED,
};

/** What an identity is worth: rows that keep it against rows that do not. */
export const SCORE: Cited<{
  readonly mistakes: number;
  readonly seenBefore: number;
  readonly blurred: number;
  readonly mostRounding: number;
  readonly roundingSlack: number;
  readonly mostChance: number;
  readonly lookElsewhere: number;
  readonly leastShare: number;
  readonly shifts: readonly number[];
  readonly mostSide: number;
}> = {
  value: {
    // the most of the rows that mistakes may break
    mistakes: 0.25,
    // a bar that came before says little more
    seenBefore: 0.25,
    // masses in tonnes of small bars are rounded by up to half: such a row agrees with anything
    blurred: 0.2,
    mostRounding: 0.5,
    roundingSlack: 1.02,
    mostChance: 0.7,
    // thousands of products are tried on a sheet: one must be better than the best of them by luck
    lookElsewhere: 6,
    leastShare: 0.5,
    // the answers dealt to other rows tell what chance alone would keep
    shifts: [0, 1 / 3, 1 / 2],
    // legs and counts support a product, they do not outweigh it
    mostSide: 40,
  },
  cite: WEIGHED,
};

/** Members times bars of one is the total. */
export const TRIPLE: Cited<{
  readonly chance: number;
  readonly least: number;
  readonly timesBroken: number;
  readonly trivial: number;
  readonly sure: number;
  readonly exact: number;
}> = {
  value: {
    chance: 0.03,
    least: 2,
    timesBroken: 1.5,
    // 1 x 12 = 12 holds in any two equal columns
    trivial: 0.3,
    // above it the three columns are counts and no length
    sure: 10,
    exact: 1e-9,
  },
  cite: WEIGHED,
};

/** Mass and total length as products. Widths are of natural logarithms, so shares. */
export const PRODUCT: Cited<{
  readonly totalWindow: number;
  readonly massWindow: number;
  readonly tried: number;
  readonly triedFew: number;
  readonly fewRows: number;
  readonly leastTried: number;
  readonly atConstant: number;
  readonly atWaste: number;
  readonly totalWithin: number;
  readonly massWithin: number;
  readonly totalChance: number;
  readonly massChance: number;
  readonly wastes: readonly number[];
  readonly wasteCost: number;
  readonly otherTable: number;
  readonly sizeWorth: number;
  readonly mostSizeWorth: number;
  readonly oneUnit: number;
}> = {
  value: {
    totalWindow: 0.012,
    massWindow: 0.02,
    tried: 0.4,
    triedFew: 0.6,
    fewRows: 6,
    leastTried: 3,
    // units stand 12 % or more from each other with any waste; a waste must be hit closely
    atConstant: 0.02,
    atWaste: 0.006,
    totalWithin: 0.003,
    // printed masses per metre of one size differ by about 1 %
    massWithin: 0.014,
    totalChance: 0.03,
    massChance: 0.05,
    // percentages that offices add for waste
    wastes: [0, 2, 3, 5, 7, 10],
    wasteCost: 3,
    otherTable: 2,
    sizeWorth: 0.6,
    mostSizeWorth: 8,
    oneUnit: 1e-9,
  },
  cite: WEIGHED,
};

/** What a length of a bar can be. */
export const MAGNITUDE: Cited<{
  readonly least: number;
  readonly most: number;
  readonly impossible: number;
  readonly short: number;
  readonly long: number;
  readonly unlikely: number;
  readonly excluded: number;
  readonly wholeMetres: number;
  readonly wholeShare: number;
  readonly wholeDistinct: number;
  readonly brokenMillimetres: number;
  readonly millimetreWhole: number;
  readonly plainInches: number;
  readonly smallWhole: number;
  readonly smallMiddle: number;
  readonly countMiddles: readonly (readonly [number, number])[];
  readonly countWhole: number;
  readonly countBroken: number;
  readonly moreDistinct: number;
  readonly roundStep: number;
  readonly roundCount: number;
  readonly roundLength: number;
  readonly roundCost: number;
  readonly rareUnit: number;
  readonly pair: number;
}> = {
  value: {
    // m: the middle of a list; bars are tied by hand from 0.12 m and carried up to 40 m
    least: 0.12,
    most: 40,
    impossible: -8,
    short: 0.5,
    long: 16,
    unlikely: -2,
    excluded: -6,
    // lengths in whole metres throughout, or broken millimetres, are counts or another unit
    wholeMetres: -14,
    wholeShare: 0.9,
    wholeDistinct: 2,
    brokenMillimetres: -6,
    millimetreWhole: 0.7,
    plainInches: -3,
    // small whole numbers are counts
    smallWhole: 0.6,
    smallMiddle: 60,
    // above this middle a count is ever less likely
    countMiddles: [
      [1000, -9],
      [400, -5],
      [150, -2],
    ],
    countWhole: 0.97,
    countBroken: -2,
    // lengths take more values than counts
    moreDistinct: 2,
    // numbers that end in 0 or 5 are lengths sooner than counts
    roundStep: 5,
    roundCount: 0.8,
    roundLength: 0.5,
    roundCost: -2,
    rareUnit: -2,
    pair: -14,
  },
  cite: WEIGHED,
};

/** A length against its legs. */
export const LEGS: Cited<{
  readonly mostColumns: number;
  readonly mostGap: number;
  readonly others: number;
  readonly ratioRows: number;
  readonly leastRatios: number;
  readonly ratioWithin: number;
  readonly slack: number;
  readonly one: number;
  readonly oneChance: number;
  readonly shortest: number;
  readonly shortestSum: number;
  readonly longest: number;
  readonly bandChance: number;
  readonly sum: number;
  readonly sumRows: number;
  readonly sumShare: number;
  readonly sumChance: number;
  readonly least: number;
  readonly kept: number;
  readonly keptOne: number;
  readonly firstFilled: number;
  readonly firstEmpty: number;
  readonly perColumn: number;
  readonly codeSize: number;
  readonly codeDistinct: number;
  readonly codeDistinctOf: number;
  readonly codeMiddle: number;
  readonly codeTells: number;
  readonly running: number;
  readonly givesWay: number;
  readonly alikeWithin: number;
  readonly shapeTells: number;
  readonly shapeFilled: number;
  readonly shapeDistinct: number;
  readonly leastPattern: number;
}> = {
  value: {
    mostColumns: 8,
    mostGap: 3,
    others: 0.9,
    ratioRows: 48,
    leastRatios: 3,
    // powers of ten apart: a bent bar is shorter than its legs by less
    ratioWithin: 0.45,
    slack: 0.001,
    // a straight bar's one leg is its length
    one: 0.013,
    oneChance: 0.02,
    // a bent bar is as long as its longest leg and, hooks and closed links included, at most 2.3 times the sum
    shortest: 0.98,
    shortestSum: 0.8,
    longest: 2.3,
    bandChance: 0.45,
    sum: 0.002,
    sumRows: 3,
    sumShare: 0.6,
    sumChance: 0.03,
    least: 4,
    kept: 0.7,
    keptOne: 0.6,
    firstFilled: 0.5,
    firstEmpty: -4,
    perColumn: 1.2,
    // small repeated numbers that tell which legs are filled are shape codes
    codeSize: 0.035,
    codeDistinct: 3,
    codeDistinctOf: 0.25,
    codeMiddle: 100,
    codeTells: 0.8,
    running: 0.5,
    // a leg that equals the length in every row gives way to the column that stands apart
    givesWay: -25,
    alikeWithin: 3,
    shapeTells: 0.85,
    shapeFilled: 0.5,
    shapeDistinct: 30,
    leastPattern: 4,
  },
  cite: WEIGHED,
};

/** Mass per metre, run and spacing, and the columns left over. */
export const REST: Cited<{
  readonly unitMassWithin: number;
  readonly unitMassShare: number;
  readonly unitMassWhole: number;
  readonly unitMassChance: number;
  readonly unitMassKept: number;
  readonly unitMassOneSize: number;
  readonly unitMassWorth: number;
  readonly poundsPerFoot: number;
  readonly runRatio: number;
  readonly runKept: number;
  readonly runShare: number;
  readonly runChance: number;
  readonly runWorth: number;
  readonly runExact: number;
  readonly spacingDistinct: number;
  readonly spacingDistinctOf: number;
  readonly running: number;
  readonly serialRows: number;
  readonly labelNear: number;
  readonly labelFilled: number;
  readonly markDifferent: number;
  readonly markFilled: number;
  readonly markWhole: number;
  readonly perColumn: number;
  readonly countFilled: number;
  readonly mostCount: number;
  readonly countDistinct: number;
  readonly countDistinctWorth: number;
  readonly likeSize: number;
  readonly perDistance: number;
  readonly wordWorth: number;
  readonly stays: number;
  readonly timesLess: number;
  readonly twin: number;
  readonly headingShare: number;
  readonly headingRows: number;
  readonly headingChance: number;
  readonly headingWorth: number;
  readonly mostMembers: number;
  readonly sizeByColumn: number;
  readonly sizeByColumnFrom: number;
  readonly sizeByColumnRows: number;
  readonly otherIdentity: number;
  readonly lookDistinct: number;
  readonly lookMagnitude: number;
  readonly lookWhole: number;
  readonly lookMiddle: number;
  readonly lookMillimetre: number;
  readonly lookMillimetreWhole: number;
  readonly lookMillimetreBroken: number;
}> = {
  value: {
    unitMassWithin: 0.015,
    unitMassShare: 0.7,
    unitMassWhole: 0.9,
    unitMassChance: 0.05,
    unitMassKept: 1.5,
    unitMassOneSize: 3,
    unitMassWorth: 2,
    // kg/m in one lb/ft
    poundsPerFoot: 1.488,
    // a count is the run over the spacing, rounded by anyone's rule and one more
    runRatio: 1.5,
    runKept: 5,
    runShare: 0.8,
    runChance: 0.12,
    runWorth: 3,
    runExact: 1e-6,
    spacingDistinct: 6,
    spacingDistinctOf: 0.3,
    // numbers of the row above plus one
    running: 0.8,
    serialRows: 4,
    labelNear: 3,
    labelFilled: 0.8,
    markDifferent: 0.5,
    markFilled: 0.5,
    markWhole: 0.95,
    perColumn: -0.02,
    // a count by its looks alone
    countFilled: 0.7,
    mostCount: 500,
    countDistinct: 4,
    countDistinctWorth: 3,
    likeSize: -2,
    perDistance: -0.1,
    wordWorth: 2,
    // members keep their value over the rows of a member, and are fewer than its bars
    stays: 0.3,
    timesLess: 2,
    twin: 0.9,
    // members in a heading: total over each stays the same over stretches of rows
    headingShare: 0.6,
    headingRows: 5,
    headingChance: 0.15,
    headingWorth: 3,
    mostMembers: 200,
    // the size tells which column by size is filled
    sizeByColumn: 12,
    sizeByColumnFrom: 0.6,
    sizeByColumnRows: 3,
    otherIdentity: 4,
    // a length by its looks alone
    lookDistinct: 3,
    lookMagnitude: -3,
    lookWhole: 0.85,
    lookMiddle: 100,
    lookMillimetre: 1,
    lookMillimetreWhole: 0.9,
    lookMillimetreBroken: -4,
  },
  cite: WEIGHED,
};

/** A header word is worth about one row of proof: words break ties and never outvote five rows that agree. */
export const WORD: Cited<{
  readonly role: number;
  readonly otherRole: number;
  readonly unit: number;
  readonly otherUnit: number;
}> = { value: { role: 3, otherRole: -1.5, unit: 4, otherUnit: -3 }, cite: WEIGHED };

/** What is itself count times length is a total length; a copy of a column proves little. */
export const GUARD: Cited<{
  readonly sureTotal: number;
  readonly isTotal: number;
  readonly isTotalShare: number;
  readonly mostOfCopy: number;
}> = { value: { sureTotal: 15, isTotal: -60, isTotalShare: 0.5, mostOfCopy: 10 }, cite: WEIGHED };

/** When a reading is called proved. */
export const GRADE: Cited<{
  readonly share: number;
  readonly bars: number;
  readonly counts: number;
  readonly margin: number;
  readonly noRival: number;
}> = {
  value: {
    share: 0.7,
    bars: 3,
    counts: 4,
    // below it the runner-up is as good
    margin: 4,
    noRival: 99,
  },
  cite: WEIGHED,
};

/** When arithmetic outweighs words. Right readings kept .91 to 1.00 of their rows, wrong ones 0 to .31. */
export const WEIGH: Cited<{
  readonly wordsKeep: number;
  readonly arithmeticKeeps: number;
  readonly leastBars: number;
  readonly holdsBelow: number;
  readonly confirms: number;
  readonly clearlyKeeps: number;
  readonly wordsKeepNone: number;
  readonly manyBars: number;
  readonly same: number;
  readonly sameRows: number;
  readonly sameWithin: number;
  readonly otherWorth: number;
}> = {
  value: {
    wordsKeep: 0.4,
    arithmeticKeeps: 0.75,
    leastBars: 5,
    holdsBelow: 0.6,
    confirms: 0.75,
    // a list full of mistakes: half as many again as any wrong reading ever kept, where words keep next to none
    clearlyKeeps: 0.6,
    wordsKeepNone: 0.1,
    manyBars: 12,
    // columns that hold the same lengths or counts cannot contradict each other
    same: 0.6,
    sameRows: 2,
    sameWithin: 1e-6,
    otherWorth: 3,
  },
  cite: WEIGHED,
};

/** kg/m of round steel: 7850 kg/m3 and the diameters that are rolled somewhere, mm. */
export const ROUND_STEEL: Cited<{ readonly density: number; readonly diameters: readonly number[] }> = {
  value: {
    density: 7850,
    diameters: [
      4, 4.2, 5, 5.5, 6, 6.3, 7, 8, 9, 9.5, 10, 11, 12, 12.5, 13, 14, 16, 18, 19, 20, 22, 24, 25, 26, 28, 29,
      30, 32, 34, 35, 36, 38, 40, 45, 50,
    ],
  },
  cite: {
    document: "EN 10080: 7850 kg/m3 on the nominal area",
    provenance: "published",
    seen: "EC2 3.2.7(3)",
  },
};

/** Bar numbers that count eighths of an inch of diameter, below those of the American table. */
export const EIGHTHS_OF_INCH: Cited<{ readonly numbers: readonly number[]; readonly mmOfOne: number }> = {
  value: { numbers: [2, 2.5], mmOfOne: 3.175 },
  cite: { document: "bar numbers of Mexican lists, from 1/4 in up", provenance: "common practice" },
};

/** Sizes that most lists use, mm. */
export const EVERYDAY_SIZES: Cited<readonly number[]> = {
  value: [6, 8, 10, 12, 14, 16, 20, 25, 28, 32, 40],
  cite: { document: "sizes stocked in Europe and Asia", provenance: "common practice" },
};

/** Other tables of mass that a sheet may be written by. */
export const OTHER_TABLES = { inch: "ACI318:2019", soft: "JASS5:2018", canada: "CSA-A23.1:2019" } as const;

const BY_DEFINITION = {
  document: "international foot and pound of 1959",
  provenance: "published",
  seen: "BIPM SI brochure, non-SI units",
} as const;

export type LengthName = "mm" | "cm" | "m" | "in" | "ft";
export type MassName = "kg" | "t" | "lb";

/** m in one unit of length. */
export const METRES: Cited<Readonly<Record<LengthName, number>>> = {
  value: { mm: 0.001, cm: 0.01, m: 1, in: 0.0254, ft: 0.3048 },
  cite: BY_DEFINITION,
};

/** kg in one unit of mass. */
export const KILOGRAMS: Cited<Readonly<Record<MassName, number>>> = {
  value: { kg: 1, t: 1000, lb: 0.45359237 },
  cite: BY_DEFINITION,
};

/** Unit of a bar's length and of the total length beside it, as schedules write them. */
export const TOTAL_UNITS: Cited<readonly (readonly [LengthName, LengthName])[]> = {
  value: [
    ["mm", "m"],
    ["cm", "m"],
    ["m", "m"],
    ["mm", "mm"],
    ["in", "ft"],
    ["ft", "ft"],
    ["cm", "cm"],
    ["in", "in"],
    ["in", "m"],
    ["ft", "m"],
  ],
  cite: WEIGHED,
};

/** Unit of a length and of its legs; null leaves it open, both are the same. */
export const LEG_UNITS: Cited<readonly (readonly [LengthName | null, LengthName | null])[]> = {
  value: [
    [null, null],
    ["m", "mm"],
    ["m", "cm"],
    ["cm", "mm"],
    ["mm", "cm"],
    ["mm", "m"],
    ["ft", "in"],
    ["in", "ft"],
    ["cm", "m"],
  ],
  cite: WEIGHED,
};
