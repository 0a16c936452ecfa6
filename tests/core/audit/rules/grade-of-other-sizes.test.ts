import { describe, expect, it } from "vitest";
import rule from "../../../../core/audit/rules/grade-of-other-sizes";
import { runAudit } from "../../../../core/audit/run-audit";
import { gradesInNote } from "../../../../core/bar/grades-in-notes";
import { type Cell, sheetFromRows } from "../../../../core/schedule/sheet";
import { heldStandard } from "../../../_support/held-standard";
import { ruleCases } from "../rule-cases";

const bar = (size: string, grade: string | number, remark = "") => ({
  ...{ size, shape: "00", A: 2000, length: 2000, grade, remark },
});
const LIST = [
  ...["12", "12", "16", "16", "20", "20"].map((size) => bar(size, "B500B")),
  ...["6", "8", "8"].map((size) => bar(size, "S235")),
];

ruleCases(rule, {
  silent: [
    { rows: LIST },
    { rows: [...LIST, bar("16", "B500B")] },
    // links of the next sizes up
    { rows: [...LIST, bar("12", "S235")] },
    // no other bar of the size says what it has
    { rows: [...LIST, bar("14", "S235")] },
    // the grades are no matter of sizes
    { rows: [...LIST, bar("8", "B500B"), bar("16", "S235")] },
    { rows: [...LIST, bar("16", "S235"), bar("20", "S235")] },
    { rows: [...LIST, bar("16", "S235", "lifting loop")] },
  ],
  speaks: [
    {
      rows: [...LIST, bar("16", "S235")],
      says: [
        {
          cell: "N11",
          outcome: "unsure",
          message: "all other bars of S235 are up to 8 mm, and the others of 16 are B500B: ask the designer",
        },
      ],
    },
  ],
});

function told(
  title: string,
  ...bars: readonly (readonly [size: string, grade: string | number])[]
): string[] {
  const rows: Cell[][] = [[title], ["Mark", "Size", "Grade", "Number of bars", "Length mm"]];
  bars.forEach(([size, grade], at) => {
    rows.push([String(at + 1), size, grade, 4 + at, 2000 + 150 * at]);
  });
  const { findings } = runAudit({
    sheets: [sheetFromRows("List", rows)],
    standard: heldStandard("BS8666:2005"),
    isStandardAssumed: true,
    rules: [rule],
  });
  return findings.map(({ cell, message }) => `${cell}: ${message}`);
}

type Bars = readonly (readonly [string, string | number])[];
const of = (grade: string, ...sizes: readonly string[]): Bars => sizes.map((size) => [size, grade] as const);

describe("a grade of other bars", () => {
  // who rolls which letters: AS/NZS 4671 (N, R), TIS 24 and TIS 20 (DB, RB), SNI 2052 (D, P); from memory
  it.each([
    ["Australia", of("D500N", "N12", "N12", "N16", "N16", "N20"), of("R250N", "R10", "R10"), "N12"],
    ["Thailand", of("SD40", "DB12", "DB16", "DB16", "DB20"), of("SR24", "RB6", "RB9", "RB9"), "DB16"],
    ["Indonesia", of("BJTS420A", "D13", "D16", "D16", "D19"), of("BJTP280", "P8", "P8", "P10"), "D16"],
    ["New Zealand", of("500E", "HD12", "HD16", "HD16", "HD20"), of("300E", "D10", "D10", "D12"), "HD16"],
    ["South Africa", of("B450B", "Y12", "Y16", "Y16", "Y20"), of("R250N", "R8", "R8", "R10"), "Y12"],
  ])("should be told by the letters of the sizes: %s", (_, main, links, size) => {
    const wrong = links[0]?.[1] ?? "";
    expect(told("Bar list", ...main, ...links)).toEqual([]);
    const [found, another] = told("Bar list", ...main, ...links, [size, wrong]);
    expect(found).toMatch(
      new RegExp(`^C${main.length + links.length + 3}: ${wrong} stands with .* bars in all`),
    );
    expect(another).toBeUndefined();
  });

  it.each([
    ["Romania", "OB37 pentru Ø6 și Ø8; BST 500S pentru Ø10 și peste", "OB37", "BST 500S", "14"],
    ["Taiwan", "鋼筋規格：#3～#5 SD280W，#6 以上 SD420W", "SD420W", "SD280W", "#4"],
    ["Japan", "D10～D16 SD295、D19以上 SD345", "SD295", "SD345", "D22"],
    ["Korea", "D13 이하 SD400, D16 이상 SD500", "SD400", "SD500", "D16"],
    ["Turkey", "Ø8 ve altı S220, Ø10 ve üstü S420", "S220", "S420", "12"],
    ["Russia", "Арматура: Ø6-Ø8 А240, Ø10 и более А500С", "А240", "А500С", "14"],
    ["Germany", "Ø6 und Ø8 BSt 420S; ab Ø10 BSt 500S", "BSt 420S", "BSt 500S", "14"],
  ])("should be told by a note: %s", (_, note, wrong, right, size) => {
    const notes = gradesInNote(note);
    expect(notes).toHaveLength(2);
    const sizes = ["6", "8", "10", "12", "16", "20", "#3", "#4", "#6", "D10", "D13", "D19"];
    const kept = sizes.flatMap((one): [string, string][] => {
      const given = notes.filter(({ holds }) => holds(Number(one.replace(/\D/g, ""))));
      return one.startsWith(size.replace(/\d/g, "")) && given.length === 1
        ? [[one, given[0]?.typed ?? ""]]
        : [];
    });
    const list = [...kept, ...kept];
    expect(told(note, ...list, [size, right])).toEqual([]);
    const [found, another] = told(note, ...list, [size, wrong]);
    expect(found).toContain(
      `${wrong} is given to other sizes by a note of the list, which has ${right} for ${size}`,
    );
    expect(another).toBeUndefined();
  });

  it("should be told where each other size has one grade, and the size's others another", () => {
    const list = [...of("CA-50", "6.3", "8", "10", "12.5"), ...of("CA-60", "5", "5", "5")];
    expect(told("Lista de ferros", ...list)).toEqual([]);
    expect(told("Lista de ferros", ...list, ["5", "CA-50"])).toEqual([
      "C10: the 3 other bars of 5 are CA-60, and CA-50 stands with other sizes alone: ask the designer",
    ]);
    // a second size of both grades: grades do not go by sizes here
    expect(told("Lista de ferros", ...list, ["8", "CA-60"], ["5", "CA-50"])).toEqual([]);
  });

  it("should be told of a steel that is made thin alone", () => {
    // CA-60 is wire up to 10 mm (NBR 7480, from memory)
    const list = [...of("CA50", "10", "12.5", "12.5", "16"), ...of("CA60", "5", "5")];
    expect(told("Lista de ferros", ...list)).toEqual([]);
    expect(told("Lista de ferros", ...list, ["20", "CA60"])).toEqual([
      "C9: CA60 is made up to 10 mm, and this bar is 20: ask the designer which steel is meant",
    ]);
  });
});

describe("a note that says no sizes", () => {
  it.each([
    "Bars to AS/NZS 4671: N = D500N, R = R250N. Stock 12 m",
    "CA-50 e CA-60, barras de 12 m",
    "B500B, Ø 12",
  ])("%s", (note) => {
    expect(gradesInNote(note).length).toBeLessThan(2);
  });
});

describe("a grade that a note or letters give to others", () => {
  it("should be told where a note gives one to all steel", () => {
    const others = of("A630-420H", "8", "10", "12", "16");
    const bars: Bars = [...others, ["18", "A440-280H"]];
    // NCh 204 has both grades (from memory)
    expect(told("Todo el acero A630-420H. Barras de 12 m", ...bars)).toEqual([
      "C7: a note of the list gives A630-420H to all steel, and this bar has A440-280H: ask the designer",
    ]);
    expect(told("Acero A630-420H. Barras de 12 m", ...bars)).toEqual([
      "C7: a note of the list names A630-420H alone, as 4 other bars have it, and this bar has A440-280H: ask the designer",
    ]);
    expect(told("Acero A630-420H y A440-280H. Barras de 12 m", ...bars)).toEqual([]);
    expect(told("Barras de 12 m", ...bars)).toEqual([]);
    // two rows are no slip of one
    expect(told("Acero A630-420H", ...bars, ["18", "A440-280H"])).toEqual([]);
    expect(told("Todo el acero A630-420H, salvo A440-280H en estribos", ...bars)).toEqual([]);
    expect(told("Todo el acero A630-420H. Barras de 12 m", ...others)).toEqual([]);
  });

  it("should be told where a title names one grade of figures, and one row alone has another", () => {
    const others: Bars = ["#4", "#4", "#5", "#5", "#6"].map((size) => [size, 60]);
    // ASTM A615 has grade 40 in #3 to #6 (from memory)
    expect(told("ASTM A615 GR 60 UNLESS NOTED", ...others, ["#11", 40])).toEqual([
      "C8: a note of the list names 60 alone, as 5 other bars have it, and this bar has 40: ask the designer",
    ]);
    expect(told("ASTM A615 GR 60, ties GR 40", ...others, ["#3", 40])).toEqual([]);
    expect(told("Sheet 60 of 160", ...others, ["#11", 40])).toEqual([]);
  });

  it("should be told where all other letters of the grade have no other one", () => {
    // common practice in New Zealand: HD and HR are 500E, D and R 300E (AS/NZS 4671)
    const list: Bars = [
      ...of("500E", "HD12", "HD12", "HD16", "HD16", "HD20"),
      ...of("300E", "R10", "R10", "D12"),
    ];
    expect(told("", ...list)).toEqual([]);
    expect(told("", ...list, ["HD12", "300E"])).toEqual([
      "C11: 300E stands with R and D bars in all other rows, and 500E with the others such as HD12: ask the designer",
    ]);
    // D bars of both grades: letters tell nothing
    expect(told("", ...list, ["D16", "500E"], ["HD12", "300E"])).toEqual([]);
  });
});
