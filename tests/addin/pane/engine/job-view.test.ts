import { describe, expect, test } from "vitest";
import { createLocalEngine } from "../../../../addin/pane/engine/local-engine";
import { NO_OTHER_SHEETS } from "../../../../addin/pane/engine/other-sheets";
import { writeNewWorkbook } from "../../../../addin/xlsx/write/new-workbook";
import { type Cell, sheetFromRows } from "../../../../core/schedule";

const HEADER = [
  "Member",
  "Bar mark",
  "Type and size",
  "Total no.",
  "Length mm",
  "Shape code",
  "A mm",
  "Pour",
];
const file = (name: string, revision: string, ...rows: Cell[][]) => ({
  name,
  bytes: writeNewWorkbook({
    sheets: [{ name: "Bars", rows: [["Schedule", "HS-9", "Revision", revision], HEADER, ...rows] }],
    names: new Map(),
  }),
});
const bar = (mark: string, size: string, count: number, length: number, pour: string): Cell[] => [
  ...["Slab", mark, size, count, length, "00", length, pour],
];

async function withFiles(files: readonly { name: string; bytes: Uint8Array }[]) {
  const engine = createLocalEngine();
  const sheet = sheetFromRows("Schedule", [HEADER, bar("01", "H16", 10, 3000, "P1")]);
  await engine.check({
    ...{ sheet, shop: null, otherSheets: NO_OTHER_SHEETS, standard: "BS8666:2005", settings: null },
  });
  return engine.withFiles("Schedule", files);
}

// kg/m of the UK three-decimal table: 1.579 for 16 mm, 2.466 for 20, 0.888 for 12
describe("a sheet with other files", () => {
  test("should count the newest revision of each schedule, and name what it leaves out", async () => {
    const job = await withFiles([
      file("b.xlsx", "B", bar("01", "H20", 4, 5000, "P2"), bar("02", "H12", 8, 2000, "P1")),
      file("a.xlsx", "A", bar("01", "H20", 9, 5000, "P2"), bar("02", "H12", 8, 2000, "P1")),
    ]);
    // P1: 10 x 3 x 1.579 + 8 x 2 x 0.888 = 61.578 kg; P2: 4 x 5 x 2.466 = 49.32 kg
    expect(job).toMatchObject({ files: 2, schedules: 2, groupedBy: "pour", total: "0.111" });
    expect(job.lines).toEqual([
      { name: "P1", tonnes: "0.062" },
      { name: "P2", tonnes: "0.049" },
    ]);
    expect(job.notes).toContain("2 bar rows of older or doubled schedules in no total");
    expect(job.findings.some(({ places }) => places.some((place) => place.startsWith("a.xlsx")))).toBe(true);
  });

  test("should go on where a file cannot be read, and say which", async () => {
    const job = await withFiles([{ name: "torn.xlsx", bytes: new Uint8Array([1, 2, 3]) }]);
    expect(job).toMatchObject({ files: 0, total: "0.047" });
    expect(job.notes.filter((note) => note.startsWith("not read: torn.xlsx: "))).toHaveLength(1);
  });
});
