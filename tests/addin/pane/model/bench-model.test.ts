import { beforeEach, describe, expect, test, vi } from "vitest";
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

  test("should show no bar and book none while a mark is asked for that no bar has", async () => {
    await bench.find("99");
    expect(bench.state).toMatchObject({
      ticket: null,
      lost: { words: "no bar of this sheet has the mark 99" },
    });
    await bench.tick(true);
    pane.say("something else");
    await bench.writeTrial({ machine: "", former: "", bentTo: 94, released: 90, heat: "" });
    expect(bench.state.ticket).toBeNull();
    expect(sheets.has("Bars made")).toBe(false);
    await bench.find("3");
    expect(bench.state).toMatchObject({ ticket: { mark: "03" }, lost: null });
  });

  test("should forget a mark that was not found once another workbook is opened", async () => {
    pane.choosePlace("bench");
    await bench.find("99");
    await pane.check();
    expect(bench.state.lost?.typed).toBe("99");
    await pane.workbookReplaced();
    await pane.check();
    await vi.waitFor(() => expect(bench.state).toMatchObject({ ticket: { mark: "01" }, lost: null }));
  });

  test("should say why a bar that is struck out, void or not read is not to be made", async () => {
    const VOID = ["Slab", "04", "H12", 6, 2000, "00", 2000, null, null, "VOID"];
    sheets.set("Bars", [[...BARS[0]!, "Remarks"], ...BARS.slice(1), VOID]);
    await pane.check();
    await bench.find("04");
    expect(bench.state.ticket).toBeNull();
    expect(bench.state.lost?.words).toBe("mark 04 is not to be made: row 5 says itself that it is void");
  });

  test("should offer every bar of a mark, and tick the one that was chosen alone", async () => {
    sheets.set("Bars", [...BARS, ["Slab", "03", "H12", 2, 1500, "00", 1500, null, null]]);
    await pane.check();
    await bench.find("03");
    expect(bench.state.ticket).toBeNull();
    expect(bench.state.alike.map(({ row, what }) => [row, what])).toEqual([
      [4, "H12, 2000"],
      [5, "H12, 1500"],
    ]);
    await bench.choose(5);
    expect(bench.state.ticket).toMatchObject({ mark: "03", cut: "1500" });
    expect(bench.state.alike.map(({ row }) => row)).toEqual([4]);
    expect(bench.state.ticket?.warnings.join()).toContain("mark 03 stands in row 4 too");
    await bench.tick(true);
    expect([...bench.state.made]).toEqual([5]);
    await bench.choose(4);
    expect(bench.state.ticket?.warnings.join()).toContain("mark 03 stands in row 5 too");
  });

  test("should write a trial sent while the ticket is made anew, or say why not", async () => {
    const again = bench.choose(2);
    const sent = bench.writeTrial({ machine: "", former: "", bentTo: 89, released: 94, heat: "" });
    await Promise.all([again, sent]);
    expect(pane.state.notice).toMatchObject({ kind: "problem" });
  });
});
