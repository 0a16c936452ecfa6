import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { openWorkbook } from "../../../addin/xlsx/read/open-workbook";
import type { Cell } from "../../../core/schedule";
import { booksWithShop } from "../../_support/bars-and-shop";
import { barwright } from "../../_support/command-line";

const HEADER: Cell[] = [
  ...["Pour", "Bar mark", "Type and size", "Total no.", "Length (mm)", "Shape code", "A", "B", "Former mm"],
];
const SHOP: Cell[][] = [
  ["size", "stock length mm", "bars held", "kind", "heat"],
  [16, 12000, null, "stock", "K1"],
  [],
  ["limit", "value"],
  ["hoist or crane kg", 60],
  ["lorry load kg", 900],
];

const { at, book } = booksWithShop("hidden", HEADER, SHOP);

/** 40 mm is below the 64 mm of BS 8666:2005 Table 2 for 16 mm. */
const bar = (mark: string, former: number): Cell[] => ["P1", mark, "H16", 10, 875, "11", 500, 400, former];
/** 10 x 0.875 m x 1.579 kg/m = 13.8 kg */
const HIDDEN = "1 hidden row counted in the total (row 3): 13.8 kg";
const hidden = () => book("hidden.xlsx", [bar("01", 64), bar("02", 64)], [2]);

describe("a hidden row that is counted", () => {
  it.each([
    ["loads", []],
    ["inspect", []],
    ["tonnage", []],
    ["tickets", ["--out", "t.html"]],
  ])("is named by %s", async (command, [option, name]: string[]) => {
    const more = option === undefined || name === undefined ? [] : [option, at(name)];
    expect((await barwright([command, hidden(), ...more])).err).toContain(HIDDEN);
    const sound = book("seen.xlsx", [bar("01", 64)]);
    expect((await barwright([command, sound, ...more])).err).not.toContain("hidden row");
  });

  it("is named on the labels' page, by compare in words and in JSON, and in a job's workbook", async () => {
    await barwright(["tickets", hidden(), "--labels", at("labels.html")]);
    expect(readFileSync(at("labels.html"), "utf8")).toContain(HIDDEN);
    const compared = await barwright(["compare", hidden(), hidden(), "--json"]);
    expect(compared.err).toContain(`newer: ${HIDDEN}`);
    expect(JSON.parse(compared.out).notes).toContain(`older: ${HIDDEN}`);
    await barwright(["tonnage", hidden(), "--by", "pour", "--out", at("job.xlsx")]);
    const job = openWorkbook(readFileSync(at("job.xlsx"))).read("Job");
    const said = Array.from({ length: job.rowCount }, (_, row) => String(job.valueAt(row, 0)));
    expect(said.some((words) => words.includes(HIDDEN))).toBe(true);
  });
});

describe("a bar that is unsafe for certain", () => {
  const unsafe = () => book("unsafe.xlsx", [bar("01", 40)]);
  const sound = () => book("sound.xlsx", [bar("01", 64)]);

  it.each(["check", "tonnage", "inspect", "heats"])(
    "ends %s with 1, and a sound one with 0",
    async (command) => {
      expect([
        (await barwright([command, unsafe()])).exit,
        (await barwright([command, unsafe(), sound()])).exit,
        (await barwright([command, sound()])).exit,
      ]).toEqual([1, 1, 0]);
    },
  );

  it("ends compare with 1 where the newer revision has it", async () => {
    expect([
      (await barwright(["compare", unsafe(), unsafe()])).exit,
      (await barwright(["compare", unsafe(), sound()])).exit,
    ]).toEqual([1, 0]);
  });
});
