import { mkdirSync, mkdtempSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DuckDBInstance } from "@duckdb/node-api";
import { Ajv } from "ajv";
import { beforeAll, describe, expect, it } from "vitest";
import { openWorkbook } from "../../../addin/xlsx/read/open-workbook";
import { barwright } from "../../_support/command-line";
import { madeBook } from "../../_support/make-job";

const HEADER = "Member,Bar mark,Size,No. of mbrs,No. in each,Total no.,Length (mm),Shape code,A,B,C,Pour";
const folder = mkdtempSync(join(tmpdir(), "barwright-jobs-"));
const cache = mkdtempSync(join(tmpdir(), "barwright-cache-"));
process.env.XDG_CACHE_HOME = cache;

function schedule(path: string, number: string, revision: string, ...bars: string[]): void {
  const lines = [
    "Job:,Heron Street",
    `Schedule ref:,${number}`,
    `Revision:,${revision}`,
    "Prepared by:,Ash Drawing",
    "",
    HEADER,
    ...bars,
  ];
  mkdirSync(join(folder, path, ".."), { recursive: true });
  writeFileSync(join(folder, path), `${lines.join("\n")}\n`);
}

const W1 = [
  "W1,01,H16,1,40,40,3000,00,3000,,,P1",
  "W1,02,H12,1,60,60,2500,00,2500,,,P1",
  "W1,03,H10,1,24,24,1875,21,1000,400,500,P2",
];
// kg/m of the UK tables: H10 0.616, H12 0.888, H16 1.579, H20 2.466
const P1 = 40 * 3 * 1.579 + 60 * 2.5 * 0.888;
// code 21 of BS 8666:2005: A + B + C - r - 2d = 1900 - 20 - 20 = 1860, up to 1875
const P2 = 24 * 1.875 * 0.616;

beforeAll(() => {
  schedule("job/walls/HS-1.csv", "HS-1", "B", ...W1);
  schedule("job/old/HS-1 rev A.csv", "HS-1", "A", W1[0]!.replace("40,40", "44,44"), W1[1]!, W1[2]!);
  schedule(
    "job/slabs/HS-2.csv",
    "HS-2",
    "A",
    "S1,01,H20,1,10,10,6000,00,6000,,,P1",
    "S1,02,H12,1,8,8,2000,00,2000,,,P 1",
  );
  schedule("job/slabs/HS-3.csv", "HS-3", "A", "S3,01,H40,1,2,2,1400,11,1300,130,,P3");
});

type Line = Record<string, unknown>;

const lines = (out: string): Line[] =>
  out
    .trim()
    .split("\n")
    .map((line) => JSON.parse(line));
const job = join(folder, "job");

describe("a folder as a job", () => {
  it("counts the newest revision, tells of what lies beside it, and says what cannot be read", async () => {
    const run = await barwright(["tonnage", job, "--json"]);
    const { books, job: told } = JSON.parse(run.out);
    expect(books.map(({ book }: { book: string }) => book.slice(job.length + 1))).toEqual([
      "old/HS-1 rev A.csv",
      "slabs/HS-2.csv",
      "slabs/HS-3.csv",
      "walls/HS-1.csv",
    ]);
    const kilograms = Object.fromEntries(
      told.pours.map(({ pour, total }: { pour: string; total: number }) => [pour, total * 1000]),
    );
    expect(kilograms.P1).toBeCloseTo(P1 + 10 * 6 * 2.466, 3);
    expect(kilograms.P2).toBeCloseTo(P2, 3);
    expect(kilograms["P 1"]).toBeCloseTo(8 * 2 * 0.888, 3);
    expect(told.superseded).toBe(3);
    expect(told.findings.map(({ code }: { code: string }) => code).sort()).toEqual(["JOB101", "JOB106"]);
    expect(
      told.schedules.find(({ revision, schedule: number }: Line) => revision === "A" && number === "HS-1"),
    ).toMatchObject({
      counted: false,
      because: expect.stringContaining("revision B"),
    });
    // S3/01 cannot be bent with a leg of 130 mm, as a check says with the same exit code
    expect(told.notToMake.map(({ mark, size }: Line) => [mark, size])).toEqual([["01", "H40"]]);
    expect(run.exit).toBe(1);
  });

  it("has no total where not one file could be read, on any surface", async () => {
    const gone = [join(job, "slabs", "torn.xlsx"), join(job, "slabs", "lost.xlsx")];
    const told = await barwright(["tonnage", ...gone]);
    expect(told.exit).toBe(2);
    expect(told.out).toContain("no total: 2 files not read");
    expect(told.out).not.toContain("0.000");
    expect((await barwright(["check", ...gone, "--summary"])).out).toContain("no total: 2 files not read");
    const { job: report } = JSON.parse((await barwright(["tonnage", ...gone, "--json"])).out);
    expect(report).toMatchObject({ total: null, pours: [], books: 2 });
    const lines = (await barwright(["tonnage", ...gone, "--jsonl"])).out.trim().split("\n");
    expect(lines.map((line) => JSON.parse(line)).filter(({ kind }) => kind === "total")).toEqual([
      { kind: "total", by: "job", name: "", bySize: {}, total: null, held: "no total: 2 files not read" },
    ]);
  });

  it("ends with the worst of its books, and goes on past a file that cannot be read", async () => {
    const broken = join(job, "slabs", "torn.xlsx");
    const whole = await barwright(["check", job, "--summary"]);
    expect(whole.exit).toBe(1);
    expect(whole.out).toContain(
      "4 books; 3 schedules, 1 older or doubled not counted; 2 findings of the job",
    );
    const torn = await barwright(["check", join(job, "slabs", "HS-2.csv"), broken, "--json"]);
    expect(torn.exit).toBe(2);
    const { books, job: told } = JSON.parse(torn.out);
    expect(books).toHaveLength(2);
    expect(told.unreadable).toEqual([{ book: broken, why: expect.stringContaining("there is no file") }]);
    expect(torn.err).toContain(`not read: ${broken}`);
    expect(told.pours.map(({ pour }: { pour: string }) => pour)).toEqual(["P 1", "P1"]);
  });

  it("is told in short: a line a book and the total, or a line a size, and what cannot be read", async () => {
    const broken = join(job, "slabs", "torn.xlsx");
    const tonnes = await barwright(["tonnage", join(job, "walls"), broken, "--summary"]);
    expect(tonnes.exit).toBe(2);
    expect(tonnes.err).toContain(`not read: ${broken}`);
    const total = ((P1 + P2) / 1000).toFixed(3);
    expect(tonnes.out.split("\n")[0]).toBe(`${join(job, "walls", "HS-1.csv")}: 3 bar rows; ${total} t`);
    expect(tonnes.out).toMatch(new RegExp(`^total .* ${total.replace(".", "\\.")}$`, "m"));
    expect(tonnes.out).not.toMatch(/^P[12] /m);
    const cuts = await barwright(["cutplan", join(job, "walls"), broken, "--stock", "12000", "--summary"]);
    expect(cuts.exit).toBe(2);
    expect(cuts.err).toContain(`not read: ${broken}`);
    expect(cuts.out.split("\n").map((line) => line.split(":")[0])).toEqual(["H10", "H12", "H16", ""]);
    const one = await barwright(["tonnage", join(job, "walls", "HS-1.csv"), "--summary"]);
    expect(one.out.trimEnd().split("\n")).toHaveLength(2);
    expect(one.out).toContain(total);
  });

  it("says which files it passes over for their kind, other spreadsheets first", async () => {
    schedule("mixed/HS-9.csv", "HS-9", "A", "S9,01,H20,1,10,10,6000,00,6000,,,P1");
    const mixed = join(folder, "mixed");
    for (const name of ["letter.docx", "old.xls", ".hidden"]) writeFileSync(join(mixed, name), "x");
    const run = await barwright(["tonnage", mixed, "--summary"]);
    expect(run.exit).toBe(0);
    expect(run.err).toContain(
      `${mixed}: 2 files of another kind are not read: old.xls, letter.docx; a list among them is read once it is saved as .xlsx`,
    );
    const named = await barwright(["tonnage", join(mixed, "letter.docx"), join(mixed, "HS-9.csv")]);
    expect(named.exit).toBe(2);
    expect(named.err).toContain("letter.docx: not a workbook");
  });

  it("takes patterns, and groups by schedule, member and date", async () => {
    const run = await barwright(["tonnage", `${job}/slabs/*.csv`, "--by", "schedule", "--json"]);
    const { job: told } = JSON.parse(run.out);
    expect(told.groupedBy).toBe("schedule");
    expect(told.pours.map(({ pour }: { pour: string }) => pour)).toEqual(["HS-2", "HS-3"]);
    const wrong = await barwright(["tonnage", job, "--by", "pours"]);
    expect(wrong).toMatchObject({ exit: 2, err: expect.stringContaining("pour, member, schedule, date") });
    const none = await barwright(["tonnage", `${job}/*.xyz`]);
    expect(none).toMatchObject({ exit: 2, err: expect.stringContaining("names no .xlsx") });
  });

  it("takes a register in the folder for no unread file, in any command", async () => {
    const place = mkdtempSync(join(tmpdir(), "barwright-register-"));
    const list = ["Job:,Heron Street", "Schedule ref:,HS-1", "Revision:,A", "", HEADER, ...W1];
    writeFileSync(join(place, "HS-1.csv"), list.join("\n"));
    writeFileSync(join(place, "HS-2.csv"), list.join("\n").replace("HS-1", "HS-2").replaceAll("W1", "W2"));
    const lines = ["Schedule No,Title,Rev,Date", "HS-1,Walls,B,2026-03-02", "HS-2,Walls,A,2026-03-02"];
    writeFileSync(join(place, "register.csv"), lines.join("\n"));
    const told = await barwright(["check", place, "--json"]);
    expect(told.exit).toBe(0);
    const { job } = JSON.parse(told.out);
    expect(job.unreadable).toEqual([]);
    expect(job.findings).toMatchObject([{ code: "JOB127", severity: "unsafe", outcome: "unsure" }]);
    const out = ["--out", join(mkdtempSync(join(tmpdir(), "barwright-register-out-")), "tickets.html")];
    for (const args of [["tonnage"], ["cutplan", "--stock", "12000"], ["tickets", ...out], ["inspect"]]) {
      const run = await barwright([args[0]!, place, ...args.slice(1)]);
      expect([args[0], run.exit, run.err.includes("not read"), run.err.includes("not inspected")]).toEqual([
        args[0],
        0,
        false,
        false,
      ]);
    }
  });

  it("shows one pour or size, in a job as in one book", async () => {
    const run = await barwright(["tonnage", job, "--pour", "p1", "--size", "H16,H20", "--json"]);
    const { job: told } = JSON.parse(run.out);
    expect(told.bySize.H16 * 1000).toBeCloseTo(40 * 3 * 1.579, 3);
    expect(Object.keys(told.bySize).sort()).toEqual(["H16", "H20"]);
    const one = JSON.parse(
      (await barwright(["tonnage", join(job, "walls/HS-1.csv"), "--pour", "P2", "--json"])).out,
    );
    expect(one.total * 1000).toBeCloseTo(P2, 3);
    const other = await barwright(["check", join(job, "slabs/HS-3.csv"), "--pour", "P1", "--json"]);
    expect(other.out).toBe("");
    expect(other.err).toContain("no pour P1; the only");
  });

  it("answers the same by one worker and by two, and out of its cache, which is never trusted over a file", async () => {
    const first = await barwright(["check", job, "--jsonl", "--workers", "1"]);
    const stored = readdirSync(cache, { recursive: true, encoding: "utf8" })
      .map((name) => join(cache, name))
      .filter((path) => statSync(path).isFile());
    expect(stored.length).toBeGreaterThan(3);
    expect((await barwright(["check", job, "--jsonl", "--workers", "2"])).out).toBe(first.out);
    // every result is spoilt: none is taken
    for (const path of stored) {
      const bytes = readFileSync(path);
      bytes[bytes.length - 1]! ^= 1;
      writeFileSync(path, bytes);
    }
    expect((await barwright(["check", job, "--jsonl"])).out).toBe(first.out);
    expect((await barwright(["check", job, "--jsonl", "--no-cache"])).out).toBe(first.out);
    // a file of the same name and length with another count
    const path = join(job, "walls/HS-1.csv");
    const text = readFileSync(path, "utf8");
    writeFileSync(path, text.replace("60,60", "61,61"));
    const changed = lines((await barwright(["tonnage", job, "--jsonl"])).out);
    writeFileSync(path, text);
    expect(changed.find(({ mark, book }) => mark === "02" && book === path)).toMatchObject({
      count: 61,
    });
  });
});

describe("the lines of a job", () => {
  const valid = new Ajv({ allowUnionTypes: true }).compile(
    JSON.parse(readFileSync(new URL("../../../docs/job-lines.schema.json", import.meta.url), "utf8")),
  );

  it("are each as the published schema says", async () => {
    const run = await barwright(["check", job, join(job, "none.csv"), "--jsonl"]);
    const told = lines(run.out);
    for (const line of told) expect(valid(line), JSON.stringify([line, valid.errors])).toBe(true);
    const bars = told.filter(({ kind }) => kind === "bar");
    // what a row says is what is cut; what it is weighed by may be another
    const cutAsTyped = bars.filter(({ typed }) => typeof typed === "number");
    expect(cutAsTyped.length).toBeGreaterThan(0);
    expect(cutAsTyped.filter(({ typed, cut }) => cut !== null && cut !== typed)).toEqual([]);
    expect([...new Set(told.map(({ kind }) => kind))].sort()).toEqual([
      "bar",
      "book",
      "finding",
      "jobFinding",
      "total",
    ]);
    expect(valid({ kind: "bar", book: "a" })).toBe(false);
  });

  it("add up by pour to what single books say and to what a database sums, to the gram", async () => {
    const place = mkdtempSync(join(tmpdir(), "barwright-made-"));
    const paths = [0, 1, 2, 3, 4, 5, 6].map((book) => {
      const path = join(place, `TL-${book}.xlsx`);
      writeFileSync(path, madeBook(book, 120));
      return path;
    });
    const run = await barwright(["check", place, "--jsonl"]);
    const file = join(place, "job.jsonl");
    writeFileSync(file, run.out);
    const told = lines(run.out);
    const single = new Map<string, number>();
    for (const path of paths) {
      const { pours } = JSON.parse((await barwright(["tonnage", path, "--json"])).out);
      for (const { pour, total } of pours) single.set(pour, (single.get(pour) ?? 0) + total);
    }
    const rows = await ask(
      `select "group" as pour, sum(kg) as kg from read_json('${file}', format = 'newline_delimited')
       where kind = 'bar' and inTotal group by all`,
    );
    const byQuery = new Map(rows.map(({ pour, kg }) => [String(pour), Number(kg)]));
    const totals = told.filter(({ kind, by }) => kind === "total" && by === "pour") as {
      name: string;
      total: number;
    }[];
    expect(totals.length).toBeGreaterThan(5);
    for (const { name, total } of totals) {
      expect(Math.abs(total * 1000 - byQuery.get(name)!)).toBeLessThan(0.0005);
      expect(Math.abs(total - single.get(name)!)).toBeLessThan(0.0000005);
    }
    expect(byQuery.size).toBe(totals.length);
  });

  it("answer what a firm asks of its archive, as docs/archive.md prints the questions", async () => {
    const file = join(folder, "archive.jsonl");
    writeFileSync(file, (await barwright(["check", job, "--jsonl"])).out);
    const page = readFileSync(new URL("../../../docs/archive.md", import.meta.url), "utf8");
    const questions = [...page.matchAll(/```sql\n([\s\S]*?)```/g)].map(([, sql]) =>
      sql!.replaceAll("job.jsonl", file),
    );
    expect(questions).toHaveLength(5);
    const [mistakes, offices, tonnes, rests, formers] = await questions.reduce(
      async (before, sql) => [...(await before), await ask(sql)],
      Promise.resolve([] as Record<string, unknown>[][]),
    );
    expect(mistakes!.length).toBeGreaterThan(0);
    expect(offices).toEqual([expect.objectContaining({ office: "Ash Drawing", books: 4n })]);
    const h16 = tonnes!.find(({ size }) => size === "H16");
    expect(Number(h16!.t) * 1000).toBeCloseTo(40 * 3 * 1.579, 3);
    // 60 bars of 2500 mm are 15 bars of 12 m with 2 m left of each; 8 of 2000 mm leave none
    expect(rests!.find(({ size }) => size === "H12")).toMatchObject({ rest: 2000, bars: 15 });
    expect(formers!.length).toBeGreaterThan(0);
  });
});

async function ask(sql: string): Promise<Record<string, unknown>[]> {
  const connection = await (await DuckDBInstance.create(":memory:")).connect();
  const reader = await connection.runAndReadAll(sql);
  return reader.getRowObjects();
}

describe("what a job makes", () => {
  it("cuts across schedules, without the bars of an older revision", async () => {
    const run = await barwright(["cutplan", job, "--stock", "12000", "--size", "H16,H12", "--json"]);
    const { books, job: plan } = JSON.parse(run.out);
    expect(books).toHaveLength(4);
    // H16: 40 of 3 m are ten bars of 12 m; H12: four of 2.5 m a bar and a 2 m beside them, so 15 for 60 and 8
    const bars = Object.fromEntries(
      plan.groups.map(({ size, bars }: { size: string; bars: number }) => [size, bars]),
    );
    expect(bars).toEqual({ H16: 10, H12: 15 });
    expect(plan.groups.map(({ pieces }: { pieces: number }) => pieces).sort()).toEqual([40, 68]);
    expect(run.err).toContain("revision B");
    expect(run.exit).toBe(0);
    const booked = await barwright(["cutplan", job, "--again", "--out", join(folder, "booked.xlsx")]);
    expect(booked).toMatchObject({ exit: 2, err: expect.stringContaining("one workbook") });
  });

  it("writes the cutting plan of a job as a workbook", async () => {
    const out = join(folder, "cuts.xlsx");
    const asked = ["cutplan", job, "--stock", "12000", "--size", "H16,H12", "--out", out];
    expect((await barwright(asked)).exit).toBe(0);
    const workbook = openWorkbook(readFileSync(out));
    const rows = (name: string) => {
      const sheet = workbook.read(name);
      return Array.from({ length: sheet.rowCount }, (_, row) =>
        Array.from({ length: sheet.columnCount }, (_, column) => sheet.cell(row, column)),
      );
    };
    const bought = rows("To buy").map(([size, , stock, bars, metres]) => [size, stock, bars, metres]);
    // the same bars as above: ten and fifteen of 12 m, 120 m and 180 m
    expect(bought.slice(1)).toEqual([...bought.slice(1, -1), ["All", null, 25, 300]]);
    expect(bought.slice(1, -1).sort()).toEqual([
      ["H12", 12_000, 15, 180],
      ["H16", 12_000, 10, 120],
    ]);
    const pieces = rows("Pieces").slice(1);
    expect(pieces.reduce((sum, row) => sum + Number(row[4]), 0)).toBe(40 + 60 + 8);
    expect(pieces.map((row) => String(row[5]).replace(/^.*[\\/]/, "")).sort()).toEqual([
      "HS-1.csv",
      "HS-1.csv",
      "HS-2.csv",
    ]);
    const cut = rows("Cuts").slice(1);
    expect(cut.reduce((sum, row) => sum + Number(row[4]), 0)).toBe(25);
    expect(rows("In no plan").flat().join(" ")).toContain("revision B");
  });

  it("makes a ticket for each bar that counts", async () => {
    const page = join(folder, "tickets.html");
    const run = await barwright(["tickets", job, "--out", page, "--json"]);
    const { books, job: told } = JSON.parse(run.out);
    expect(told.tickets).toBe(6);
    expect(books.map(({ tickets }: { tickets: unknown[] }) => tickets.length)).toEqual([0, 2, 1, 3]);
    expect(readFileSync(page, "utf8")).toContain("HS-2");
    const p1 = JSON.parse((await barwright(["tickets", job, "--pour", "P1", "--json"])).out);
    expect(p1.job.tickets).toBe(3);
  });

  it("compares a job with a job, schedule by schedule", async () => {
    schedule("later/HS-1.csv", "HS-1", "C", W1[0]!, W1[1]!.replace("60,60", "50,50"), W1[2]!);
    schedule(
      "later/HS-2.csv",
      "HS-2",
      "A",
      "S1,01,H20,1,10,10,6000,00,6000,,,P1",
      "S1,02,H12,1,8,8,2000,00,2000,,,P 1",
    );
    const run = await barwright(["compare", job, join(folder, "later"), "--json"]);
    const { changes, pours, unchanged } = JSON.parse(run.out).job;
    expect(changes.map(({ kind, mark, kg }: Line) => ({ kind, mark, kg }))).toEqual([
      // 60 and 50 of 2.5 m at 0.888 kg/m
      {
        kind: "changed",
        mark: "02",
        kg: { before: expect.closeTo(133.2, 6), after: expect.closeTo(111, 6) },
      },
      { kind: "removed", mark: "01", kg: { before: expect.anything(), after: 0 } },
    ]);
    expect(unchanged).toBe(4);
    expect(pours.find(({ pour }: Line) => pour === "P2").t.after * 1000).toBeCloseTo(P2, 3);
  });
});
