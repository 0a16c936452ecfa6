import { describe, expect, it } from "vitest";
import { jobPapers } from "../../../core/jobs/many/job-papers";
import { type Cell, sheetFromRows } from "../../../core/schedule";
import { Workshop } from "../../../core/shop/workshop";
import { resolveStandard } from "../../../core/standards";
import { isRefusal } from "../../../core/units/refusal";
import { barsOf, jobOf, type PlantedSchedule } from "./small-job";

const walls = barsOf("W1", "P1");
const slabs = barsOf("SL1", "P2");
const WALL: PlantedSchedule = {
  file: "quay/SQ-101.xlsx",
  number: "SQ-101",
  revision: "B",
  bars: [walls("01", "H16", 40, 3000), walls("02", "H12", 60, 2500), walls("03", "H20", 12, 6000)],
};
const SLAB: PlantedSchedule = {
  file: "quay/deck/SQ-102.xlsx",
  number: "SQ-102",
  revision: "A",
  bars: [slabs("01", "H10", 80, 5000), slabs("02", "H16", 30, 2200), slabs("03", "H32", 8, 4000)],
};

/** A file that lists schedules and holds no bars. */
function register(
  lines: readonly (readonly Cell[])[],
  head = ["Schedule No", "Title", "Rev", "Date"],
): PlantedSchedule {
  return { file: "quay/register.xlsx", sheet: "Register", job: null, head, bars: lines };
}
const line101 = ["SQ-101", "Quay wall", "B", "02/03/2026"];
const line102 = ["SQ-102", "Quay slab", "A", "09/03/2026"];

function told(...files: readonly PlantedSchedule[]): readonly string[] {
  const { codes, messages } = jobOf(files);
  return codes.map((code, at) => `${code} ${messages[at]}`);
}

describe("a register in a job's folder", () => {
  it("is no schedule and holds no bars, and is silent where all it lists lies there", () => {
    const { digests, tonnage } = jobOf([WALL, SLAB, register([line101, line102])]);
    expect(told(WALL, SLAB, register([line101, line102]))).toEqual([]);
    expect(digests[2]).toMatchObject({
      schedules: [],
      bars: [],
      isBroken: false,
      notes: ["a register of 2 schedules: no bars of its own"],
    });
    expect(tonnage.tonnage.total).toBe(jobOf([WALL, SLAB]).tonnage.tonnage.total);
  });

  it("tells a newer revision that it states, of several lines the newest", () => {
    const lines = [line101, line102, ["SQ-102", "Quay slab", "Rev C", "01/04/2026"], ["SQ-102", "", "B", ""]];
    expect(told(WALL, SLAB, register(lines))).toEqual([
      "JOB127 the register has revision C of 01/04/2026 of SQ-102, here is A: get the newer one before bars are cut",
    ]);
  });

  it("tells an older revision as a note, and one that nobody can put in order", () => {
    expect(told(WALL, SLAB, register([["SQ-101", "", "A", ""], line102]))).toEqual([
      "JOB127 the register has revision A of SQ-101, here is B, which is newer",
    ]);
    expect(told(WALL, SLAB, register([["SQ-101", "", 3, ""], line102]))).toEqual([
      "JOB127 the register has revision 3 of SQ-101, here is B: which is newer?",
    ]);
  });

  it("tells a schedule that is not here, but none that is not issued yet", () => {
    const lines = [
      line101,
      line102,
      ["SQ-105", "Fenders", "A", "03/03/2026"],
      ["SQ-106", "Crane beam", "", "to follow"],
      ["SQ-107", "Bollards WITHDRAWN", "A", ""],
    ];
    expect(told(WALL, SLAB, register(lines))).toEqual(["JOB107 the register lists SQ-105, not here"]);
  });

  it("says itself what is missing: a number that it leaves out is no gap", () => {
    const others = ["SQ-103", "SQ-105"].map(
      (number): PlantedSchedule => ({
        ...SLAB,
        file: `quay/${number}.xlsx`,
        number,
        bars: [barsOf(number, "P3")("41", "H16", 4, 2100)],
      }),
    );
    const lines = [line101, line102, ...others.map(({ number }) => [number ?? "", "", "A", ""])];
    expect(told(WALL, SLAB, ...others).map((words) => words.slice(0, 6))).toEqual(["JOB107"]);
    expect(told(WALL, SLAB, ...others, register(lines))).toEqual([]);
  });

  it("tells a schedule that it does not list, by its number's end too", () => {
    const short = register([
      ["101", "", "B", ""],
      ["102", "", "A", ""],
    ]);
    expect(told(WALL, SLAB, short)).toEqual([]);
    const third = { ...SLAB, file: "quay/SQ-103.xlsx", number: "SQ-103", bars: [slabs("09", "H16", 2, 900)] };
    expect(told(WALL, SLAB, third, short)).toEqual(["JOB128 SQ-103 not on the register: issued for use?"]);
  });

  it("is held against its own folder alone", () => {
    const other = { ...WALL, file: "pier/SQ-101.xlsx", job: "Kelp Dock", number: "KD-1" };
    const elsewhere = { ...register([["KD-1", "", "C", ""], line102]), file: "dock/register.xlsx" };
    expect(told(other, elsewhere)).toEqual([]);
  });
});

describe("sizes held in stock", () => {
  const noted = register([
    line101,
    line102,
    [],
    ["Bar sizes held in stock for this job: H10, H12, H16 and H20 (12 m)."],
  ]);

  it("tells the size that no list of stock holds, with its schedules", () => {
    expect(told(WALL, SLAB, noted)).toEqual([
      "JOB129 H32 is on no list of sizes in stock (H10, H12, H16, H20): order it, or ask the designer; 1 schedule",
    ]);
  });

  it("goes by the stock lines of a Shop sheet, unless one of them serves every size", () => {
    const yard = (lines: readonly (readonly Cell[])[]) => {
      const standard = resolveStandard("BS8666:2005");
      if (isRefusal(standard)) throw new Error("not held");
      const rows = [["Size", "Stock length", "Bars held", "Kind"], ...lines];
      const shop = new Workshop(sheetFromRows("Shop", rows), standard);
      return jobPapers("quay/SQ-101.xlsx", [], shop).held;
    };
    const remnant = ["H25", 4000, 2, "remnant"];
    expect(yard([["H16", 12000, null, "stock"], ["H20", 12000, null, "stock"], remnant])).toEqual([
      { book: "quay/SQ-101.xlsx", sheet: "Shop", sizes: ["H16", "H20"] },
    ]);
    expect(yard([["H16", 12000, null, "stock"], [null, 9000, null, "stock"], remnant])).toEqual([]);
    expect(yard([remnant])).toEqual([]);
  });

  it("is silent on sizes written with another letter or none, and where the list holds few of those in use", () => {
    const bare = register([line101, line102, [], ["Stock sizes: 10, 12, 16, 20, 32"]]);
    expect(told(WALL, SLAB, bare)).toEqual([]);
    const few = register([line101, line102, [], ["Stock sizes: H10, H12"]]);
    expect(told(WALL, SLAB, few)).toEqual([]);
  });
});
