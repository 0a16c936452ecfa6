import { decisionWords } from "../../core/audit/decision-words";
import {
  askedBars,
  type CompareJob,
  checkBooks,
  compareBooks,
  filteredBy,
  heldRows,
  isAsked,
  isBroken,
  openForJob,
  type ReadBook,
  readSchedules,
  type SevereBars,
  severeBars,
  severeWords,
  tonnageOf,
} from "../../core/jobs";
import { addressAt } from "../../core/schedule/cell-address";
import type { Standard } from "../../core/standards";
import { type BarChange, notComparedWords, supersededWords } from "../../core/totals";
import { hiddenWords } from "../../core/totals/tonnage-notes";
import { tonnesOf } from "../../core/units/print-mass";
import { shorten } from "../../core/units/shorten";
import { answerOf } from "./answer-of";
import type { Command, ExitCode } from "./command";
import { InputRefused } from "./input-refused";
import { isFolderOrPattern } from "./job/books-named";
import { filterFor, filterOf, isNarrow } from "./job/job-asked";
import { JOB_OPTIONS } from "./job/read-job";
import { revisionOfJob } from "./job/revision-of-job";
import { openBook } from "./open-book";
import type { GivenOptions } from "./read-options";
import { ownOfFile, STANDARD_OPTIONS } from "./standard-for";
import type { Streams } from "./streams";

/** `compare OLD NEW`: what a newer revision changes, bars that were released first. */
export const compare: Command = {
  name: "compare",
  usage:
    "compare OLD NEW [--summary] [--pour NAME] [--size SIZES] [--released MARK,MARK] [--standard ID] [--own FILE] [--json]",
  summary: "what a newer revision of a schedule changes",
  options: {
    released: { type: "string" },
    summary: { type: "boolean" },
    ...JOB_OPTIONS,
    ...STANDARD_OPTIONS,
    json: { type: "boolean" },
  },
  async run(given, streams) {
    const [old, young, more] = given.positionals;
    if (old === undefined || young === undefined || more !== undefined) {
      throw new InputRefused("name two files: the older revision, then the newer one");
    }
    if (isFolderOrPattern(old) || isFolderOrPattern(young)) return compareJobs(old, young, given, streams);
    const asked = given.text("standard");
    const ofNewer = openBook(young);
    const own = ownOfFile(given, streams);
    const standard = asked ?? ofNewer.setting("Barwright.Standard");
    const question = { sheet: null, standard, own };
    const before: ReadBook = answerOf(readSchedules(answerOf(openForJob(openBook(old), question))));
    const after = answerOf(checkBooks([ofNewer], question)[0]!);
    const hidden = [
      ...hiddenOf(before, before.standard).map((words) => `older: ${words}`),
      ...hiddenOf(after, after.standard).map((words) => `newer: ${words}`),
    ];
    const notes = [...before.notes, ...after.notes, ...leftOutOf(after), ...hidden];
    for (const note of notes) streams.note(note);
    const filter = filterFor(given, before, after);
    const compared = compareBooks(before, after, after.standard, marksReleased(given), filter);
    const { comparison } = compared;
    const waivers = {
      before: decisionWords(before.settings),
      after: decisionWords(after.settings),
    };
    const severe = severeBars(
      heldRows(after.report, after.schedules, after.workshop),
      filteredBy(askedBars(after.schedules, filter)),
    );
    if (given.flag("json"))
      streams.result(JSON.stringify({ ...jsonComparison(compared), ...severe, waivers, notes }));
    else {
      printComparison(compared, streams, given.flag("summary"));
      printSevere(severe, after.schedules.length > 1, streams);
      for (const words of waivers.before) streams.result(`older, not told: ${words}`);
      for (const words of waivers.after) streams.result(`newer, not told: ${words}`);
    }
    const isUnsafe = comparison.changes.some(({ severity }) => severity === "unsafe");
    return isUnsafe || isBroken(after) ? 1 : 0;
  },
};

function marksReleased(given: GivenOptions): string[] {
  const released = (given.text("released") ?? "").split(",").map((mark) => mark.trim());
  return released.filter((mark) => mark !== "");
}

/** A job against a job: of each the newest schedules alone, matched by number. */
async function compareJobs(
  old: string,
  young: string,
  given: GivenOptions,
  streams: Streams,
): Promise<ExitCode> {
  const before = await revisionOfJob(old, given, streams);
  const after = await revisionOfJob(young, given, streams);
  const filter = filterOf(given);
  const bars = filteredBy([before, after].flatMap(({ schedules }) => schedules));
  if (isNarrow(filter) && !bars.some((bar) => isAsked(filter, bar)))
    throw new InputRefused("no bar of either job is of what --pour and --size ask for");
  const standard = (after.standard ?? before.standard)!;
  const compared = compareBooks(before, after, standard, marksReleased(given), filter);
  const { notToMake, toAsk, ofSheets } = after.severe;
  const severe = { notToMake, toAsk, ofSheets };
  const { unreadable } = { unreadable: [...before.unreadable, ...after.unreadable] };
  if (given.flag("json"))
    streams.result(
      JSON.stringify({
        books: [...before.books, ...after.books].map((book) => ({ book })),
        job: { ...jsonComparison(compared), ...severe, notes: [...before.notes, ...after.notes], unreadable },
      }),
    );
  else {
    printComparison(compared, streams, given.flag("summary"));
    printSevere(severe, true, streams);
  }
  const isUnsafe = compared.comparison.changes.some(({ severity }) => severity === "unsafe");
  return unreadable.length > 0 ? 2 : isUnsafe || after.isBroken ? 1 : 0;
}

/** Rows of the newer revision that are compared with nothing. */
function leftOutOf({ schedules }: ReadBook): string[] {
  return schedules.flatMap(({ sheet, reading }) =>
    reading.bars.flatMap((bar) => {
      if (!bar.struckThrough && bar.superseded !== true) return [];
      const why = bar.struckThrough ? "struck through" : supersededWords(bar);
      return [
        `not compared: ${sheet.name} row ${sheet.top + bar.row + 1}, ${shorten(bar.mark ?? "no mark", LONGEST_NAME)}: ${why}`,
      ];
    }),
  );
}

/** Rows that nobody sees, of the bars that are compared. */
const hiddenOf = ({ schedules }: Pick<ReadBook, "schedules">, standard: Standard): string[] =>
  hiddenWords(tonnageOf([{ schedules, standard }]).reckoned.hidden);

/** Bars of the newer revision, changed or not, that nobody may make as they stand. */
function printSevere(severe: SevereBars, namesSheet: boolean, streams: Streams): void {
  for (const words of severeWords(severe, namesSheet)) streams.result(`newer, ${words}`);
}

function jsonComparison(compared: CompareJob) {
  const { comparison } = compared;
  return {
    changes: comparison.changes.map((change) => ({
      kind: change.kind,
      severity: change.severity,
      released: change.released,
      sheet: change.sheet,
      row: placeOf(change, compared)?.row ?? null,
      member: change.member,
      mark: change.mark,
      pour: change.pour,
      cells: change.cells.map((cell) => ({
        field: cell.field,
        cell: addressOf(change, cell.column, compared),
        before: cell.before,
        after: cell.after,
      })),
      count: { before: change.countBefore, after: change.countAfter },
      kg: { before: change.massBefore, after: change.massAfter },
    })),
    pours: comparison.pours.map(({ pour, barsBefore, barsAfter, massBefore, massAfter }) => ({
      pour: pour ?? "",
      bars: { before: barsBefore, after: barsAfter },
      t: { before: massBefore / 1000, after: massAfter / 1000 },
    })),
    unchanged: comparison.unchanged,
    notCompared: comparison.notCompared,
  };
}

/** The sheet's own row number of the bar, in the book it stands in. */
function placeOf(change: BarChange, { sheetOf }: CompareJob) {
  const bar = change.after ?? change.before;
  const sheet = sheetOf(change);
  return bar === null || sheet === undefined ? null : { row: sheet.top + bar.row + 1, sheet };
}

function addressOf(change: BarChange, column: number | null, compared: CompareJob): string | null {
  const place = placeOf(change, compared);
  return place === null || column === null ? null : addressAt(place.row - 1, place.sheet.left + column);
}

/** characters of a member or mark that a line of the terminal names */
const LONGEST_NAME = 120;

/** In short the changes of what is released already, and the tonnes. */
function printComparison(compared: CompareJob, streams: Streams, isSummary: boolean): void {
  const { changes: all, pours, unchanged, notCompared } = compared.comparison;
  const changes = isSummary ? all.filter(({ severity }) => severity === "unsafe") : all;
  for (const change of changes) {
    const row = placeOf(change, compared)?.row ?? "";
    const parts = [change.member, change.mark].filter((part) => part !== null);
    const name = parts.map((part) => shorten(part, LONGEST_NAME)).join(" / ");
    const released = change.released ? "RELEASED ALREADY, " : "";
    streams.result(`${released}${change.kind}: ${name} (${change.sheet} row ${row})`);
    for (const cell of change.cells) {
      streams.result(`  ${cell.field}: ${cell.before ?? "blank"} -> ${cell.after ?? "blank"}`);
    }
  }
  if (changes.length > 0) streams.result("");
  for (const { pour, barsBefore, barsAfter, massBefore, massAfter } of pours) {
    streams.result(
      `${pour ?? "no pour"}: ${barsBefore} -> ${barsAfter} bars, ${tonnesOf(massBefore)} -> ${tonnesOf(massAfter)} t`,
    );
  }
  const open = notComparedWords(notCompared);
  streams.result(`${all.length} bars differ, ${unchanged} do not${open === null ? "" : `; ${open}`}`);
}
