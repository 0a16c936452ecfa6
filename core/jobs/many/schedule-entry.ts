import { plain, revisionInName, sheetRevision } from "../../audit/sheet-revision";
import { scheduleHead } from "../../schedule/schedule-head";
import type { ReadSheet } from "../../totals/reckon-tonnage";
import { barKey, barPrint, type JobBar } from "./job-bar";

/** A mark of a schedule, as far as schedules are held against each other. */
export interface MarkEntry {
  readonly row: number;
  readonly key: string;
  readonly member: string | null;
  readonly mark: string;
  readonly size: string;
  readonly print: string;
  readonly members: number | null;
  readonly count: number | null;
}

/** What a job must know of one schedule: which one it is, which revision, and its marks. */
export interface ScheduleEntry {
  readonly book: string;
  readonly sheet: string;
  /** as it is shown */
  readonly number: string;
  /** as it is compared: job, reference and sheet of several, else the file's and sheet's own name */
  readonly key: string;
  /** its title block says its reference */
  readonly isNumbered: boolean;
  readonly revision: string | null;
  /** a revision that its title block says, and one that its file's name says */
  readonly blockRevision: string | null;
  readonly fileRevision: string | null;
  readonly part: { readonly sheet: number; readonly of: number | null } | null;
  readonly job: string | null;
  readonly date: string | null;
  readonly title: string | null;
  readonly drawing: string | null;
  /** the day that its title block gives its pour */
  readonly pourDate: string | null;
  /** who drew it up, as its title block says */
  readonly office: string | null;
  /** the member and the steel that its title block says */
  readonly member: string | null;
  readonly steel: string | null;
  /** mm: covers that a note gives for all, and on which rows */
  readonly covers: readonly { readonly row: number; readonly mm: number }[];
  /** words of the title block or the file's name that say it is not to be built from */
  readonly withdrawn: string | null;
  readonly standard: string;
  readonly lengthUnit: string | null;
  readonly held: string | null;
  readonly pours: readonly string[];
  readonly sizes: readonly string[];
  readonly bars: number;
  /** kg of the bars in its own totals */
  readonly kg: number;
  /** numbers on its lines that sum */
  readonly sums: readonly number[];
  readonly marks: readonly MarkEntry[];
}

const WITHDRAWN =
  /\b(superseded|withdrawn|cancelled|void|obsolete|preliminary|for information|not for construction)\b/i;
/** What a file manager or a person puts about a copy's name. */
const COPY_WORDS = /^copy of |\s*-?\s*copy(?: ?\(?\d*\)?)?$|\s*\(\d+\)$|[\s_-]+(?:final|new|old)$/gi;
const OFFICE_WORDS = ["detailer", "detailed by", "prepared by", "drawn by", "office"];
const ONE_OF = /^(\d+)\s*(?:of|\/|-)\s*(\d+)$/i;

/** Which schedule a sheet of a book is, from its title block, else from the names of file and sheet. */
export function scheduleEntry(
  book: string,
  { sheet, reading }: ReadSheet,
  bars: readonly JobBar[],
  of: { readonly standard: string; readonly isOnly: boolean },
): ScheduleEntry {
  const head = scheduleHead(reading);
  const said = sheetRevision({ reading, name: sheet.name });
  const file = fileWords(book);
  const reference = head.schedule ?? head.drawing;
  const isNumbered = reference !== null;
  const part = partOf(reading.titleFacts) ?? partOfName(sheet.name);
  const named = revisionInName(sheet.name);
  const own = of.isOnly ? "" : ` ${plain(named?.rest ?? sheet.name)}`;
  const key = isNumbered
    ? `${said.schedule}${part === null ? "" : `/${part.sheet}`}`
    : `file ${plain(file.rest)}${own}`;
  const status = reading.titleFacts?.get("status") ?? "";
  const blockRevision = isNumbered || head.revision !== null ? said.revision : null;
  return {
    book,
    sheet: sheet.name,
    number: (reference === null ? file.rest : revisionInName(reference)?.rest.trim() || reference).trim(),
    key,
    isNumbered,
    revision: said.revision ?? file.revision,
    blockRevision,
    fileRevision: file.own,
    part,
    job: head.job,
    date: head.date,
    title: fact(reading, ["title"]),
    drawing: head.drawing,
    pourDate: fact(reading, ["pour date", "date of pour"]),
    office: fact(reading, OFFICE_WORDS),
    member: fact(reading, ["member", "element"]),
    steel: fact(reading, ["steel", "steel grade", "grade of steel"]),
    covers: coversSaid(sheet, reading),
    withdrawn: WITHDRAWN.exec(`${status} ${spaced(book)}`)?.[1]?.toLowerCase() ?? null,
    standard: of.standard,
    lengthUnit: reading.tables[0]?.columns.get("length")?.unit ?? null,
    held: reading.held?.reason ?? null,
    pours: [
      ...new Set(bars.flatMap(({ pour }) => (pour === null || pour.trim() === "" ? [] : [pour.trim()]))),
    ],
    sizes: [...new Set(bars.flatMap(({ size }) => size ?? []))],
    bars: bars.length,
    kg: bars.reduce((sum, { kg }) => sum + (kg ?? 0), 0),
    sums: reading.totals.flatMap(({ cells }) => cells.map(({ value }) => value)).filter((value) => value > 0),
    marks: bars.flatMap((bar) => markEntry(bar) ?? []),
  };
}

/** Covers in notes that name no face: what is of one face may differ from another. */
function coversSaid(
  sheet: ReadSheet["sheet"],
  { rowClasses }: ReadSheet["reading"],
): ScheduleEntry["covers"] {
  const found: { row: number; mm: number }[] = [];
  rowClasses.forEach((kind, row) => {
    if (kind !== "note") return;
    for (let column = 0; column < sheet.columnCount; column += 1) {
      const text = sheet.cell(row, column);
      if (typeof text !== "string" || text.length > LONGEST_NOTE) continue;
      for (const part of text.split(/[.;](?!\d)/)) {
        const said = COVER.exec(part);
        if (said !== null && !OF_A_FACE.test(part))
          found.push({ row: sheet.top + row + 1, mm: Number(said[1]) });
      }
    }
  });
  return found;
}

const LONGEST_NOTE = 1000;
const COVER =
  /\bcover\b(?:\s+to\s+(?:all\s+)?(?:bars|reinforcement|steel))?\s*(?:is|of|:|=|-)?\s*(\d{2,3})\s*mm\b/i;
const OF_A_FACE =
  /\b(?:top|bottom|sides?|near|far|inner|inside|outer|outside|earth|ground|soil|water|exposed|internal|external|links?|main|ends?|blinding|soffit|blocks?|spacers?|minimum)\b/i;

function fact({ titleFacts }: ReadSheet["reading"], words: readonly string[]): string | null {
  return words.map((word) => titleFacts?.get(word)?.trim()).find(Boolean) ?? null;
}

/** "Sheet 1 of 2" as a sheet is called. */
function partOfName(name: string): ScheduleEntry["part"] {
  const found = /\b(?:sheet|page|part)\s*(\d{1,3})\s*(?:of|\/)\s*(\d{1,3})\b/i.exec(name);
  return found === null ? null : { sheet: Number(found[1]), of: Number(found[2]) };
}

function markEntry(bar: JobBar): MarkEntry | null {
  const key = barKey(bar);
  // of two revisions in one book the job judges itself
  if (key === null || (bar.notInTotal !== null && !bar.isReplaced)) return null;
  const { row, size, members, count } = bar;
  const member = key.startsWith("\n") ? null : bar.member;
  return { row, key, member, mark: bar.mark ?? "", size, print: barPrint(bar), members, count };
}

/** A file's name without its kind and words of a copy; its revision, else that of a folder it lies in. */
export function fileWords(book: string): {
  readonly rest: string;
  readonly revision: string | null;
  /** of the file's own name */
  readonly own: string | null;
} {
  const parts = book.split(/[/\\]/);
  const stem = (parts.pop() ?? "").replace(/\.[^.]*$/, "").replace(COPY_WORDS, "");
  const named = revisionInName(stem);
  const folder = parts.reverse().flatMap((part) => revisionInName(part)?.revision ?? [])[0] ?? null;
  const rest = named === null || named.rest.trim() === "" ? stem : named.rest;
  return { rest: rest.trim(), revision: named?.revision ?? folder, own: named?.revision ?? null };
}

const spaced = (text: string): string => text.replace(/[_.\-/\\]+/g, " ");

function partOf(facts: ReadonlyMap<string, string> | null | undefined): ScheduleEntry["part"] {
  const text = (facts?.get("sheet") ?? facts?.get("sheet no") ?? "").trim();
  const both = ONE_OF.exec(text);
  if (both !== null) return { sheet: Number(both[1]), of: Number(both[2]) };
  return /^\d{1,3}$/.test(text) ? { sheet: Number(text), of: null } : null;
}
