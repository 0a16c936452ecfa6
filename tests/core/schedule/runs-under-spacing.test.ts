import { describe, expect, it } from "vitest";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { resolveStandard, type Standard } from "../../../core/standards";

const standard = resolveStandard("BS8666:2005") as Standard;
/** invented bars: size, run and spacing in metres, how many, metres of one */
const BARS = [
  [12, 8, 0.2, 41, 6],
  [10, 5.4, 0.2, 28, 3.3],
  [12, 6, 0.15, 41, 2.4],
  [16, 4, 0.2, 21, 5.2],
  [8, 3, 0.1, 31, 1.3],
  [20, 4.5, 0.25, 19, 7.1],
] as const;
const columnsOf = (
  heads: Cell[][],
  row: (bar: (typeof BARS)[number], at: number) => Cell[],
  merges: object[] = [],
) => {
  const sheet = { ...sheetFromRows("List", [...heads, ...BARS.map(row)]), merges } as Parameters<
    typeof readSchedule
  >[0];
  const reading = readSchedule(sheet, standard);
  return {
    reading,
    at: (kind: string) => [...(reading.tables[0]?.columns ?? [])].find(([one]) => one === kind)?.[1].column,
  };
};
const totals = ([, , , count, length]: (typeof BARS)[number]): number => Number((count * length).toFixed(2));

describe("a length under a heading of spacing", () => {
  it.each([
    ["merged over both", [{ top: 0, left: 2, bottom: 0, right: 3 }]],
    ["over the first alone", []],
  ])("should be the run of the bars and no length of one: heading %s", (_, merges) => {
    const { reading, at } = columnsOf(
      [
        ["Jel", "\u00d8", "Kioszt\u00e1s", null, "Darab", "Hossz (m)", "\u00d6sszes hossz (m)"],
        [null, "mm", "hossz", "oszt\u00e1s", null, null, null],
      ],
      (bar, at) => [at + 1, bar[0], bar[1], bar[2], bar[3], bar[4], totals(bar)],
      merges,
    );
    expect([at("spacing"), at("length"), at("totalLength")]).toEqual([3, 5, 6]);
    expect(reading.bars.map(({ length }) => length)).toEqual(BARS.map(([, , , , length]) => length * 1000));
    expect(reading.rowClasses.slice(0, 2)).toEqual(["heading", "heading"]);
    expect(reading.held).toBeNull();
  });

  it("should give way under a word that nobody knows, wherever it stands", () => {
    const english = columnsOf(
      [
        ["Mark", "Size", "Zone of bars", null, "No.", "Length", "Total length"],
        [null, null, "Length", "Spacing", null, "m", "m"],
      ],
      (bar, at) => [`B${at + 1}`, bar[0], bar[1], bar[2], bar[3], bar[4], totals(bar)],
    );
    expect([english.at("length"), english.reading.held]).toEqual([5, null]);
    const german = columnsOf(
      [
        ["Pos", "\u00d8", "Stk", "L\u00e4nge m", "Verlegung", null],
        [null, null, null, null, "L\u00e4nge", "Abstand"],
      ],
      ([size, run, spacing, count, length], at) => [at + 1, size, count, length, run, spacing],
    );
    expect([german.at("length"), german.at("spacing")]).toEqual([3, 5]);
  });

  it("should leave the letter of a spacing to it", () => {
    const { at } = columnsOf(
      [
        ["Rep", "HA", "Espacement", null, "Nombre", "Longueur"],
        [null, null, "longueur", "e", null, "m"],
      ],
      ([size, run, spacing, count, length], row) => [`R${row + 1}`, size, run, spacing, count, length],
      [{ top: 0, left: 2, bottom: 0, right: 3 }],
    );
    expect([at("spacing"), at("E"), at("length")]).toEqual([3, undefined, 5]);
  });
});

it("leaves the letters of legs to those that stand side by side, whatever letter heads the spacing", () => {
  const sheet = sheetFromRows("List", [
    ["Pos.", "Stk.", "\u00d8", "Masse a - e (cm)", null, null, null, null, "Strecke", "e", "L\u00e4nge"],
    [null, null, "mm", "a", "b", "c", "d", "e", "m", "cm", "m"],
    [1, 41, 12, 860, null, null, null, null, 6, 15, 8.6],
    [2, 41, 12, 60, 18, 60, null, null, 6, 15, 1.38],
    [3, 20, 10, 20, 18, 30, 18, 20, null, null, 1.06],
  ]);
  const { tables } = readSchedule(sheet, standard);
  expect(tables[0]?.columns.get("E")?.column).toBe(7);
});
