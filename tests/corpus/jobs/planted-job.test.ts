import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { openBookOf } from "../../../addin/command-line/open-book";
import { UnreadableWorkbook } from "../../../addin/xlsx/unreadable-workbook";
import { type NewCell, writeNewWorkbook } from "../../../addin/xlsx/write/new-workbook";
import { allPapers, type BookDigest, digestBook, JobTotals, judgeJob } from "../../../core/jobs";
import { isRefusal } from "../../../core/units/refusal";

type Written = string | number | null | { readonly date: string };
interface PlantedBook {
  readonly file: string;
  readonly text?: string;
  readonly sheets?: readonly { readonly name: string; readonly rows: readonly (readonly Written[])[] }[];
}

/** An invented bridge, drawn up with its mistakes and its tonnes by somebody who had not seen the program. */
const { job, clean, tonnes, cleanTonnes, mistakes } = JSON.parse(
  readFileSync(new URL("./river-bridge.json", import.meta.url), "utf8"),
) as {
  job: readonly PlantedBook[];
  clean: readonly PlantedBook[];
  tonnes: Readonly<Record<string, number>>;
  cleanTonnes: Readonly<Record<string, number>>;
  mistakes: readonly { no: number; what: string; files: readonly string[] }[];
};

const DAY = 86_400_000;
function cellOf(cell: Written): string | number | null | NewCell {
  if (cell === null || typeof cell !== "object") return cell;
  const value = (Date.parse(`${cell.date}T00:00:00Z`) - Date.UTC(1899, 11, 30)) / DAY;
  return { value, look: { numberFormat: "dd/mm/yyyy" } };
}

/** Null for a file that cannot be read. */
function digestOf({ file, text, sheets = [] }: PlantedBook): BookDigest | null {
  const bytes =
    text === undefined
      ? writeNewWorkbook({
          sheets: sheets.map(({ name, rows }) => ({ name, rows: rows.map((row) => row.map(cellOf)) })),
        })
      : new TextEncoder().encode(text);
  try {
    const digest = digestBook(openBookOf(file, bytes), file, { sheet: null, standard: null, explain: false });
    return isRefusal(digest) ? null : digest;
  } catch (error) {
    if (error instanceof UnreadableWorkbook) return null;
    throw error;
  }
}

function judged(books: readonly PlantedBook[]) {
  const digests = books.map((book) => [book.file, digestOf(book)] as const);
  const read = digests.flatMap(([, digest]) => digest ?? []);
  const found = judgeJob(
    read.flatMap(({ schedules }) => schedules),
    allPapers(read),
  );
  const totals = new JobTotals(found, "schedule");
  const kilograms = new Map<string, number>();
  for (const digest of read)
    for (const { bar, leftOut } of totals.addBook(digest))
      if (leftOut === null) kilograms.set(digest.book, (kilograms.get(digest.book) ?? 0) + (bar.kg ?? 0));
  const unread = digests.flatMap(([file, digest]) => (digest === null ? [file] : []));
  return { findings: found.findings, kilograms, unread };
}

/** Mistakes by number, and the finding that tells each for its own reason; the others are not looked for. */
const TOLD: Readonly<Record<number, string>> = {
  1: "JOB101",
  2: "JOB102",
  3: "JOB106",
  4: "JOB124",
  5: "JOB104",
  6: "JOB113",
  7: "JOB107",
  8: "JOB121",
  9: "JOB122",
  10: "JOB120",
  11: "JOB112",
  14: "JOB125",
  15: "JOB126",
  16: "JOB123",
  17: "JOB101",
  18: "JOB118",
  19: "JOB129",
  20: "JOB127",
};

describe("a job with twenty planted mistakes", () => {
  const { findings, kilograms, unread } = judged(job);

  it.each(Object.entries(TOLD))("tells mistake %s by %s, at its files", (no, code) => {
    const planted = mistakes.find((each) => each.no === Number(no))!;
    const files = planted.files.filter((file) => !/register/i.test(file));
    const at = findings
      .filter((finding) => finding.code === code)
      .map(({ places }) => places.map(({ book }) => book));
    // a number that is missing has no file
    if (files.length === 0) expect(findings.map(({ message }) => message).join()).toContain("3172-BS-014");
    else expect(at.some((books) => files.every((file) => books.includes(file)))).toBe(true);
  });

  it("names the file that is no workbook, and tells nothing else", () => {
    expect(unread).toEqual(["3172-BS-013 rev A site markup.xlsx"]);
    expect(findings.map(({ code }) => code).sort()).toEqual(Object.values(TOLD).sort());
  });

  it("weighs each book as its author did, but that of another job, which it asks about", () => {
    const other = "3127-BS-003 rev A.xlsx";
    for (const [file, expected] of Object.entries(tonnes))
      if (file !== other)
        expect([file, (kilograms.get(file) ?? 0) / 1000]).toEqual([file, expect.closeTo(expected, 5)]);
    expect(kilograms.get(other)).toBeCloseTo(720.38, 1);
  });
});

describe("a sound job", () => {
  const { findings, kilograms, unread } = judged(clean);

  it("is told nothing, and has the tonnes of its author", () => {
    expect([findings, unread]).toEqual([[], []]);
    for (const [file, expected] of Object.entries(cleanTonnes))
      expect([file, (kilograms.get(file) ?? 0) / 1000]).toEqual([file, expect.closeTo(expected, 5)]);
  });
});
