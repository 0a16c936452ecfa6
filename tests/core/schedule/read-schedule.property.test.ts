import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { BarRow, ScheduleReading } from "../../../core/schedule/bar-row";
import { readSchedule } from "../../../core/schedule/read-schedule";
import type { RowReason } from "../../../core/schedule/rows/row-reason";
import { rowReasonText } from "../../../core/schedule/rows/row-reason-text";
import { type Cell, type Sheet, sheetFromRows } from "../../../core/schedule/sheet";
import type { Standard } from "../../../core/standards/port";
import { resolveStandard } from "../../../core/standards/resolve-standard";
import { FORM_HEADER, formRow } from "./patterns/pattern";

const STANDARDS = ["BS8666:2005", "ACI318:2019", "AS3600:2018"].map((id) => resolveStandard(id) as Standard);
const CLASSES = new Set(["bar", "heading", "total", "note", "blank", "unread"]);
const COLUMNS = 15;
const LEAST_ROWS = 12;
// two properties of 600 runs and at least 12 rows of 15: over 200,000 cells
const RUNS = 600;

/** Pieces that real cells are made of, and pieces that break readers. */
const PIECES = [
  ...[
    "",
    " ",
    "-",
    "--",
    "do",
    "ditto",
    '"',
    "''",
    "'",
    "″",
    "½",
    "1/2",
    "3'-4\"",
    "12-06",
    "1,250",
    "1.250,5",
    "1 250",
  ],
  ...[
    "H16",
    "T10@150",
    "25T16-03-200 T1",
    "2x3T20",
    "#5",
    "15M",
    "Ø",
    "phi16",
    "0.888",
    "O16",
    "1O",
    "dia",
    "16mm",
  ],
  ...[
    "var",
    "1200-1800 step 50",
    "1200-1800 step 0",
    "12000+2350 (lap)",
    "R1500",
    "R=",
    "(450)",
    "-450",
    "()",
    "(",
    "as above",
  ],
  ...[
    "same as 1",
    "same as",
    "BEAM B1 (6 Nos)",
    "Total",
    "Sub total",
    "C/F",
    "Wastage 3 %",
    "Summary",
    "Notes",
    "99*",
    "L11",
  ],
  ...[
    "500 +90 1200",
    "hook90 500",
    "300+1200+300",
    "1200/0",
    "8 Nos",
    "8 set",
    "9/m2",
    "4 x 12",
    "1e400",
    "NaN",
    "Infinity",
  ],
  ...[
    "__proto__",
    "constructor",
    "#REF!",
    "Err:508",
    "١٢٥٠",
    "１２",
    "١٢٫٥",
    "\u0000",
    "\ud800",
    "a".repeat(300),
    "9".repeat(400),
  ],
  ...[
    "EF",
    "T1",
    "L.H.",
    "superseded",
    "Mark",
    "Size",
    "A",
    "B",
    "Length",
    "Shape code",
    "No. of",
    "mm",
    "kg",
    "1900",
    "21",
    "4",
  ],
] as const;
const text = fc.oneof(
  { weight: 6, arbitrary: fc.constantFrom(...PIECES) },
  {
    weight: 2,
    arbitrary: fc
      .tuple(fc.constantFrom(...PIECES), fc.constantFrom(...PIECES))
      .map(([one, two]) => `${one}${two}`),
  },
  { weight: 1, arbitrary: fc.string({ unit: "grapheme", maxLength: 12 }) },
  { weight: 1, arbitrary: fc.string({ unit: "binary", maxLength: 8 }) },
);
const number = fc.oneof(
  fc.integer({ min: -5, max: 3000 }),
  fc.constantFrom(
    0,
    -0,
    45_720,
    1e9,
    1e308,
    -1e308,
    5e-324,
    Number.NaN,
    Number.POSITIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
  ),
  fc.double(),
);
const cell: fc.Arbitrary<Cell> = fc.oneof(
  { weight: 5, arbitrary: text },
  { weight: 3, arbitrary: number },
  { weight: 2, arbitrary: fc.constant(null) },
  { weight: 1, arbitrary: fc.boolean() },
  { weight: 1, arbitrary: fc.constantFrom("#REF!", "#VALUE!", "#N/A").map((error) => ({ error })) },
);
const row = fc.array(cell, { minLength: COLUMNS, maxLength: COLUMNS });

/** A bar row that reads without a question, some of its cells put into something else. */
const mutatedRow = fc
  .tuple(
    fc.integer({ min: 1, max: 40 }),
    fc.constantFrom("H8", "H10", "H12", "H16", "H20"),
    fc.array(fc.tuple(fc.integer({ min: 0, max: COLUMNS - 1 }), cell), { maxLength: 4 }),
  )
  .map(([count, size, mutations]) => {
    const cells = plainBar(count, size);
    for (const [column, put] of mutations) cells[column] = put;
    return cells;
  });

describe("readSchedule on random and mutated cells", () => {
  it("should class every row once and give no NaN, whatever stands in the cells", () => {
    const anyRow = fc.oneof({ weight: 2, arbitrary: row }, { weight: 3, arbitrary: mutatedRow });
    fc.assert(
      fc.property(
        fc.array(anyRow, { minLength: LEAST_ROWS, maxLength: 20 }),
        fc.nat(2),
        fc.boolean(),
        (rows, which, withHeader) => {
          const sheet = awkward(sheetFromRows("Sheet1", withHeader ? [FORM_HEADER, ...rows] : rows));
          const reading = readSchedule(sheet, STANDARDS[which] as Standard);
          checkClasses(sheet, reading);
          for (const bar of reading.bars) checkNumbers(bar);
        },
      ),
      { numRuns: RUNS, seed: 8666 },
    );
  });

  it("should count every good bar among mutated rows, and no other steel", () => {
    fc.assert(
      fc.property(
        fc.array(fc.oneof(mutatedRow, goodRow()), { minLength: LEAST_ROWS, maxLength: 20 }),
        (rows) => {
          const reading = readSchedule(
            sheetFromRows("Sheet1", [FORM_HEADER, ...rows]),
            STANDARDS[0] as Standard,
          );
          checkGood(rows, reading);
        },
      ),
      { numRuns: RUNS, seed: 3766 },
    );
  });
});

const GOOD = new WeakSet<readonly Cell[]>();

/** Good rows give their count, and no row gives another number than is typed in its total. */
function checkGood(rows: readonly (readonly Cell[])[], { bars }: ScheduleReading): void {
  const byRow = new Map(bars.map((bar) => [bar.row - 1, bar]));
  let sum = 0;
  let typedSum = 0;
  rows.forEach((typed, index) => {
    const bar = byRow.get(index);
    const total = typed[5];
    // a thousand million bars of one row are no count, and told so
    const isCount = typeof total === "number" && Number.isInteger(total) && total >= 0 && total < 1e9;
    if (bar !== undefined && isCount) {
      sum += bar.total ?? 0;
      typedSum += total;
    }
    if (!GOOD.has(typed)) return;
    const { members, each, length, shape, problems } = bar ?? {};
    const isWhole = members === 1 && each === total && length === 1900 && shape === "21" && problems === null;
    if (!isWhole) throw new Error(`good row ${index} reads as ${members} x ${each}, ${length}, ${shape}`);
  });
  expect(sum).toBe(typedSum);
}

function goodRow(): fc.Arbitrary<Cell[]> {
  return fc
    .tuple(fc.integer({ min: 1, max: 40 }), fc.constantFrom("H8", "H12", "H20"))
    .map(([count, size]) => {
      const cells = plainBar(count, size);
      GOOD.add(cells);
      return cells;
    });
}

function plainBar(count: number, size: string): Cell[] {
  const bar = {
    member: "Beam 1",
    mark: "7",
    size,
    members: 1,
    each: count,
    total: count,
    length: 1900,
    shape: "21",
  };
  return formRow({ ...bar, A: 1000, B: 400, C: 500 });
}

/** The same sheet with every optional answer of a host, wrong ones among them. */
function awkward(sheet: Sheet): Sheet {
  return {
    ...sheet,
    isDate: (row, column) => (row + column) % 3 === 0,
    shown: (row, column) => ((row + column) % 5 === 0 ? "(450)" : undefined),
    isHiddenRow: (row) => row % 7 === 0,
    isStruckThrough: (row) => row % 11 === 0,
    fill: (row) => (row % 13 === 0 ? "#FFFF00" : undefined),
    merges: [
      { top: 2, left: 0, bottom: 4, right: 0 },
      { top: 0, left: 3, bottom: 0, right: 6 },
      { top: 30, left: 20, bottom: 40, right: 22 },
    ],
  };
}

function checkClasses(sheet: Sheet, { rowClasses, rowReasons, bars }: ScheduleReading): void {
  expect(rowClasses).toHaveLength(sheet.rowCount);
  const barRows = new Set(bars.map((bar) => bar.row));
  rowClasses.forEach((one, index) => {
    if (!CLASSES.has(one)) throw new Error(`row ${index} is classed ${one}`);
    const isBlank = !sheet.rowCells?.(index).some((value) => value !== null && String(value).trim() !== "");
    if (one === "blank" && !isBlank) throw new Error(`row ${index} is not blank`);
    if (rowReasonText(rowReasons[index] as RowReason) === "")
      throw new Error(`row ${index} is ${one} without a reason`);
    if ((one === "bar") !== barRows.has(index)) throw new Error(`row ${index} is ${one} beside its bars`);
  });
}

function checkNumbers(bar: BarRow): void {
  const {
    members,
    each,
    total,
    length,
    mass,
    former,
    radius,
    unitMass,
    totalLength,
    spacing,
    lap,
    dims,
    varying,
  } = bar;
  const numbers = [
    members,
    each,
    total,
    length,
    mass,
    former,
    radius,
    unitMass,
    totalLength,
    spacing,
    lap,
    bar.size?.diameter,
  ];
  for (const one of [
    ...numbers,
    ...dims,
    ...(bar.legs ?? []),
    varying?.from,
    varying?.to,
    varying?.lengths,
  ]) {
    if (one !== null && one !== undefined && !(Number.isFinite(one) && one >= 0)) {
      throw new Error(
        `${one} in ${JSON.stringify(bar, (key, value) => (key === "table" ? undefined : value))}`,
      );
    }
  }
  if (dims[dims.length - 1] === null) throw new Error("a blank ends the dimensions");
  for (const { reason } of bar.problems ?? []) {
    if (reason === "" || /NaN|undefined|\[object/.test(reason.replace(/".*"/g, "")))
      throw new Error(`said: ${reason}`);
  }
}
