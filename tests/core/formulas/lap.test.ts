import { describe, expect, it } from "vitest";
import { LAP } from "../../../core/formulas/lap";
import { ownOfSheets } from "../../../core/own";
import { type Cell, isCellError, sheetFromRows } from "../../../core/schedule/sheet";

// an invented project's table: the figures are its designer's, none is ours
const TABLE: Cell[][] = [
  ["size", "grade", "case", "lap"],
  ["12", null, "good", 540],
  ["12", null, "poor", 770],
  ["16", "B500B", null, "0.9 m"],
  ["16", null, null, 960],
  ["R10", null, null, 400],
];

const ask = (name: string, ...args: Cell[]) => {
  const own = ownOfSheets([sheetFromRows(name, TABLE)]) ?? undefined;
  const environment = { defaultStandard: "BS8666:2005", ...(own === undefined ? {} : { own }) };
  const cell =
    LAP.call(
      args.map((arg) => [[arg]]),
      environment,
    )[0]?.[0] ?? null;
  return cell !== null && isCellError(cell) ? `${cell.error} ${cell.message}` : cell;
};

describe.each(["Standard", "Shop"])("BAR.LAP with a table on the sheet %s", (sheet) => {
  it("gives the project's lap of the bar, its grade and its case", () => {
    expect(ask(sheet, "H12", null, "poor")).toBe(770);
    expect(ask(sheet, "H16", "B500B")).toBe(900);
    expect(ask(sheet, "H16", "B500C")).toBe(960);
    expect(ask(sheet, "R10")).toBe(400);
  });

  it("asks which where several fit, and says what is held where none does", () => {
    expect(ask(sheet, "H12")).toBe(
      "#VALUE! the table of laps has several for H12: say which, 12, good; 12, poor",
    );
    expect(ask(sheet, "H25")).toMatch(/^#N\/A the table of laps holds none for H25: it has 12, good; /);
    expect(ask(sheet, "H10")).toMatch(/^#N\/A/);
    expect(ask(sheet, "H12", null, "wet")).toMatch(/^#N\/A/);
  });
});

describe("BAR.LAP without a table", () => {
  it("gives no figure of its own", () => {
    expect(ask("Bars", "H12")).toMatch(/^#N\/A .*design lengths are the designer's$/);
  });
});
