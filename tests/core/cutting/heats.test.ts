import { describe, expect, it } from "vitest";
import type { CuttingPlan } from "../../../core/cutting";
import { drawBars, heatsOfRows } from "../../../core/cutting/heats";

/** One pattern of 12 m cut five times, twice 6 m from each; only what a draw reads is filled in. */
const plan = {
  patterns: [{ stock: 12000, remnant: false, cuts: [{ length: 6000, count: 2 }], times: 5, offcut: 0 }],
} as unknown as CuttingPlan;
const line = (heat: string | null, count: number | null, length = 12000) => ({
  length,
  count,
  remnant: false,
  heat,
});

describe("drawBars", () => {
  it("takes counted lines in the order of the sheet, then the one that serves as many as needed", () => {
    const lines = [line("open", null), line("K1", 2), line("short", 9, 9000), line("K2", 1)];
    expect(drawBars(lines, plan, new Map())).toEqual([
      [
        { heat: "K1", bars: 2 },
        { heat: "K2", bars: 1 },
        { heat: "open", bars: 2 },
      ],
    ]);
  });

  it("promises no counted bar twice over two draws", () => {
    const lines = [line("K1", 7), line(null, null)];
    const held = new Map();
    expect(drawBars(lines, plan, held)[0]).toEqual([{ heat: "K1", bars: 5 }]);
    expect(drawBars(lines, plan, held)[0]).toEqual([
      { heat: "K1", bars: 2 },
      { heat: null, bars: 3 },
    ]);
  });
});

describe("heatsOfRows", () => {
  it("deals every piece once, those of the first bars to the first row", () => {
    const [first, second] = [
      { length: 6000, count: 3 },
      { length: 6000, count: 7 },
    ] as const;
    const drawn = [
      [
        { heat: "K1", bars: 2 },
        { heat: "K2", bars: 3 },
      ],
    ];
    expect(heatsOfRows(plan, [first, second], drawn)).toEqual([
      { row: first, heat: "K1", pieces: 3 },
      { row: second, heat: "K1", pieces: 1 },
      { row: second, heat: "K2", pieces: 6 },
    ]);
  });
});
