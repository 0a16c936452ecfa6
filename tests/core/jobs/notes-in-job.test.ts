import { expect, it } from "vitest";
import { notesInJob, type PlacedBar } from "../../../core/jobs";

const bar = (row: number, pour: string, leftOut: string | null = null) =>
  ({ bar: { sheet: "Slab", row, pour, size: "H16" }, leftOut }) as PlacedBar;
const hidden = (...rows: number[]) => rows.map((row) => ({ sheet: "Slab", row, mass: 20 }));
const ALL = { pours: null, sizes: null };

it("tells the hidden rows of a book that count in the job, and no others", () => {
  const of = (rows: readonly PlacedBar[], filter = ALL as Parameters<typeof notesInJob>[2]) =>
    notesInJob({ notes: ["own"], hidden: hidden(7, 8), doubted: [] }, rows, filter);
  expect(of([bar(7, "P1"), bar(8, "P2")])).toEqual([
    "own",
    "2 hidden rows counted in the total (row 7, 8): 40.0 kg",
  ]);
  expect(of([bar(7, "P1", "revision B counts"), bar(8, "P2", "revision B counts")])).toEqual(["own"]);
  expect(of([bar(7, "P1"), bar(8, "P2")], { pours: ["P2"], sizes: null })).toEqual([
    "own",
    "1 hidden row counted in the total (row 8): 20.0 kg",
  ]);
});
