import { describe, expect, it } from "vitest";
import { runAudit } from "../../../core/audit/run-audit";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { type Cell, type Sheet, sheetFromRows } from "../../../core/schedule/sheet";
import { standardNamed } from "../shapes/resolved";

/** Characters that a cell of a spreadsheet holds at most. */
const LONGEST = 32_767;
const MOST_MILLISECONDS = 200;
const LONGEST_MESSAGE = 1_000;
const standard = standardNamed("BS8666:2005");

const HEADER: readonly Cell[] = [
  ..."Member|Bar mark|Type and size|No. of mbrs|No. in each|Total no.|Length of each bar|Shape code".split(
    "|",
  ),
  ..."A|B|C|D|E/R|Rev letter|Grade|Former mm|Coating|Spacing mm|Mass kg|Remarks".split("|"),
];
const ROW: readonly Cell[] = [
  ..."B1|01|H16".split("|"),
  ...[1, 48, 48, 4600, "21", 600, 3450, 600],
  ...[null, null, "A", "B500B", null, null, null, null, null],
];

function filled(before: string, part: string, behind = ""): string {
  return before + part.repeat(LONGEST).slice(0, LONGEST - before.length - behind.length) + behind;
}

/** One legal text each of a cell's greatest length, made to be read slowly. */
const TEXTS: Readonly<Record<string, string>> = {
  digits: filled("", "1"),
  "a negative number of digits": filled("-", "1"),
  "a number and blanks": filled("600", " ", "x"),
  "a size and blanks": filled("H16", " ", "x"),
  "a number, blanks and a unit": filled("600", " ", "mm"),
  "blanks between a number and a lap": filled("600 +", " ", "lap 40"),
  "wide blanks": filled("1", "\u00a0", "x"),
  "digits and blanks": filled("", "1 ", "x"),
  dots: filled("1", ".", "x"),
  "dots and digits": filled("", "1..", "x"),
  dashes: filled("", "1-", "x"),
  "dashes alone": filled("", "-", "x"),
  commas: filled("", "1,1", "x"),
  "commas alone": filled("", ",", "x"),
  "opening brackets": filled("", "("),
  "closed brackets": `${"(".repeat(16_383)}1${")".repeat(16_383)}`,
  "square brackets": `${"[".repeat(16_383)}1${"]".repeat(16_383)}`,
  "blanks in brackets": filled("(", " ", "x)"),
  "brackets one after another": filled("", "1) 2( "),
  "radii in radii": `${"R(".repeat(10_922)}1${")".repeat(10_922)}`,
  "radii of radii": filled("", "R", "1"),
  "equals of radii": filled("", "R=", "1"),
  "feet marks": filled("", "1'", "x"),
  apostrophes: filled("", "'", "x"),
  "feet and inches": filled("", "1'1", "x"),
  "feet in words": filled("", "1 ft 1 ", "x"),
  sums: filled("", "1+", "x"),
  "sums with blanks": filled("", "1 + ", "x"),
  products: filled("", "1x", "y"),
  "products with blanks": filled("", "1 x ", "y"),
  spacings: filled("H16", "@100"),
  "spacings with words": filled("H16", " c/c 100"),
  "spacing words alone": filled("H16", " c/c", "!"),
  fractions: filled("", "½"),
  "fractions in digits": filled("", "1/2 ", "x"),
  words: filled("", "a "),
  "one word": filled("", "a"),
  slashes: filled("", "/"),
  "words and slashes": filled("", "a / "),
  "words and ands": filled("", "a & b and "),
  "parts of a label": filled("", "ab-"),
  layers: filled("16T16-01-200 ", "T1 ", "!"),
  "sizes again": filled("", "H16 ", "!"),
  "letters for digits": filled("", "O", "!"),
  "letters and digits": filled("", "1l", "!"),
  "signs that turn the writing": filled("", "\u202e1"),
  "signs that are not seen": filled("", "\u200b"),
  "line ends": filled("", "\n", "x"),
  "lines of a letter": filled("", "a\n"),
  steps: filled("1-2 step", " step"),
  "laps included": filled("1 incl", " lap of", "!"),
  "laps in brackets": filled("1 + (lap", " (lap"),
  "a path of turns": filled("", "500 +90 ", "500"),
  "a path of one turn": filled("500 +", "1", " 500"),
  "a radius of a path": filled("500 +90r", "1", " 500"),
  hooks: filled("", "hook90 "),
  "plus and minus": filled("", "+-"),
  rates: filled("", "1 per "),
  counts: filled("", "1 no. ", "!"),
  units: filled("", "1 mm ", "!"),
  "diameter words": filled("", "dia ", "1"),
  "values behind letters": filled("", "A=1 "),
  "labels of a title": filled("", "Member: "),
  "same as": filled("same as ", "a-", "!"),
  pictures: filled("", "😀"),
  "halves of pictures": filled("", "\ud800"),
  accents: filled("a", "\u0301"),
  "places of a message": filled("", "{part}"),
  "places of a replacement": filled("", "$&"),
  totals: filled("", "total 1 "),
  "sums in words": filled("", "12 nos H16 = 1.2 t, "),
  revisions: filled("", "rev A "),
  "noughts of a revision": filled("P", "0", "x"),
};
const texts = Object.entries(TEXTS);

/** The text in every cell of a row, each in a row of its own, and over, in and under the list. */
function* places(text: string): Generator<[string, Sheet]> {
  for (let column = 0; column < HEADER.length; column += 1) {
    yield [String(HEADER[column]), sheetOf([HEADER, ROW, withCell(ROW, column, text), ROW])];
  }
  yield [
    "a path",
    sheetOf([
      HEADER,
      ROW,
      withCell(
        ROW.map((cell, at) => (at > 7 ? null : cell)),
        7,
        text,
      ),
    ]),
  ];
  yield ["the title", sheetOf([[text], HEADER, ROW, ROW])];
  yield ["a line of its own", sheetOf([HEADER, ROW, [text], ROW])];
  yield ["two cells of a line", sheetOf([HEADER, ROW, [text, null, text], ROW])];
  for (const column of [1, 2, 19])
    yield [`head ${column}`, sheetOf([withCell(HEADER, column, text), ROW, ROW])];
}

function withCell(row: readonly Cell[], column: number, cell: Cell): readonly Cell[] {
  return row.map((own, at) => (at === column ? cell : own));
}

function sheetOf(rows: readonly (readonly Cell[])[]): Sheet {
  return sheetFromRows("S", [["Bar schedule"], ...rows]);
}

/** Of five tries the fastest, in time of our own on the processor: a busy machine is no slow reader. */
function milliseconds(run: () => void): number {
  let least = Number.POSITIVE_INFINITY;
  for (let turn = 0; turn < 5 && least > MOST_MILLISECONDS; turn += 1) {
    const before = process.cpuUsage();
    run();
    const { user, system } = process.cpuUsage(before);
    least = Math.min(least, (user + system) / 1000);
  }
  return least;
}

describe("the longest cells", () => {
  it("should be of sixty kinds or more and all of a cell's greatest length", () => {
    expect(texts.length).toBeGreaterThanOrEqual(60);
    for (const [name, text] of texts) expect(text.length, name).toBeGreaterThan(LONGEST - 3);
  });

  it.each(texts)("should be read fast wherever they stand: %s", (_, text) => {
    for (const [place, sheet] of places(text)) {
      const used = milliseconds(() => readSchedule(sheet, standard));
      expect(used, place).toBeLessThan(MOST_MILLISECONDS);
    }
  });

  it.each(texts)("should be judged fast wherever words stand: %s", (_, text) => {
    for (const [place, sheet] of places(text)) {
      if (!/^(Member|Remarks|Spacing mm|Grade|Coating|the title|a line of its own)$/.test(place)) continue;
      const used = milliseconds(() => runAudit({ sheets: [sheet], standard }));
      expect(used, place).toBeLessThan(MOST_MILLISECONDS);
    }
  });

  it.each(texts)("should spoil no other row and make no long message: %s", (_, text) => {
    const rows = HEADER.map((_, column) => withCell(ROW, column, text));
    const { findings, rows: classes } = runAudit({
      sheets: [sheetOf([HEADER, ROW, ...rows, ROW])],
      standard,
    });
    expect(classes.bars).toBeGreaterThanOrEqual(HEADER.length);
    const long = findings.filter(({ message }) => message.length > LONGEST_MESSAGE);
    expect(long.map(({ code, message }) => `${code} ${message.length}`)).toEqual([]);
  });
});
