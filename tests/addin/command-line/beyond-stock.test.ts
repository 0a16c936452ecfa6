import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { Cell } from "../../../core/schedule";
import { booksWithShop } from "../../_support/bars-and-shop";
import { barwright } from "../../_support/command-line";

const HEADER: Cell[] = ["Bar mark", "Type and size", "Total no.", "Length (mm)", "Shape code", "A"];
const straight = (mark: string, size: string, count: number, length: number): Cell[] => [
  ...[mark, size, count, length, "00", length],
];
/** An end crop of 10 mm; of 16 mm bars 20 are held, of the others as many as needed. */
const SHOP: Cell[][] = [
  ["machine", "kerf mm", "end crop mm"],
  ["Shear", 3, 10],
  [],
  ["size", "stock length mm", "bars held", "kind", "heat"],
  ["H16", 12000, 20, "stock", "K1"],
  ["H12", 12000, null, "stock", "K2"],
  [],
  ["limit", "value"],
  ["hoist or crane kg", 1000],
  ["lorry load kg", 8000],
];

const { at, book: bookOf } = booksWithShop("stock", HEADER, SHOP);
const book = (name: string, ...rows: Cell[][]): string => bookOf(name, rows);

/** 12000 - 10 = 11990 */
const TOO_LONG =
  "a piece of 12000 mm is longer than the 11990 mm that the longest stock gives, 12000 mm less the end crop: order longer stock, or ask the designer for a lap";
const long = () => book("long.xlsx", straight("01", "H12", 4, 12000), straight("02", "H12", 4, 11990));
/** two of 5 m a bar: 20 bars give 40, and 5 more are needed for the other 10 */
const SHORT =
  "10 of 50 bars want stock: 20 bars of 12000 mm are held, 5 more bars of 12000 mm are needed: order them, or write more bars on the Shop sheet";
const short = () => book("short.xlsx", straight("01", "H16", 50, 5000), straight("02", "H12", 4, 5000));

describe("a bar that no stock gives once its end is cropped", () => {
  it("is told by check in the words of the cut list, and its neighbour is not", async () => {
    const { out, exit } = await barwright(["check", long(), "--json"]);
    const { findings } = JSON.parse(out);
    const ofStock = findings.filter(({ code }: { code: string }) => code === "SUPPLY101");
    expect(ofStock).toMatchObject([
      { cell: "D2", severity: "doubtful", outcome: "broken", message: TOO_LONG },
    ]);
    expect(exit).toBe(0);
    expect((await barwright(["cutplan", long()])).out).toContain(`H12, mark 01, 4 bars, D2: ${TOO_LONG}`);
  });
});

describe.each([
  ["that no stock gives", long, "H12", TOO_LONG],
  ["of which the bars held do not give all", short, "H16", SHORT],
])("a bar %s", (_, path, size, why) => {
  it.each(["tonnage", "inspect", "heats"])("is named by %s as not to be made", async (command) => {
    const { err } = await barwright([command, path()]);
    expect(err).toContain(`not to be made until cleared: row 2, 01 ${size}: in no cutting plan: ${why}`);
    expect(err).not.toContain("row 3");
  });

  it("is named by compare, by the tonnes of a job and by its workbook", async () => {
    expect((await barwright(["compare", path(), path()])).out).toContain(why);
    const { err } = await barwright(["tonnage", path(), "--by", "pour", "--out", at("job.xlsx")]);
    expect(err).toContain(why);
  });

  it("is on HOLD on loads and tickets", async () => {
    const loads = await barwright(["loads", path()]);
    expect([loads.exit, loads.out]).toEqual([1, expect.stringContaining("01 HOLD bundle 1 of 1")]);
    expect(loads.err).toContain(why);
    expect(loads.out).not.toContain("02 HOLD");
    const tickets = await barwright(["tickets", path(), "--out", at("tickets.html")]);
    expect(tickets.exit).toBe(1);
    expect(readFileSync(at("tickets.html"), "utf8")).toContain(why);
  });
});

describe("stock that is held in numbers", () => {
  it("gives what it can, and the rest is said by mark and cell, by check too", async () => {
    const { out, exit } = await barwright(["cutplan", short()]);
    expect(exit).toBe(1);
    expect(out).toContain("H16: 20 bars for 40 pieces");
    expect(out).toContain(`H16, mark 01, 10 bars, D2: ${SHORT}`);
    expect((await barwright(["check", short()])).err).toContain(SHORT);
  });

  it("is said by the check of a job, as by that of the book alone", async () => {
    const both = [short(), book("enough.xlsx", straight("01", "H16", 40, 5000))];
    const { err } = await barwright(["check", ...both]);
    expect(err.split(SHORT)).toHaveLength(2);
    const { out } = await barwright(["check", ...both, "--jsonl"]);
    const books = out
      .trim()
      .split("\n")
      .map((line) => JSON.parse(line) as { notes?: string[] });
    const said = books.map(({ notes = [] }) => notes.some((note) => note.includes(SHORT)));
    expect(said.filter(Boolean)).toHaveLength(1);
  });

  it("is silent where it suffices", async () => {
    const path = book("enough.xlsx", straight("01", "H16", 40, 5000));
    const cut = await barwright(["cutplan", path]);
    expect([cut.exit, cut.out]).toEqual([0, expect.not.stringContaining("want stock")]);
    expect((await barwright(["tonnage", path])).err).not.toContain("not to be made");
  });
});

describe("a bar that neither the standard nor the stock has", () => {
  it("is refused and held for both reasons, alike", async () => {
    // 28 mm is no bar of BS 8666:2005 Table 1; of it nothing is stocked, so the usual 12 m stand, less 10 mm
    const path = book("both.xlsx", straight("01", "28", 6, 13200), straight("02", "H12", 1, 6000));
    const why =
      'size "28" is no bar of BS8666:2005: correct the size; also a piece of 13200 mm is longer than the 11990 mm that the longest stock gives';
    const cut = await barwright(["cutplan", path]);
    expect([cut.exit, cut.out]).toEqual([1, expect.stringContaining(why)]);
    expect((await barwright(["loads", path])).err).toContain(`in no cutting plan: ${why}`);
    expect((await barwright(["tonnage", path])).err).toContain(`in no cutting plan: ${why}`);
  });
});
