import { decisionWords } from "../../core/audit/decision-words";
import type { BarRow, ScheduleReading, Sheet } from "../../core/schedule";
import type { Standard } from "../../core/standards";
import {
  type BarChange,
  compareRevisions,
  isInTotal,
  type RevisionComparison,
  weighRows,
} from "../../core/totals";
import { cellAddress } from "../workbook/cell-address";
import { auditSettingsOf } from "./audit-settings-of";
import type { Command } from "./command";
import { InputRefused } from "./input-refused";
import { openBook } from "./open-book";
import { readSchedules, readSheets, sayPassedOver } from "./read-schedules";
import { standardFor } from "./standard-for";
import type { Streams } from "./streams";

interface ReadBook {
  readonly sheets: readonly Sheet[];
  readonly readings: readonly ScheduleReading[];
}

/** `compare OLD NEW`: what a newer revision changes, bars that were released first. */
export const compare: Command = {
  name: "compare",
  usage: "compare OLD NEW [--released MARK,MARK] [--standard ID] [--json]",
  summary: "what a newer revision of a schedule changes",
  options: { released: { type: "string" }, standard: { type: "string" }, json: { type: "boolean" } },
  async run(given, streams) {
    const [old, young, more] = given.positionals;
    if (old === undefined || young === undefined || more !== undefined) {
      throw new InputRefused("name two files: the older revision, then the newer one");
    }
    const books = [openBook(old), openBook(young)] as const;
    const standard = standardFor(given.text("standard"), books[1].setting("Barwright.Standard"));
    const massOfBar = new Map<BarRow, number>();
    const [before, after] = books.map((book): ReadBook => {
      const sheets = readSheets(book, null);
      const read = readSchedules(book, sheets, standard, streams);
      sayPassedOver(read, streams);
      for (const { sheet, reading } of read) keepMasses(sheet, reading, standard, massOfBar);
      return { sheets, readings: read.map(({ reading }) => reading) };
    }) as [ReadBook, ReadBook];
    const released = (given.text("released") ?? "").split(",").map((mark) => mark.trim());
    const comparison = compareRevisions({
      before: before.readings,
      after: after.readings,
      massOf: (bar) => massOfBar.get(bar) ?? null,
      released: new Set(released.filter((mark) => mark !== "")),
    });
    const waivers = {
      before: decisionWords(auditSettingsOf(books[0])),
      after: decisionWords(auditSettingsOf(books[1])),
    };
    if (given.flag("json"))
      streams.result(JSON.stringify({ ...jsonComparison(comparison, before, after), waivers }));
    else {
      printComparison(comparison, before, after, streams);
      for (const words of waivers.before) streams.result(`older, not told: ${words}`);
      for (const words of waivers.after) streams.result(`newer, not told: ${words}`);
    }
    return comparison.changes.some(({ severity }) => severity === "unsafe") ? 1 : 0;
  },
};

function keepMasses(
  sheet: Sheet,
  reading: ScheduleReading,
  standard: Standard,
  masses: Map<BarRow, number>,
): void {
  weighRows(sheet, reading, standard).forEach((row, index) => {
    if (isInTotal(row)) masses.set(reading.bars[index]!, row.mass);
  });
}

function jsonComparison(comparison: RevisionComparison, before: ReadBook, after: ReadBook) {
  return {
    changes: comparison.changes.map((change) => ({
      kind: change.kind,
      severity: change.severity,
      released: change.released,
      sheet: change.sheet,
      row: placeOf(change, before, after)?.row ?? null,
      member: change.member,
      mark: change.mark,
      pour: change.pour,
      cells: change.cells.map((cell) => ({
        field: cell.field,
        cell: addressOf(change, cell.column, before, after),
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
  };
}

/** The sheet's own row number of the bar, in the book it stands in. */
function placeOf(change: BarChange, before: ReadBook, after: ReadBook) {
  const bar = change.after ?? change.before;
  const book = change.after === null ? before : after;
  const sheet = book.sheets.find(({ name }) => name === change.sheet);
  return bar === null || sheet === undefined ? null : { row: sheet.top + bar.row + 1, sheet };
}

function addressOf(
  change: BarChange,
  column: number | null,
  before: ReadBook,
  after: ReadBook,
): string | null {
  const place = placeOf(change, before, after);
  return place === null || column === null ? null : cellAddress(place.row - 1, place.sheet.left + column);
}

function printComparison(
  { changes, pours, unchanged }: RevisionComparison,
  before: ReadBook,
  after: ReadBook,
  streams: Streams,
): void {
  for (const change of changes) {
    const row = placeOf(change, before, after)?.row ?? "";
    const name = [change.member, change.mark].filter((part) => part !== null).join(" / ");
    const released = change.released ? "RELEASED ALREADY, " : "";
    streams.result(`${released}${change.kind}: ${name} (${change.sheet} row ${row})`);
    for (const cell of change.cells) {
      streams.result(`  ${cell.field}: ${cell.before ?? "blank"} -> ${cell.after ?? "blank"}`);
    }
  }
  if (changes.length > 0) streams.result("");
  for (const { pour, barsBefore, barsAfter, massBefore, massAfter } of pours) {
    const tonnes = (kg: number): string => (kg / 1000).toFixed(3);
    streams.result(
      `${pour ?? "no pour"}: ${barsBefore} -> ${barsAfter} bars, ${tonnes(massBefore)} -> ${tonnes(massAfter)} t`,
    );
  }
  streams.result(`${changes.length} bars differ, ${unchanged} do not`);
}
