import { beforeEach, describe, expect, test } from "vitest";
import { createLocalEngine } from "../../../../addin/pane/engine/local-engine";
import { BenchModel } from "../../../../addin/pane/model/bench-model";
import { PaneModel } from "../../../../addin/pane/model/pane-model";
import type { Cell } from "../../../../core/schedule";
import { bookInMemory } from "./book-in-memory";

const BARS: Cell[][] = [
  ["Member", "Bar mark", "Type and size", "Total no.", "Length mm", "Shape code", "A mm", "B mm", "C mm"],
  ["Slab", "01", "H16", 10, 2800, "21", 700, 1450, 700],
  ["Slab", "02", "H20", 4, 3000, "00", 3000, null, null],
  ["Slab", "03", "H12", 6, 2000, "00", 2000, null, null],
];

let sheets: Map<string, Cell[][]>;
let pane: PaneModel;
let bench: BenchModel;

beforeEach(async () => {
  sheets = new Map([["Bars", BARS]]);
  const { port } = bookInMemory(sheets);
  const engine = createLocalEngine();
  pane = new PaneModel(port, engine);
  await pane.start();
  bench = new BenchModel(port, pane, engine, async () => {});
  await bench.choose(2);
});

describe("BenchModel", () => {
  test("should do what is asked while something else is being done, in its order", async () => {
    const found = bench.find("02");
    const stepped = bench.step(1);
    await Promise.all([found, stepped]);
    expect(bench.state.ticket?.mark).toBe("03");
  });

  test("should tick the mark that was in sight when it was asked to", async () => {
    const found = bench.find("02");
    const ticked = bench.tick(true);
    await Promise.all([found, ticked]);
    expect(sheets.get("Bars made")?.[1]?.slice(0, 3)).toEqual(["Bars", "Slab", "01"]);
    expect([...bench.state.made]).toEqual([2]);
  });

  test("should write a trial sent while the ticket is made anew, or say why not", async () => {
    const again = bench.choose(2);
    const sent = bench.writeTrial({ machine: "", former: "", bentTo: 89, released: 94, heat: "" });
    await Promise.all([again, sent]);
    expect(pane.state.notice).toMatchObject({ kind: "problem" });
  });
});
