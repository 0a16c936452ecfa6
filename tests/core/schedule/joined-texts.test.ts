import { describe, expect, it } from "vitest";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { resolveStandard, type Standard } from "../../../core/standards";

const standard = resolveStandard("BS8666:2005") as Standard;

const merge = (top: number, left: number, bottom: number, right: number) => ({ top, left, bottom, right });
const read = (rows: Cell[][], merges: ReturnType<typeof merge>[] = []) =>
  readSchedule({ ...sheetFromRows("List", rows), merges }, standard);
const barsOf = (rows: Cell[][], merges: ReturnType<typeof merge>[] = []) =>
  read(rows, merges).bars.map(({ size, members, each, total, length }) => [
    size?.diameter,
    members,
    each,
    total,
    length,
  ]);

// heads as lists of several countries have them, bars invented; total lengths by hand, number x length
describe("texts that join a bar under a head of two rows", () => {
  const bars: Cell[][] = [
    ["1", "10 Ø12 L=240", "straight", null, 24],
    ["2", "20 Ø10 L=150", "straight", 30],
    ["3", "12 Ø12 L=310", "straight", null, 37.2],
    ["4", "8 Ø16 L=500", "straight", null, null, 40],
    ["5", "30 Ø10 L=120", "straight", 36],
  ];
  const WANTED = [
    [12, null, null, 10, 2400],
    [10, null, null, 20, 1500],
    [12, null, null, 12, 3100],
    [16, null, null, 8, 5000],
    [10, null, null, 30, 1200],
  ];
  const heads = (mark: string, shape: string, sum: string, sizes: readonly string[]): Cell[][] => [
    [mark, "", shape, sum],
    [null, null, null, ...sizes],
  ];
  const MERGES = [merge(0, 0, 1, 0), merge(0, 1, 1, 1), merge(0, 2, 1, 2), merge(0, 3, 0, 5)];

  it.each([
    ["Pos.", "Ferri", "Sagoma", "Lunghezza complessiva (m)", "D"],
    ["Поз.", "Пръти", "Форма (cm)", "Обща дължина, m", "N"],
    ["Marca", "Fierro", "Forma", "Largo total (m)", "Ø"],
    ["Mark", "Steel", "Shape", "Total length (m)", "A"],
  ])("are parted under %s, %s", (mark, own, shape, sum, letter) => {
    const head = heads(mark, shape, sum, [`${letter}10`, `${letter}12`, `${letter}16`]);
    head[0] = (head[0] as Cell[]).map((cell) => (cell === "" ? own : cell));
    expect(barsOf([...head, ...bars], MERGES)).toEqual(WANTED);
  });

  it("are parted where the number stands against the letter of the size", () => {
    const close = bars.map(([mark, text, ...rest]) => [
      mark as Cell,
      String(text).replace(" Ø", "T"),
      ...rest,
    ]);
    const head = [
      ["Pos.", "Stahl", "Form", "Gesamtlänge (m)"],
      [null, null, null, "10", "12", "16"],
    ];
    expect(barsOf([...head, ...close], MERGES)).toEqual(WANTED);
  });
});

describe("a joined count beside members and what each has", () => {
  const rows = (head: Cell[], count: (members: number, each: number) => number): Cell[][] => [
    head,
    ...(
      [
        [4, 9, 16, 1850],
        [3, 8, 20, 4500],
        [2, 26, 10, 1440],
        [2, 5, 16, 5200],
        [1, 24, 12, 4400],
      ] as const
    ).map(([members, each, size, length], at): Cell[] => [
      `B${at + 1}`,
      `${count(members, each)} Ø${size} L=${length}`,
      members,
      each,
    ]),
  ];

  it.each([
    [["Mark", "Bars (total pcs - size x cut length)", "Sets", "Pcs / set"]],
    [["Repère", "Barres (nb total - Ø - longueur)", "Nb éléments", "Nb par élément"]],
    [["Pos", "Stäbe", "Anzahl Bauteile", "je Bauteil"]],
  ])("is that of all where it is their product, under %j", (head) => {
    expect(barsOf(rows(head, (members, each) => members * each))[0]).toEqual([16, 4, 9, 36, 1850]);
  });

  it("is not read where it says again what each has", () => {
    const head = ["Mark", "Bars", "Sets", "No. in each"];
    expect(barsOf(rows(head, (_, each) => each))[0]).toEqual([16, 4, 9, null, 1850]);
  });
});

// kg by hand, number x length x kg/m of the UK three-decimal table, 10 mm by EN 10080 (0.395, 0.617, 0.888, 1.579)
describe("a joined count beside numbers of the rows", () => {
  it.each([
    ["Spanish", "medidas en cm", ["N°", "DONDE VA", "FIERRO", "COMO SE DOBLA", "KG"]],
    ["Polish", "wymiary w cm", ["Nr", "GDZIE", "PRĘT", "JAK GIĄĆ", "KG"]],
    ["French", "mesures en cm", ["N°", "OÙ", "FERS", "COMMENT", "KG"]],
  ])("is the row's own in a %s list, in the unit of its title", (_, title, heads) => {
    const rows: Cell[][] = [
      [title],
      heads,
      [1, "A", "10 Ø12 L=240", "20-220", 21.3],
      [2, null, "20 Ø10 L=150", "150", 18.5],
      [3, "B", "12 Ø16 L=310", "30-280", 58.7],
      [4, null, "40 Ø8 L=112", "24x24", 17.7],
      [5, "C", "8 Ø12 L=560", "560", 39.8],
      [6, null, "6 Ø16 L=400", "40-360", 37.9],
    ];
    expect(barsOf(rows).map(([size, , each, total, length]) => [size, each, total, length])).toEqual([
      [12, null, 10, 2400],
      [10, null, 20, 1500],
      [16, null, 12, 3100],
      [8, null, 40, 1120],
      [12, null, 8, 5600],
      [16, null, 6, 4000],
    ]);
  });
});
