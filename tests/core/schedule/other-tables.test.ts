import { describe, expect, it } from "vitest";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { resolveStandard } from "../../../core/standards";
import type { Standard } from "../../../core/standards/port";

const standard = resolveStandard("BS8666:2020") as Standard;
const HEADS = ["Member", "Mark", "Size", "Total no.", "Length (mm)", "Shape", "Mass (kg)"];
// kg by 0.888 kg/m of 12 mm and 1.579 kg/m of 16 mm
const BARS: Cell[][] = [
  ["Kerb K1", "01", "H12", 20, 2500, "00", 44.4],
  ["Kerb K1", "02", "H16", 10, 3000, "00", 47.4],
  ["Wall W1", "03", "H12", 60, 4000, "00", 213.1],
  ["Wall W1", "04", "H16", 40, 3000, "00", 189.5],
  ["Slab S1", "05", "H16", 24, 6000, "00", 227.4],
  ["Slab S1", "06", "H12", 36, 5000, "00", 159.8],
];
const read = (rows: Cell[][]) => readSchedule(sheetFromRows("S", [HEADS, ...BARS, ...rows]), standard);

describe("rows below a list that are unlike its bars", () => {
  it("should be sums where their numbers are what the bars make, under whatever columns they stand", () => {
    // under mark and size: kg of each member by the rows above, 44.4 + 47.4 and so on
    const reading = read([
      [null, "Kerb K1", 91.8],
      [null, "Wall W1", 402.6],
      [null, "Slab S1", 387.2],
    ]);
    expect(reading.bars).toHaveLength(BARS.length);
    expect(reading.rowClasses.slice(-3)).toEqual(["total", "total", "total"]);
  });

  it("should be told as unread where they are no sums, and not cell by cell", () => {
    const reading = read([
      ["Cover", null, "top", 0.617, null, null, null],
      ["Cover", null, "side", 0.25, null, null, null],
      ["Cover", null, "base", 0.378, null, null, null],
    ]);
    expect(reading.bars).toHaveLength(BARS.length);
    expect(reading.rowClasses.slice(-3)).toEqual(["unread", "unread", "unread"]);
  });

  it("should be bars still with one slip or two each, and where a bar follows", () => {
    const slips: Cell[][] = [
      ["Slab S2", "07", "H12", null, 5000, "00", 88.8],
      ["Slab S2", "08", "H1Z", 10.5, 4000, "00", 35.5],
      ["Slab S2", null, "H16", 12, null, "00", 56.8],
    ];
    expect(read(slips).bars).toHaveLength(BARS.length + slips.length);
    const last: Cell[] = ["Slab S3", "09", "H12", 10, 1000, "00", 8.9];
    const among = [...slips, ["Slab S3", null, "Z", 1.5, null, null, null] as Cell[], last];
    expect(read(among).bars).toHaveLength(BARS.length + among.length);
  });

  it("should be a summary by member under its own words", () => {
    const reading = read([
      [],
      ["Member", "Mass (kg)"],
      ["Kerb K1", 91.8],
      ["Wall W1", 402.6],
      ["Slab S1", 387.2],
    ]);
    expect(reading.bars).toHaveLength(BARS.length);
    expect(reading.summaries?.[0]?.rows).toHaveLength(3);
  });

  it("should hold a line of sums whose words stand behind the numbers, or are numbers in a text", () => {
    // m: 50 + 240 + 180 and 30 + 120 + 144
    const reading = read([
      [],
      [8, 10, 12, 16, "Total", "Size"],
      [0, 0, 470, 294, 764, "Length m"],
      ["0,0", "0,0", "417,3", "464,3", "881,6", "Mass kg"],
    ]);
    expect(reading.bars).toHaveLength(BARS.length);
    expect(reading.summaries?.[0]?.rows).toHaveLength(2);
    expect(reading.summaries?.[0]?.sizes.map(({ size }) => size)).toEqual(["8", "10", "12", "16"]);
  });

  it("should take the title of sums before the first of them for no mark of a bar", () => {
    const reading = read([
      ["Abstract", null, "H12", null, null, null, 417.3],
      [null, null, "H16", null, null, null, 464.3],
    ]);
    expect(reading.bars).toHaveLength(BARS.length);
    expect(reading.summaries?.[0]?.rows).toHaveLength(2);
  });
});
