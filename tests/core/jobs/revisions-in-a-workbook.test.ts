import { describe, expect, it } from "vitest";
import { createLocalEngine } from "../../../addin/pane/engine/local-engine";
import { findingsSheet } from "../../../addin/workbook/findings-sheet";
import {
  type Book,
  checkBooks,
  cutListOf,
  digestBook,
  type JobQuestion,
  JobTotals,
  judgeJob,
  openForJob,
  readForCutting,
  readSchedules,
  ticketsOf,
  tonnageOf,
} from "../../../core/jobs";
import { type Cell, type Sheet, sheetFromRows } from "../../../core/schedule";
import { isRefusal, type Refusal, refusalText } from "../../../core/units/refusal";

const HEADER = ["Pour", "Member", "Bar mark", "Size", "Total no.", "Length (mm)", "Shape code", "A"];
const bar = (mark: string, total: number): Cell[] => ["P1", "W1", mark, "H16", total, 2000, "00", 2000];
const list = (name: string, number: string, revision: string, ...bars: readonly Cell[][]): Sheet =>
  sheetFromRows(name, [["Job", "Marrow Fen"], ["Schedule ref", number, "Rev", revision], HEADER, ...bars]);

/** A: 01 and 02; B: 01 with more bars, 02 gone. C is another schedule. */
const OLD = list("First", "S-101", "A", bar("01", 10), bar("02", 5));
const NEW = list("Second", "S-101", "B", bar("01", 12));
const OTHER = list("Third", "S-102", "A", bar("01", 1));
/** kg of 2 m at 1.579 kg/m (UK three-decimal table) */
const EACH = 2 * 1.579;

function bookOf(...sheets: readonly Sheet[]): Book {
  return {
    name: sheets.map(({ name }) => name).join(),
    sheets: sheets.map(({ name }) => ({ name, visibility: "visible" })),
    read: (name) => sheets.find((sheet) => sheet.name === name)!,
    setting: () => null,
  };
}
function answered<T extends object>(answer: T | Refusal | undefined): T {
  if (answer === undefined) throw new Error("no answer");
  if (isRefusal(answer)) throw new Error(refusalText(answer));
  return answer as T;
}
const ASKED: JobQuestion = { sheet: null, standard: "BS8666:2005" };
const checked = (book: Book, asked = ASKED) => answered(checkBooks([book], asked)[0]);
const told = (book: Book, asked = ASKED) => {
  const read = answered(readSchedules(answered(openForJob(book, asked))));
  return tonnageOf([read]).reckoned;
};

/** What a folder makes of the same sheets, each in a book of its own or all in one. */
function jobTotal(...books: readonly Book[]) {
  const digests = books.map((book) => answered(digestBook(book, book.name, { ...ASKED, explain: false })));
  const job = judgeJob(digests.flatMap(({ schedules }) => schedules));
  const totals = new JobTotals(job, null);
  for (const digest of digests) totals.addBook(digest);
  return { total: totals.result().tonnage.total, codes: job.findings.map(({ code }) => code) };
}

describe("two revisions of one schedule on sheets of one workbook", () => {
  const book = bookOf(OLD, NEW, OTHER);
  const whole = (13 * EACH) / 1000;
  const older = "superseded: revision B of it on sheet Second counts";

  it("count once, the newest, and the older one's rows are named", () => {
    const reckoned = told(book);
    expect(reckoned.tonnage.total).toBeCloseTo(whole, 9);
    expect(reckoned.notInTotal).toEqual([
      { sheet: "First", row: 4, cell: "C4", why: older },
      { sheet: "First", row: 5, cell: "C5", why: older },
    ]);
  });

  it("have one total on every surface", async () => {
    const { report, tonnage, sheets, workshop } = checked(book);
    expect(tonnage.tonnage.total).toBeCloseTo(whole, 9);
    expect(tonnage.notInTotal).toHaveLength(2);
    // the findings stay: old bars may be cut already
    expect(report.findings.filter(({ code }) => code === "REV101").map(({ cell }) => cell)).toEqual([
      "C4",
      "C5",
    ]);
    const text = JSON.stringify(findingsSheet(report, sheets).rows);
    expect(text).toContain("Tonnes (t) of 2 of 4 bar rows");
    expect(text).not.toContain("steel may be counted twice");
    const tickets = ticketsOf([{ report, sheets, workshop }]);
    expect(tickets.tickets.map(({ sheet, count }) => [sheet, count])).toEqual([
      ["Second", 12],
      ["Third", 1],
    ]);
    const cut = cutListOf(answered(readForCutting(answered(openForJob(book, ASKED)))));
    expect(cut.groups.map(({ size, plan }) => [size, plan.pieces])).toEqual([["H16", 13]]);
    expect(cut.notes.join()).toContain("First: 2 rows struck through or superseded, not in the plan");
  });

  it("is the same to the gram whether they stand in one workbook or in a folder of three", () => {
    const apart = jobTotal(bookOf(OLD), bookOf(NEW), bookOf(OTHER));
    const together = jobTotal(book);
    expect(together).toEqual(apart);
    expect(together.total).toBeCloseTo(whole, 9);
    expect(together.codes).toContain("JOB101");
  });

  it("does not count where its sheet alone is asked for, by name or in the pane", async () => {
    const asked = { ...ASKED, sheet: "First" };
    for (const reckoned of [told(book, asked), checked(book, asked).tonnage]) {
      expect(reckoned.tonnage.total).toBe(0);
      expect(reckoned.notInTotal.map(({ why }) => why)).toEqual([older, older]);
    }
    const engine = createLocalEngine();
    const view = await engine.check({
      sheet: OLD,
      shop: null,
      otherSheets: { before: [], behind: [NEW, OTHER] },
      standard: ASKED.standard!,
      settings: null,
    });
    expect([view.mass, view.notInTotal.length]).toEqual([0, 2]);
    await expect(engine.totals("First")).resolves.toMatchObject({});
  });

  it("gives way mark by mark to a list that holds less than half of them", () => {
    const part = list("Second", "S-101", "B", bar("01", 12));
    const long = list("First", "S-101", "A", bar("01", 10), bar("02", 5), bar("03", 5));
    const reckoned = told(bookOf(long, part));
    expect(reckoned.tonnage.total).toBeCloseTo((22 * EACH) / 1000, 9);
    expect(reckoned.notInTotal.map(({ cell }) => cell)).toEqual(["C4"]);
    expect(jobTotal(bookOf(long, part))).toEqual(jobTotal(bookOf(long), bookOf(part)));
  });

  it("counts both where no order of the revisions is known, or the reference is another", () => {
    for (const other of [
      list("Second", "S-101", "2", bar("01", 12)),
      list("Second", "S-103", "B", bar("01", 12)),
    ])
      expect(told(bookOf(OLD, other)).tonnage.total).toBeCloseTo((27 * EACH) / 1000, 9);
  });
});

describe("two revisions of one mark on a sheet", () => {
  const WITH = [...HEADER, "Rev"];
  const rows = (...bars: readonly Cell[][]): Book => bookOf(sheetFromRows("Bars", [WITH, ...bars]));

  it("count once, and the older row is named beside the total", () => {
    const reckoned = told(rows([...bar("01", 10), "A"], [...bar("01", 12), "B"], [...bar("02", 1), null]));
    expect(reckoned.tonnage.total).toBeCloseTo((13 * EACH) / 1000, 9);
    expect(reckoned.notInTotal).toEqual([
      { sheet: "Bars", row: 2, cell: "C2", why: "superseded: revision B of it counts" },
    ]);
  });

  it("both count where one is a letter and one a number", () => {
    expect(told(rows([...bar("01", 10), "A"], [...bar("01", 12), "1"])).tonnage.rows).toBe(2);
  });

  it("leaves the older one in where the newer is struck through", () => {
    const struck = sheetFromRows("Bars", [WITH, [...bar("01", 10), "A"], [...bar("01", 12), "B"]]);
    const sheet = { ...struck, isStruckThrough: (row: number) => row === 2 };
    expect(told(bookOf(sheet)).tonnage.total).toBeCloseTo((10 * EACH) / 1000, 9);
  });
});
