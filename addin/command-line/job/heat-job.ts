import { refusedText } from "../../../core/cutting";
import { type HeatRow, heatUses, isAsked } from "../../../core/jobs";
import type { ExitCode } from "../command";
import { InputRefused } from "../input-refused";
import { isHeat, jsonHeat, noteHeatGone, printHeat, refuseWithoutHeats } from "../print-heats";
import type { GivenOptions } from "../read-options";
import type { Streams } from "../streams";
import type { JobAsked } from "./job-asked";
import { heatsOfJob, sheetInJob } from "./pieces-of-job";
import { readJob } from "./read-job";
import { ticketsOfJob } from "./ticket-job";

/** `heats` over many books: one cut list over all schedules that count, each heat with its bars in all of them. */
export async function heatJob(asked: JobAsked, given: GivenOptions, streams: Streams): Promise<ExitCode> {
  const job = await readJob(asked.named.paths, asked.task, given, streams);
  try {
    const { pieces, groups, of } = heatsOfJob(asked, job);
    const { first, workshop, places } = pieces;
    for (const note of pieces.notes) streams.note(note);
    const { books, unread } = ticketsOfJob(asked, job, streams, of);
    if (first === null || workshop === null) throw new InputRefused("none of the books has a schedule");
    refuseWithoutHeats(workshop);
    const tickets = books.flatMap(({ book, tickets: own }) =>
      own.map((ticket) => ({ ...ticket, sheet: sheetInJob(book, ticket.sheet) })),
    );
    const heat = given.text("heat");
    const uses = heatUses(groups, tickets)
      .filter((use) => heat === null || isHeat(use.heat, heat))
      .map((use) => {
        const rows = use.rows.filter(({ pour }) => isAsked(asked.filter, { pour, size: use.size }));
        return { ...use, rows: rows.map((row) => ({ ...row, ...placeIn(row, places) })) };
      })
      .filter(({ rows }) => rows.length > 0);
    const { unit } = first.standard;
    const { findings } = job.judged;
    if (given.flag("json")) {
      const read = books.map(({ book, tickets: own }) => ({ book, tickets: own.length }));
      const heats = uses.map((use) => jsonHeat(use, unit));
      streams.result(
        JSON.stringify({ books: [...read, ...unread], job: { heats, unreadable: unread, findings } }),
      );
    } else {
      for (const use of uses)
        printHeat(use, unit, streams, given.flag("summary"), (row) => {
          const { book, sheet } = placeIn(row, places);
          return `${book}, ${sheet}!${row.cell}`;
        });
    }
    for (const row of pieces.refused)
      streams.note(`of no heat, for it is in no plan: ${refusedText(row, unit)}`);
    if (heat !== null && uses.length === 0) noteHeatGone(heat, workshop, streams);
    return unread.length > 0 ? 2 : job.exit === 1 ? 1 : 0;
  } finally {
    job.close();
  }
}

function placeIn(
  row: HeatRow & { readonly book?: string },
  places: ReadonlyMap<string, { book: string; sheet: string }>,
) {
  return row.book === undefined
    ? (places.get(row.sheet) ?? { book: row.sheet, sheet: "" })
    : { book: row.book, sheet: row.sheet };
}
