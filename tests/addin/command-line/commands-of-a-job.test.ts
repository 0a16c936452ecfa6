import {
  existsSync,
  linkSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { openWorkbook } from "../../../addin/xlsx/read/open-workbook";
import { writeNewWorkbook } from "../../../addin/xlsx/write/new-workbook";
import type { Cell } from "../../../core/schedule";
import { barwright } from "../../_support/command-line";
import { copyFaults } from "../../_support/copy-faults";

const root = mkdtempSync(join(tmpdir(), "barwright-many-"));
process.env.XDG_CACHE_HOME = mkdtempSync(join(tmpdir(), "barwright-many-cache-"));
const job = join(root, "job");

const HEADER: Cell[] = ["Pour", "Member", "Bar mark", "Size", "Total no.", "Length", "Shape code", "A"];
/** Two bars of one heat, then as many as needed of another, both of 12 m. */
const SHOP: Cell[][] = [
  ["size", "stock length mm", "bars held", "kind", "heat"],
  [16, 12000, 2, "stock", "K1"],
  [16, 12000, null, "stock", "K2"],
  [],
  ["limit", "value"],
  ["hoist or crane kg", 60],
  ["lorry load kg", 100],
  ["lorry length mm", 13000],
];

interface Planned {
  readonly number: string;
  readonly revision: string;
  readonly bars: readonly (readonly Cell[])[];
  readonly shop?: boolean;
}

function schedule(path: string, { number, revision, bars, shop = false }: Planned): void {
  mkdirSync(dirname(join(job, path)), { recursive: true });
  const rows = [
    ["Job:", "Mallow Weir"],
    ["Schedule ref:", number],
    ["Revision:", revision],
    [],
    HEADER,
    ...bars,
    [],
    [null, { value: null, formula: 'BAR.MASS("H16")' }],
  ];
  const sheets = [{ name: "Bars", rows }, ...(shop ? [{ name: "Shop", rows: SHOP }] : [])];
  writeFileSync(join(job, path), writeNewWorkbook({ sheets }));
}

beforeAll(() => {
  // the wall's bars are cut from both heats: 4 x 6 m take the two bars of K1, 4 x 6 m of the slab two of K2
  const wall: Cell[][] = [["P1", "Wall", "01", "H16", 4, 6000, "00", 6000]];
  schedule("north/walls.xlsx", { number: "MW-1", revision: "B", bars: wall, shop: true });
  schedule("old/walls.xlsx", {
    number: "MW-1",
    revision: "A",
    bars: [["P1", "Wall", "01", "H16", 40, 6000, "00", 6000]],
  });
  schedule("south/slab.xlsx", {
    number: "MW-2",
    revision: "A",
    bars: [["P1", "Slab", "01", "H16", 4, 6000, "00", 6000]],
  });
  writeFileSync(join(job, "south", "torn.xlsx"), "PK\u0003\u0004 torn");
});

const inputs = (): string[] => readdirSync(job, { recursive: true }).map(String).sort();
const bytesOf = (path: string): string => readFileSync(join(job, path)).toString("base64");

describe("copies of many books", () => {
  it("go into a folder, each where its book lies, and no book is touched", async () => {
    const before = [inputs(), bytesOf("north/walls.xlsx")];
    const out = join(root, "valued");
    const run = await barwright(["recalc", job, "--out", out, "--json"]);
    const { books, job: told } = JSON.parse(run.out);
    expect(run.exit).toBe(2);
    expect(
      books.map((one: { book: string; formulas?: number }) => [one.book.slice(job.length + 1), one.formulas]),
    ).toEqual([
      ["north/walls.xlsx", 1],
      ["old/walls.xlsx", 1],
      ["south/slab.xlsx", 1],
      ["south/torn.xlsx", undefined],
    ]);
    expect(told).toMatchObject({
      books: 4,
      formulas: 3,
      errors: 0,
      unreadable: [{ why: expect.any(String) }],
    });
    // the UK three-decimal table: a metre of a 16 mm bar is 1.579 kg
    expect(
      openWorkbook(readFileSync(join(out, "north/walls.xlsx")))
        .read("Bars")
        .cell(7, 1),
    ).toBe(1.579);
    expect([inputs(), bytesOf("north/walls.xlsx")]).toEqual(before);
    expect(existsSync(join(out, "south/torn.xlsx"))).toBe(false);
  });

  it("are marked by check, every other part as it was", async () => {
    const out = join(root, "marked");
    const run = await barwright(["check", job, "--out", out, "--summary"]);
    expect(run.exit).toBe(2);
    expect(run.err).toContain("not read: ");
    for (const path of ["north/walls.xlsx", "old/walls.xlsx", "south/slab.xlsx"]) {
      const [book, copy] = [readFileSync(join(job, path)), readFileSync(join(out, path))];
      expect(await copyFaults(book, copy, new Set(["Findings"]))).toEqual([]);
      expect(openWorkbook(copy).sheets.map(({ name }) => name)).toContain("Findings");
    }
  });

  it.each([
    ["the folder of the books itself", () => job, "lies in"],
    ["a folder among the books", () => join(job, "north"), "lies in"],
    ["a new folder below them", () => join(job, "copies"), "lies in"],
    ["the name of a workbook", () => join(root, "all.xlsx"), "go into a folder"],
    [
      "a link to the folder of the books",
      () => {
        symlinkSync(job, join(root, "link"));
        return join(root, "link");
      },
      "lies in",
    ],
    [
      "a folder whose file is a link to a book",
      () => {
        mkdirSync(join(root, "linked", "south"), { recursive: true });
        symlinkSync(join(job, "south", "slab.xlsx"), join(root, "linked", "south", "slab.xlsx"));
        return join(root, "linked");
      },
      "is one of the books",
    ],
    [
      "a folder whose file is a book under another name",
      () => {
        mkdirSync(join(root, "hard", "north"), { recursive: true });
        linkSync(join(job, "old", "walls.xlsx"), join(root, "hard", "north", "walls.xlsx"));
        return join(root, "hard");
      },
      "is one of the books",
    ],
  ])("are refused before anything is written: %s", async (_, target, words) => {
    const before = [inputs(), bytesOf("south/slab.xlsx"), bytesOf("old/walls.xlsx")];
    const out = target();
    for (const command of ["recalc", "check"]) {
      const run = await barwright([command, job, "--out", out]);
      expect([run.exit, run.err]).toEqual([2, expect.stringContaining(words)]);
    }
    expect([inputs(), bytesOf("south/slab.xlsx"), bytesOf("old/walls.xlsx")]).toEqual(before);
  });

  it("are refused where two would be one file", async () => {
    const [one, other] = [join(job, "north", "walls.xlsx"), join(job, "old", "walls.xlsx")];
    const both = await barwright(["recalc", one, other, "--out", join(root, "two"), "--json"]);
    expect(both.exit).toBe(0);
    expect(readdirSync(join(root, "two"), { recursive: true }).map(String).sort()).toContain(
      "north/walls.xlsx",
    );
    const spelt = await barwright(["recalc", one, `${job}/./north/walls.xlsx`, "--out", join(root, "spelt")]);
    expect([spelt.exit, spelt.err]).toEqual([2, expect.stringContaining("would be one file")]);
  });
});

describe("heats and loads of a job", () => {
  it("follow a heat through every schedule that counts, and back", async () => {
    const run = await barwright(["heats", job, "--json"]);
    expect(run.exit).toBe(2);
    const { books, job: told } = JSON.parse(run.out);
    expect(books).toHaveLength(4);
    const pieces = told.heats.map(
      ({
        heat,
        bars,
        rows,
      }: {
        heat: string;
        bars: { bars: number }[];
        rows: { book: string; pieces: number }[];
      }) => [heat, bars[0]?.bars, rows.map((row) => [row.book.slice(job.length + 1), row.pieces])],
    );
    expect(pieces).toEqual([
      ["K1", 2, [["north/walls.xlsx", 4]]],
      ["K2", 2, [["south/slab.xlsx", 4]]],
    ]);
    const back = await barwright(["heats", job, "--heat", "k2"]);
    expect(back.out).toContain("4 of mark 01 for pour P1, Slab");
    expect(back.out).toContain(join("south", "slab.xlsx"));
    expect(back.out).not.toContain("K1");
  });

  it("stand on the tickets of the job, by the one cut list", async () => {
    const run = await barwright(["tickets", job, "--json"]);
    const { books } = JSON.parse(run.out);
    const heats = Object.fromEntries(
      books.flatMap(({ tickets = [] }: { tickets?: { member: string; heats: object[] }[] }) =>
        tickets.map(({ member, heats: of }) => [member, of]),
      ),
    );
    expect(heats).toEqual({
      Wall: [{ heat: "K1", pieces: 4 }],
      Slab: [{ heat: "K2", pieces: 4 }],
    });
    expect(run.err).not.toContain("heats are not on the tickets");
  });

  it("load one lorry from all schedules, and say whose bundle each is", async () => {
    const page = join(root, "loads.html");
    const run = await barwright(["loads", job, "--json", "--out", page]);
    expect(run.exit).toBe(2);
    const { job: told } = JSON.parse(run.out);
    const [load, more] = told.loads;
    // two bundles of 4 x 6 m x 1.579 kg/m = 37.9 kg on one lorry of 100 kg; the older revision's 40 bars on none
    expect(more).toBe(undefined);
    expect(load.mass).toBeCloseTo(2 * 4 * 6 * 1.579, 6);
    expect(
      load.loading.map(({ schedule: of, bars }: { schedule: string; bars: number }) => [of, bars]),
    ).toEqual([
      ["MW-2", 4],
      ["MW-1", 4],
    ]);
    const html = readFileSync(page, "utf8");
    for (const words of ["<th>Schedule</th>", "MW-1", "MW-2"]) expect(html).toContain(words);
  });

  it("name every schedule of a cut list at its head", async () => {
    const page = join(root, "cut-list.html");
    await barwright(["cutplan", job, "--out", page]);
    const head = /<header>(.*?)<\/p>/s.exec(readFileSync(page, "utf8"))?.[1] ?? "";
    expect(head).toContain("Mallow Weir · MW-1 revision B, MW-2 revision A");
    expect(head).not.toContain("MW-1 revision A");
  });

  it("draw what is to be measured schedule by schedule, and judge it again", async () => {
    const out = join(root, "inspect");
    const drawn = await barwright(["inspect", job, "--every", "1", "--out", out, "--json"]);
    expect(drawn.exit).toBe(2);
    expect(JSON.parse(drawn.out).job).toMatchObject({ drawn: 2, measured: 0 });
    expect(existsSync(join(out, "old/walls.xlsx"))).toBe(false);
    const judged = await barwright(["inspect", out, "--json"]);
    expect(judged.exit).toBe(0);
    expect(JSON.parse(judged.out).job).toMatchObject({ drawn: 0, measured: 0, waiting: 2 });
  });
});
