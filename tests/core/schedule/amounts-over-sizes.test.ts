import { describe, expect, it } from "vitest";
import { runAudit } from "../../../core/audit/run-audit";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { heldStandard } from "../../_support/held-standard";

const standard = heldStandard("BS8666:2005");
const read = (rows: readonly (readonly Cell[])[]) => readSchedule(sheetFromRows("Lista", rows), standard);

describe("sizes with the unit of their amounts behind them", () => {
  it.each(["(m)", "[m]", "(kg)"])("should be sizes: Ø8 %s", (unit) => {
    const heads: Cell[] = ["Poz", "Çap (mm)", "Adet", "Boy (m)", `Ø8 ${unit}`, `Ø10 ${unit}`, `Ø12 ${unit}`];
    const { tables } = read([
      heads,
      [1, 8, 10, 2, 20],
      [2, 10, 10, 3, null, 30],
      [3, 12, 5, 4, null, null, 20],
    ]);
    expect(tables[0]?.bySize?.map(({ size, column }) => [size, column])).toEqual([
      ["8", 4],
      ["10", 5],
      ["12", 6],
    ]);
  });
});

describe("heads over sizes that stand side by side", () => {
  const heads: Cell[][] = [
    ["ELEMENTO", "VAR.", "PZAS", "LONG. m", "GANCHO C/U", "DESARR.", "LONG TOTAL", "PESO EN KG POR VARILLA"],
    [null, "No.", null, null, null, null, null, "#3", "#4", "#6"],
  ];
  /** m by hand: straight part and two hooks; kg by ASTM A615: #3 0.56, #4 0.994, #6 2.235 */
  const bars: Cell[][] = [
    ["Z-1", "#4", 72, 1.4, 0.21, 1.82, 131.04, null, 130.3],
    ["D-1", "#6", 64, 1.6, 0.31, 2.22, 142.08, null, null, 317.5],
    ["D-1", "#3", 56, 1.6, 0.11, 1.82, 101.92, 57.1],
    ["C-1", "#4", 18, 5.4, 0.26, 5.92, 106.56, null, 105.9],
    ["C-1", "#3", 168, 1.4, 0.11, 1.62, 272.16, 152.4],
    ["T-1", "#6", 46, 4.1, 0.31, 4.72, 217.12, null, null, 485.3],
    ["T-1", "#3", 208, 1.3, 0.11, 1.52, 316.16, 177],
    ["L-1", "#3", 25, 9.2, 0.16, 9.52, 238, 133.3],
  ];

  it("should be of all sizes and not the first one's own, whatever they say of one bar", () => {
    const { tables, guesses } = read([...heads, ...bars]);
    expect(tables[0]?.bySize?.map(({ size }) => size)).toEqual(["#3", "#4", "#6"]);
    expect(guesses?.filter(({ guess }) => guess === "words-contradicted")).toEqual([]);
  });

  it("should leave the length to the column that straight part and hooks make up", () => {
    const { bars: found, tables } = read([...heads, ...bars]);
    expect(tables[0]?.columns.get("length")?.column).toBe(5);
    expect(found.map(({ length }) => length)).toEqual([1820, 2220, 1820, 5920, 1620, 4720, 1520, 9520]);
    // 5.12 for 1.52
    const slip = bars.map((row, at) => (at === 6 ? row.map((cell) => (cell === 1.52 ? 5.12 : cell)) : row));
    const { findings } = runAudit({ sheets: [sheetFromRows("Lista", [...heads, ...slip])], standard });
    const loud = findings.filter(({ severity, row }) => severity !== "note" && row === 9);
    expect(loud.map(({ cell }) => cell)).toEqual(["G9"]);
  });

  it("should be sizes by whichever sign of the diameter they are written with", () => {
    const sheet = (sign: string): Cell[][] => [
      ["Mark", "Size", "Total no.", "Length mm", "Mass kg"],
      // kg by hand with 0.395, 0.617, 0.888 and 1.58
      ["1", `${sign}8`, 100, 2000, 79],
      ["2", `${sign}10`, 50, 3000, 92.55],
      ["3", `${sign}12`, 20, 4000, 71.04],
      ["4", `${sign}16`, 10, 5000, 79],
      [],
      ["Steel by class, kg"],
      [null, "A240", "A500C", "A500C", "A500C"],
      [null, `${sign}8`, `${sign}10`, `${sign}12`, `${sign}16`],
      [null, 79, 92.55, 71.04, 79],
    ];
    for (const sign of ["\u00d8", "\u2205", "\u2300"]) {
      expect(read(sheet(sign)).summaries?.[0]?.sizes.map(({ column }) => column)).toEqual([1, 2, 3, 4]);
      const { findings } = runAudit({ sheets: [sheetFromRows("List", sheet(sign))], standard });
      expect(findings.filter(({ code }) => /^SUM/.test(code))).toEqual([]);
    }
  });
});

describe("a row of kg/m between heads and bars", () => {
  // kg/m of NTP 341.031 tables as lists of Peru print them: 8 mm 0.395, 3/8" 0.56, 1/2" 0.994
  const heads: Cell[][] = [
    [
      "Elemento",
      "Ø",
      "N° de elem. iguales",
      "N° piezas por elem.",
      "Long. por pieza (m)",
      "Longitud (m) por Ø",
    ],
    [null, null, null, null, null, "8mm", '3/8"', '1/2"'],
  ];
  const rates: Cell[] = [null, null, null, null, "kg/m", 0.395, 0.56, 0.994];
  const bars: Cell[][] = [
    ["Zapata Z-1", '1/2"', 8, 8, 1.4, null, null, 89.6],
    ["Columna C-1", '3/8"', 8, 24, 1.58, null, 303.36],
    ["Viga VS-1", '1/2"', 4, 4, 6.4, null, null, 102.4],
    ["Viga VS-1", "8mm", 4, 36, 1.22, 175.68],
    ["Losa", "8mm", 1, 21, 8.9, 186.9],
  ];

  it("should leave the column beside it what its own head says", () => {
    const { tables } = read([...heads, rates, ...bars]);
    const length = tables[0]?.columns.get("length");
    expect([length?.column, length?.unit]).toEqual([4, "m"]);
    expect(tables[0]?.columns.has("unitMass")).toBe(false);
  });
});
