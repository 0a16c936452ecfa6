import {
  type BarFilter,
  filteredBy,
  isAsked,
  type JobBar,
  type ReadBook,
  type ToldFinding,
  unknownFilter,
} from "../../../core/jobs";
import { refusalText } from "../../../core/units/refusal";
import { columnsGiven } from "../columns-given";
import { InputRefused } from "../input-refused";
import type { GivenOptions } from "../read-options";
import { ownOfFile } from "../standard-for";
import type { Streams } from "../streams";
import { type BooksNamed, booksNamed } from "./books-named";
import type { JobTask } from "./digest-file";

/** What a command is asked of many books; null where it names one book and asks for no lines. */
export interface JobAsked {
  readonly named: BooksNamed;
  readonly task: JobTask;
  readonly filter: BarFilter;
}

/** The job that the arguments name; null for a single book, which answers in its own shape. */
export function jobAsked(
  given: GivenOptions,
  streams: Streams,
  { isJob = false, targets = [] }: { readonly isJob?: boolean; readonly targets?: readonly string[] } = {},
): JobAsked | null {
  const named = booksNamed(given.positionals, targets);
  if (!named.isJob && !isJob && !given.flag("jsonl")) return null;
  for (const note of named.notes) streams.note(note);
  // tells of its faults once, before any worker reads it
  ownOfFile(given, streams);
  return {
    named,
    task: {
      sheet: given.text("sheet"),
      standard: given.text("standard"),
      own: given.text("own"),
      explain: given.flag("explain"),
      columns: columnsGiven(given.texts("read") ?? []),
    },
    filter: filterOf(given),
  };
}

/** The bars that --pour and --size leave; a pour's name may hold commas, a size's does not. */
export function filterOf(given: GivenOptions): BarFilter {
  return {
    pours: given.texts("pour"),
    sizes: given.texts("size")?.flatMap((text) => text.split(",")) ?? null,
  };
}

/** What --pour and --size leave alone, as a page says it; empty where they leave all. */
export function narrowedTo({ pours, sizes }: BarFilter): string[] {
  const asked = [
    pours === null ? [] : [`pour ${pours.join(", ")}`],
    sizes === null ? [] : [`size ${sizes.join(", ")}`],
  ].flat();
  return asked.length === 0 ? [] : [`only ${asked.join(" and ")}: no other bars are here`];
}

/** The same, refused where it names a pour or size that no bar of the schedules has. */
export function filterFor(given: GivenOptions, ...books: readonly Pick<ReadBook, "schedules">[]): BarFilter {
  const filter = filterOf(given);
  refuseUnknown(filter, () => books.flatMap(({ schedules }) => filteredBy(schedules)));
  return filter;
}

/** Ends a command whose filter asks for what no bar is; the bars are asked for only where there is a filter. */
export function refuseUnknown(filter: BarFilter, bars: () => readonly Pick<JobBar, "pour" | "size">[]): void {
  if (!isNarrow(filter)) return;
  const unknown = unknownFilter(filter, bars());
  if (unknown !== null) throw new InputRefused(refusalText(unknown));
}

export const isNarrow = ({ pours, sizes }: BarFilter): boolean => pours !== null || sizes !== null;

/** The findings on bars that are asked for, and those that are on no bar. */
export function askedFindings<Found extends Pick<ToldFinding, "sheet" | "row">>(
  findings: readonly Found[],
  bars: readonly Pick<JobBar, "sheet" | "row" | "pour" | "size">[],
  filter: BarFilter,
): readonly Found[] {
  if (!isNarrow(filter)) return findings;
  const byRow = new Map(bars.map((bar) => [`${bar.row} ${bar.sheet}`, bar]));
  return findings.filter(({ sheet, row }) => {
    const bar = byRow.get(`${row} ${sheet}`);
    return bar === undefined || isAsked(filter, bar);
  });
}
