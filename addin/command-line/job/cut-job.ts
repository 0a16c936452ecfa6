import { cuttingSupply } from "../../../core/cutting";
import { planPieces, shopNotes } from "../../../core/jobs";
import type { Ticket } from "../../../core/tickets";
import { cutListPage } from "../../print/cut-list-page";
import { headOfSchedules } from "../../print/head-of-schedules";
import type { ExitCode } from "../command";
import { InputRefused } from "../input-refused";
import { jsonPlan, printCutList } from "../print-cut-list";
import type { GivenOptions } from "../read-options";
import { stockGiven } from "../stock-given";
import type { Streams } from "../streams";
import { isWorkbookName, refuseTarget, writeCopy } from "../write-copy";
import { refusePage, writePage } from "../write-page";
import { cutWorkbook } from "./cut-workbook";
import { type JobAsked, narrowedTo } from "./job-asked";
import { piecesOfJob } from "./pieces-of-job";
import { type JobRead, readJob } from "./read-job";

/** `cutplan` over many books: one plan over all schedules that count, by the first Shop sheet among them. */
export async function cutJob(
  asked: JobAsked,
  target: string | null,
  given: GivenOptions,
  streams: Streams,
): Promise<ExitCode> {
  if (target !== null)
    for (const path of asked.named.paths) (isWorkbookName(target) ? refuseTarget : refusePage)(path, target);
  if (given.flag("again"))
    throw new InputRefused(
      "--again books the rests of a cut list on one workbook's Shop sheet: name one book",
    );
  const job = await readJob(asked.named.paths, asked.task, given, streams);
  try {
    const { rows, refused, notToMake, toAsk, books, first, workshop, notes, places } = piecesOfJob(
      asked,
      job,
    );
    for (const note of notes) streams.note(note);
    for (const { book, error } of books) if (error !== null) streams.note(`not read: ${book}: ${error}`);
    if (first === null || workshop === null || rows.length === 0)
      throw new InputRefused("no piece to cut was found in any of the books");
    const { standard } = first;
    for (const note of shopNotes(workshop)) streams.note(note);
    const supply = cuttingSupply(workshop.shop, standard, stockGiven(given.text("stock"), standard));
    const plan = planPieces({ rows, refused, notes: [] }, supply, standard);
    const left = [...plan.notes, ...leftOutNotes(job.judged.schedules)];
    for (const note of left) streams.note(note);
    const gone = books.flatMap(({ book, error }) => (error === null ? [] : [`not read: ${book}: ${error}`]));
    const said = [...notes, ...gone, ...left];
    if (target !== null && isWorkbookName(target)) {
      const leftOut = leftOutNotes(job.judged.schedules);
      writeCopy(target, cutWorkbook({ ...plan, places, leftOut, unit: standard.unit }));
      streams.note(`written: ${target}; no rest is booked on a Shop sheet`);
    } else if (target !== null) {
      const { endCrop, kerf } = supply;
      const { toBuy } = plan;
      const { unit } = standard;
      const of = { refused: plan.refused, notToMake, toAsk, toBuy };
      const facts = { ...of, namesSheets: true, endCrop, kerf, unit };
      const heads = headsOf(job.judged.schedules, [...places.values()]);
      const leftOut = [...narrowedTo(asked.filter), ...said];
      const head = { ...headOfSchedules(heads, standard.id), leftOut };
      writePage(asked.named.paths[0]!, target, cutListPage(plan.groups, head, facts));
      streams.note(`written: ${target}`);
    }
    if (given.flag("json"))
      streams.result(
        JSON.stringify({
          books,
          job: { ...jsonPlan({ ...plan, notToMake, toAsk }, standard.unit), findings: job.judged.findings },
        }),
      );
    else {
      const how = { namesSheets: true, isSummary: given.flag("summary") };
      printCutList({ ...plan, notToMake, toAsk }, how, standard.unit, streams);
    }
    return books.some(({ error }) => error !== null) ? 2 : plan.refused.length + notToMake.length > 0 ? 1 : 0;
  } finally {
    job.close();
  }
}

/** What the schedules call themselves that rows stand under. */
function headsOf(
  schedules: JobRead["judged"]["schedules"],
  places: readonly { readonly book: string; readonly sheet: string }[],
): Ticket["head"][] {
  return schedules
    .filter(({ book, sheet }) => places.some((place) => place.book === book && place.sheet === sheet))
    .map(({ number, job, drawing, revision, date }) => ({ schedule: number, job, drawing, revision, date }));
}

/** Schedules of which nothing, or not all, is in what a job makes. */
export function leftOutNotes(
  schedules: readonly { book: string; number: string; standing: { because: string | null } }[],
): string[] {
  return schedules.flatMap(({ book, number, standing }) =>
    standing.because === null ? [] : [`${book}: ${number}: ${standing.because}`],
  );
}
