import { labelsOf, loadsOf } from "../../../core/jobs";
import { loadsPage } from "../../print/loads-page";
import { answerOf } from "../answer-of";
import type { ExitCode } from "../command";
import { InputRefused } from "../input-refused";
import { jsonLoads, lorryGiven, printLoads } from "../print-loads";
import type { GivenOptions } from "../read-options";
import type { Streams } from "../streams";
import { bundleLimit } from "../ticket-pages";
import { refusePage, writePage } from "../write-page";
import { type JobAsked, narrowedTo } from "./job-asked";
import { heatsOfJob } from "./pieces-of-job";
import { readJob } from "./read-job";
import { jobHead, ticketsOfJob } from "./ticket-job";

/** `loads` over many books: lorries loaded from all schedules that count, by the first Shop sheet among them. */
export async function loadJob(asked: JobAsked, given: GivenOptions, streams: Streams): Promise<ExitCode> {
  const target = given.text("out");
  const { paths } = asked.named;
  if (target !== null) for (const path of paths) refusePage(path, target);
  const job = await readJob(paths, asked.task, given, streams);
  try {
    const { pieces, of } = heatsOfJob(asked, job);
    const { first, workshop } = pieces;
    for (const note of pieces.notes) streams.note(note);
    const { books, unread, all, notes, isUnmakeable } = ticketsOfJob(asked, job, streams, of);
    if (first === null || workshop === null) throw new InputRefused("none of the books has a schedule");
    const { unit, id } = first.standard;
    const labels = answerOf(labelsOf(all, bundleLimit(given.text("bundle-limit"), workshop)));
    const made = answerOf(loadsOf(labels.bundles, workshop.shop, lorryGiven(given, unit)));
    for (const note of [...labels.notes, ...made.notes]) streams.note(note);
    if (target !== null) {
      const said = [...narrowedTo(asked.filter), ...pieces.notes, ...notes, ...labels.notes, ...made.notes];
      writePage(paths[0]!, target, loadsPage(made.loads, jobHead(all, id, said), unit));
      streams.note(`written: ${target}`);
    }
    if (given.flag("json")) {
      const read = books.map(({ book, tickets }) => ({ book, tickets: tickets.length }));
      const { findings } = job.judged;
      const told = { ...jsonLoads(made.loads), unreadable: unread, findings };
      streams.result(JSON.stringify({ books: [...read, ...unread], job: told }));
    } else printLoads(made.loads, unit, streams, { isSeveral: true, isSummary: given.flag("summary") });
    if (unread.length > 0) return 2;
    return made.loads.left.length > 0 || isUnmakeable ? 1 : 0;
  } finally {
    job.close();
  }
}
