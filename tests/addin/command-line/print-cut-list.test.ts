import { expect, it } from "vitest";
import { printCutList } from "../../../addin/command-line/print-cut-list";
import type { SizePlan } from "../../../core/cutting";

it("should name the unit of lengths that are no millimetres", () => {
  const plan = {
    boundIn: "bars",
    barsBought: 4,
    bars: 4,
    lowerBound: 4,
    pieces: 40,
    wasteRatio: 0,
    // 60 ft, 68 in and 40 in at 25.4 mm
    patterns: [
      {
        stock: 720 * 25.4,
        cuts: [{ length: 68 * 25.4, count: 10 }],
        times: 4,
        offcut: 40 * 25.4,
        remnant: false,
      },
    ],
  };
  const group = { size: "#5", grade: null, stock: [], rows: [], heats: [], plan, list: [{ heats: [] }] };
  const told = { groups: [group as unknown as SizePlan], refused: [], notToMake: [], toAsk: [] };
  const linesIn = (unit: "in" | "mm"): string => {
    const lines: string[] = [];
    const streams = { result: (line: string) => lines.push(line) };
    printCutList(told, { namesSheets: false, isSummary: false }, unit, streams as never);
    return lines.join("\n");
  };
  expect(linesIn("in")).toContain("  4 x 720 in: 10 x 68, rest 40 in");
  expect(linesIn("mm")).toContain("  4 x 18288: 10 x 1727.2, rest 1016");
});
