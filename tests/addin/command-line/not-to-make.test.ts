import { readFileSync, writeFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { openWorkbook } from "../../../addin/xlsx/read/open-workbook";
import { writeNewWorkbook } from "../../../addin/xlsx/write/new-workbook";
import type { Cell } from "../../../core/schedule";
import { booksWithShop } from "../../_support/bars-and-shop";
import { barwright } from "../../_support/command-line";

const HEADER = ["Bar mark", "Type and size", "Total no.", "Length (mm)", "Shape code", "A", "B", "Former mm"];
/** 40 mm is below the 64 mm of BS 8666:2005 Table 2 for 16 mm, 64 mm is not. */
const bar = (mark: string, former: number): Cell[] => [mark, "H16", 10, 875, "11", 500, 400, former];
/** a piece longer than any stock */
const LONG: Cell[] = ["09", "H16", 2, 19000, "00", 19000];
const SHOP: Cell[][] = [
  ["size", "stock length mm", "bars held", "kind", "heat"],
  [16, 12000, null, "stock", "K1"],
  [],
  ["limit", "value"],
  ["hoist or crane kg", 60],
  ["lorry load kg", 900],
];
const WHY = "former 40 mm is below the least 64 mm for H16";

const { at, book: bookOf } = booksWithShop("hold", HEADER, SHOP);
const book = (name: string, ...rows: Cell[][]): string => bookOf(name, rows);

const unsafe = () => book("unsafe.xlsx", bar("01", 40), bar("02", 64));
const page = (path: string): string => readFileSync(path, "utf8");

describe("a bar that is not to be made until somebody clears it", () => {
  it("is named by the cut list, in words, on its page and in JSON", async () => {
    const run = await barwright(["cutplan", unsafe(), "--out", at("cut.html")]);
    expect(run.exit).toBe(1);
    expect(run.out).toContain(`planned, but 1 row is not to be made until cleared`);
    expect(run.out).toContain(`H16, mark 01, 10 bars, D2: ${WHY}`);
    expect(page(at("cut.html"))).toContain("01 (10) HOLD, 02 (10)");
    expect(page(at("cut.html"))).toContain(WHY);
    const { notToMake } = JSON.parse((await barwright(["cutplan", unsafe(), "--json"])).out);
    expect(notToMake).toEqual([{ size: "H16", mark: "01", count: 10, sheet: "Bars", cell: "D2", why: WHY }]);
  });

  it("is named by the cut list of a whole job with its book", async () => {
    const sound = book("sound.xlsx", bar("03", 64));
    const run = await barwright(["cutplan", unsafe(), sound]);
    expect(run.exit).toBe(1);
    expect(run.out).toContain(`unsafe.xlsx Bars!D2: ${WHY}`);
    expect((await barwright(["cutplan", sound])).exit).toBe(0);
  });

  it("is named by labels where it has no count, so that it is in no bundle", async () => {
    const path = book("no-count.xlsx", ["01", "H16", null, 875, "11", 500, 400, 40], bar("02", 64));
    const run = await barwright(["tickets", path, "--labels", at("no-count.html")]);
    const words = "in no bundle, without count, length or mass: 01";
    expect([run.err, page(at("no-count.html"))]).toEqual([
      expect.stringContaining(words),
      expect.stringContaining(words),
    ]);
  });

  it("is named by labels and loading lists", async () => {
    const labels = await barwright(["tickets", unsafe(), "--labels", at("labels.html")]);
    expect(labels.err).toContain(`not to be made or sent until cleared: 01 H16: ${WHY}`);
    expect(page(at("labels.html"))).toContain(`Not to be made or sent until cleared: ${WHY}`);
    const loads = await barwright(["loads", unsafe(), "--out", at("loads.html")]);
    expect(loads.exit).toBe(1);
    expect(loads.out).toContain("01 HOLD bundle 1 of 1");
    expect(loads.out).toContain("02 bundle 1 of 1");
    expect(loads.err).toContain(WHY);
    expect(page(at("loads.html"))).toContain(`01 H16: ${WHY}`);
  });
});

describe("the lines of inspect and heats", () => {
  it("carry HOLD, and its reason in JSON", async () => {
    const inspected = await barwright(["inspect", unsafe(), "--every", "1"]);
    expect(inspected.out).toContain("01 HOLD (Bars row 2), cut length");
    expect(inspected.out).toContain("  02 (Bars row 3), cut length");
    const { lines } = JSON.parse((await barwright(["inspect", unsafe(), "--every", "1", "--json"])).out);
    expect(lines.map(({ mark, held }: { mark: string; held: string[] }) => [mark, held])).toContainEqual([
      "01",
      [WHY],
    ]);
    const heats = await barwright(["heats", unsafe()]);
    expect(heats.out).toContain("10 of mark 01 HOLD (Bars!D2)");
    expect(heats.out).toContain("10 of mark 02 (Bars!D3)");
    const traced = JSON.parse((await barwright(["heats", unsafe(), "--json"])).out);
    expect(traced.heats[0].rows.map(({ held }: { held: string[] }) => held)).toEqual([[WHY], []]);
  });

  it("leave out no mark without a word where every mark is asked for", async () => {
    const none: Cell[] = ["03", "H16", 0, 1000, "00", 1000];
    const unknown: Cell[] = ["04", "H16", 2, null, "00", null];
    const path = book("some.xlsx", bar("01", 64), none, unknown);
    const run = await barwright(["inspect", path, "--every", "1", "--out", at("some-out.xlsx")]);
    expect(run.out).toContain("1 of 3 marks, without 2 of which nothing can be measured");
    const left = ["03 (Bars row 3): its count is 0", "04 (Bars row 4): no length of it is read"];
    for (const words of left) expect(run.out).toContain(`not in it: ${words}`);
    const sheet = openWorkbook(readFileSync(at("some-out.xlsx"))).read("Inspection");
    const first = Array.from({ length: sheet.rowCount }, (_, row) => String(sheet.cell(row, 0)));
    expect(first.filter((text) => text.startsWith("not in it: "))).toHaveLength(2);
  });

  it("are followed by the rows that were taken out", async () => {
    const sheets = [
      {
        name: "Bars",
        rows: [
          [...HEADER, "Remarks"],
          [...bar("01", 64), null],
          [...bar("02", 64), "omit"],
        ],
      },
      { name: "Shop", rows: SHOP },
    ];
    writeFileSync(at("omit.xlsx"), writeNewWorkbook({ sheets }));
    const run = await barwright(["inspect", at("omit.xlsx"), "--every", "1"]);
    expect(run.err).toContain("superseded, as its own remark says): 3 mark 02");
    expect((await barwright(["heats", at("omit.xlsx")])).err).toContain("not in the plan: A3");
  });
});

describe("a row that is left out of what is printed", () => {
  const rows = [
    [...bar("01", 64), "P1", null],
    [...bar("02", 64), "P1", "deleted"],
    [...bar("03", 64), "P2", null],
  ];
  const path = (): string => {
    const sheets = [
      { name: "Bars", rows: [[...HEADER, "Pour", "Remarks"], ...rows] },
      { name: "Shop", rows: SHOP },
    ];
    writeFileSync(at("deleted.xlsx"), writeNewWorkbook({ sheets }));
    return at("deleted.xlsx");
  };
  /** the list of the page's head */
  const said = (name: string): string =>
    /<ul class="not-told">.*?<\/ul>/s.exec(page(at(name)))?.[0].replace(/<[^>]*>/g, " ") ?? "";

  it.each([
    ["tickets", "--out", "no ticket for 1 row of Bars (superseded, as its own remark says): 3 mark 02"],
    ["tickets", "--labels", "no ticket for 1 row of Bars (superseded, as its own remark says): 3 mark 02"],
    ["loads", "--out", "no ticket for 1 row of Bars (superseded, as its own remark says): 3 mark 02"],
    ["cutplan", "--out", "1 row struck through or superseded, not in the plan: A3"],
  ])(
    "is named with its reason on the page of %s %s, and what was not asked for with it",
    async (command, option, words) => {
      const run = await barwright([command, path(), option, at("left.html")]);
      expect(run.exit, run.err).toBe(0);
      expect(run.err).toContain(words);
      expect(said("left.html")).toContain(words);
      expect(said("left.html")).not.toContain("only pour");
      await barwright([command, path(), option, at("left.html"), "--pour", "P1"]);
      expect(said("left.html")).toContain("only pour P1: no other bars are here");
      const job = await barwright([
        command,
        path(),
        book("other.xlsx", bar("07", 64)),
        option,
        at("job.html"),
      ]);
      expect(job.exit, job.err).toBe(0);
      expect(said("job.html")).toContain(words);
    },
  );
});

describe("--summary", () => {
  const rows = ["01", "02", "03"].map((mark) => bar(mark, mark === "02" ? 40 : 64));
  const path = () => book("short.xlsx", ...rows);

  it.each([
    ["heats", "heat K1, H16", "of mark 01"],
    ["loads", "load 1", "01 bundle 1 of 1"],
    ["inspect", "Sample:", "(Bars row 2)"],
  ])("of %s keeps the sums and leaves the single bars out", async (command, sum, single) => {
    const [whole, short] = await Promise.all([
      barwright([command, path()]),
      barwright([command, path(), "--summary"]),
    ]);
    expect(whole.out).toContain(single);
    expect(short.out).toContain(sum);
    expect(short.out).not.toContain(single);
    expect([short.exit, short.err]).toEqual([whole.exit, whole.err]);
  });

  it("of loads still names what must not leave the yard", async () => {
    expect((await barwright(["loads", path(), "--summary"])).out).toContain("02 HOLD bundle 1 of 1");
  });

  it("of compare names what is released already, and counts all", async () => {
    const newer = book("newer.xlsx", ["01", "H16", 12, 875, "11", 500, 400, 64], rows[1]!, rows[2]!);
    const short = (await barwright(["compare", path(), newer, "--summary"])).out;
    expect(short).not.toContain("changed:");
    expect(short).toContain("1 bars differ, 2 do not");
    const released = await barwright(["compare", path(), newer, "--summary", "--released", "01"]);
    expect(released.out).toContain("RELEASED ALREADY, changed: 01");
  });
});

it("should name the rows that are of no heat because nothing can cut them", async () => {
  const run = await barwright(["heats", book("long.xlsx", bar("02", 64), LONG)]);
  expect(run.out).toContain("02");
  expect(run.err).toContain("of no heat, for it is in no plan: H16, mark 09, 2 bars, Bars!D3");
});
