import { describe, expect, it } from "vitest";
import { readSchedule } from "../../../../core/schedule/read-schedule";
import { sheetFromRows } from "../../../../core/schedule/sheet";
import { standardNamed } from "../../shapes/resolved";

// a title that gives a unit means lengths and legs; running metres stay metres: common practice
describe("total lengths to which their head gives no unit", () => {
  const HEADS = ["Pos", "ds", "Stück", "Einzellänge", "Gesamtlänge", "Masse kg"];
  const read = (title: string, totals: readonly number[]) =>
    readSchedule(
      sheetFromRows("S", [
        [title],
        HEADS,
        // by hand: 20 x 2.5 m, 30 x 4 m, 16 x 1.95 m, at 0.888 kg/m
        ["1", 12, 20, 250, totals[0] ?? null, 44.4],
        ["2", 12, 30, 400, totals[1] ?? null, 106.56],
        ["3", 12, 16, 195, totals[2] ?? null, 27.71],
      ]),
      standardNamed("EC2:2004"),
    );

  it("are in metres where in the title's unit most were shorter than one bar", () => {
    const { bars, guesses } = read("Maße in cm", [50, 120, 31.2]);
    expect(bars.map(({ totalLength }) => totalLength)).toEqual([50_000, 120_000, 31_200]);
    expect(guesses?.filter(({ guess }) => guess === "words-contradicted")).toEqual([]);
  });

  it("are in the title's unit where they can be", () => {
    const { bars } = read("Maße in cm", [5000, 12_000, 3120]);
    expect(bars.map(({ totalLength }) => totalLength)).toEqual([50_000, 120_000, 31_200]);
  });
});
