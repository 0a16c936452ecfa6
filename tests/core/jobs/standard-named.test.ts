import { describe, expect, it } from "vitest";
import { createLocalEngine } from "../../../addin/pane/engine/local-engine";
import { NO_OTHER_SHEETS } from "../../../addin/pane/engine/other-sheets";
import { type Book, checkBooks } from "../../../core/jobs";
import { type Cell, sheetFromRows } from "../../../core/schedule";
import { isRefusal } from "../../../core/units/refusal";

const HEADS = ["Bar mark", "Size", "Total no.", "Length mm", "Former"];
// DIN EN 1992-1-1/NA Table 8.1DE bends 16 mm about 4 d = 64 mm, as BS 8666 Table 2 does; 14 mm is no bar of BS 8666
const BARS: Cell[][] = [
  ["1", "14", 10, 2000, 56],
  ["2", "16", 10, 2000, 64],
];

const listOf = (title: string) => sheetFromRows("List", [[title], [], HEADS, ...BARS]);

function bookOf(titles: readonly string[], chosen: string | null = null): Book {
  const sheets = titles.map((title, at) => ({ name: `List ${at + 1}`, title }));
  return {
    name: "yard.xlsx",
    sheets: sheets.map(({ name }) => ({ name, visibility: "visible" })),
    read: (name) => ({ ...listOf(sheets.find((one) => one.name === name)?.title ?? ""), name }),
    setting: (name) => (name === "Barwright.Standard" ? chosen : null),
  };
}

function checked(book: Book, standard: string | null = null) {
  const [one] = checkBooks([book], { sheet: null, standard });
  if (one === undefined || isRefusal(one)) throw new Error("not checked");
  return one.report;
}

const saidOfStandard = (book: Book) =>
  checked(book)
    .findings.filter(({ code }) => code === "STANDARD103")
    .map(({ severity, sheet, cell }) => `${severity} ${sheet}!${cell}`);

describe("where nobody chose a standard", () => {
  it("the check goes by the document that the sheets name, and says so once", () => {
    const book = bookOf(["Stahl nach DIN 488", "Stahl nach DIN 488"]);
    const { standard, findings } = checked(book);
    expect(standard.id).toBe("DIN-EC2:2013");
    expect(saidOfStandard(book)).toEqual(["note List 1!A1"]);
    expect(findings.filter(({ code }) => code.startsWith("SIZE"))).toEqual([]);
    expect(findings.find(({ code }) => code === "STANDARD103")?.message).toBe(
      'nobody chose a standard, and the sheet names DIN-EC2:2013 ("DIN 488"): the check goes by it; functions that are given no standard go by BS8666:2005 until one is chosen',
    );
  });

  it("neither a findings sheet of an earlier check nor a letter beside the schedule has a say", () => {
    const beside = (title: string): Book => {
      const book = bookOf(["Stahl nach DIN 488"]);
      const other = sheetFromRows("Other", [
        [title],
        ["the sheet names BS8666:2005, and the check goes by it"],
      ]);
      return {
        ...book,
        sheets: [...book.sheets, { name: "Other", visibility: "visible" }],
        read: (name) => (name === "Other" ? other : book.read(name)),
      };
    };
    for (const title of ["Findings under DIN-EC2:2013", "Our other job goes by BS 8666:2005"])
      expect(checked(beside(title)).standard.id).toBe("DIN-EC2:2013");
  });

  it("asks where the bars have sizes that the document named does not hold", () => {
    const book = bookOf(["Stahl nach DIN 488"]);
    const bars = BARS.map(([mark, size, ...rest]) => [
      mark,
      size === "14" ? "T12" : `T${size}`,
      ...rest,
    ]) as Cell[][];
    const named: Book = {
      ...book,
      read: (name) => sheetFromRows(name, [["Stahl nach DIN 488"], [], HEADS, ...bars]),
    };
    expect(checked(named).standard.id).toBe("BS8666:2005");
    // it cannot be followed, so it is no choice between two
    const said = checked(named).findings.filter(({ code }) => code === "STANDARD103");
    expect(said.map(({ severity }) => severity)).toEqual(["note"]);
    expect(said[0]?.message).toContain("choose the document that the bars are of");
  });

  it("goes by ISO 3766 whatever letter a country writes before a size", () => {
    const bars: Cell[][] = [["1", "T16", 10, 2000, 64]];
    const read = (name: string) => sheetFromRows(name, [["Shapes to ISO 3766"], [], HEADS, ...bars]);
    expect(checked({ ...bookOf(["Shapes to ISO 3766"]), read }).standard.id).toBe("ISO3766:2003");
  });

  it("tells no leg as certainly short while it is asked which document the sheet goes by", () => {
    // BS 8666 Table 2 wants 115 mm at the end of a link of 8 mm (published); the list is to another document
    const rows: Cell[][] = [
      ["Tunnus", "Ø", "kpl", "Muoto", "a", "b", "c", "Pituus (mm)"],
      ["P1", "T12", 10, "00", 2600, null, null, 2600],
      ["P2", "T8", 20, "51", 240, 240, 110, 1180],
    ];
    const outcomesOf = (title: string) => {
      const read = (name: string) => sheetFromRows(name, [[title], [], ...rows]);
      const { findings } = checked({ ...bookOf([title]), read });
      return findings.filter(({ code }) => code === "BEND103").map(({ outcome }) => outcome);
    };
    expect(outcomesOf("Teräs DIN 488")).toEqual(["unsure"]);
    expect(outcomesOf("Muodot BS 8666")).toEqual(["broken"]);
  });

  it("holds lengths against the document whose letters the sizes have, however many are wrong", () => {
    // BS 8666:2020 Table 5, code 21: 400 + 700 + 200 - r 32 - 2 d 32 = 1236, in steps of 25 mm 1250
    const lengthsTold = (size: string) => {
      const rows: Cell[][] = [
        ["Bar mark", "Size", "Total no.", "Length mm", "Shape code", "A", "B", "C"],
        ...["1", "2", "3"].map((mark) => [mark, size, 4, 1500, "21", 400, 700, 200]),
      ];
      const read = (name: string) => sheetFromRows(name, [["Bars"], [], ...rows]);
      const { findings } = checked({ ...bookOf(["Bars"]), read });
      return findings.filter(({ code }) => code === "LEN102").length;
    };
    expect(lengthsTold("H16")).toBe(3);
    // no letter says whose list it is: its rows are held against each other
    expect(lengthsTold("16")).toBe(0);
  });

  it("asks where two documents contradict each other, and goes by the default", () => {
    const book = bookOf(["Bars to IS 2502", "Bars to AS 3600"]);
    expect(checked(book).standard.id).toBe("BS8666:2005");
    expect(saidOfStandard(book)).toEqual(["doubtful List 1!A1", "doubtful List 2!A1"]);
  });

  it("goes by the default where that is named too, or a design code that goes with it", () => {
    for (const title of ["Design to BS EN 1992-1-1", "Scheduled to BS 8666, steel to IS 2502"]) {
      expect(checked(bookOf([title])).standard.id).toBe("BS8666:2005");
      expect(saidOfStandard(bookOf([title]))).toEqual([]);
    }
  });

  it("takes no name from the Shop sheet or from the cells of a bar", () => {
    const shop = { ...bookOf(["", "to DIN 488"]) };
    const named: Book = {
      ...shop,
      sheets: [
        { name: "List 1", visibility: "visible" },
        { name: "Shop", visibility: "visible" },
      ],
      read: (name) =>
        name === "Shop"
          ? sheetFromRows("Shop", [["Laps to DIN 488"]])
          : sheetFromRows(name, [[...HEADS, "Remark"], ...BARS.map((bar) => [...bar, "tested to DIN 488"])]),
    };
    expect(checked(named).standard.id).toBe("BS8666:2005");
  });
});

it("a standard that the workbook or the user chose stands before what a sheet names", () => {
  expect(checked(bookOf(["to DIN 488"], "AS3600:2018")).standard.id).toBe("AS3600:2018");
  expect(checked(bookOf(["to DIN 488"]), "AS3600:2018").standard.id).toBe("AS3600:2018");
});

it("the pane goes by the same document as the command line", async () => {
  const sheet = listOf("Stahl nach DIN 488");
  const asked = { sheet, shop: null, otherSheets: NO_OTHER_SHEETS, settings: null };
  const view = await createLocalEngine().check({ ...asked, standard: "" });
  expect(view.standard.id).toBe("DIN-EC2:2013");
  const command = checked({ ...bookOf(["Stahl nach DIN 488"]), read: (name) => ({ ...sheet, name }) });
  expect(view.findings.map(({ code, cell, severity }) => ({ code, cell, severity }))).toEqual(
    command.findings.map(({ code, cell, severity }) => ({ code, cell, severity })),
  );
  const chosen = await createLocalEngine().check({ ...asked, standard: "BS8666:2005" });
  expect(chosen.standard.id).toBe("BS8666:2005");
});
