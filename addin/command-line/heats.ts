import { notToldLines } from "../../core/audit/not-told-words";
import { refusedText } from "../../core/cutting";
import {
  askedBars,
  checkBooks,
  cutListOf,
  filteredBy,
  heatUses,
  heldRows,
  isAsked,
  isBroken,
  severeBars,
  severeWords,
  shopNotes,
  ticketsOf,
} from "../../core/jobs";
import { answerOf } from "./answer-of";
import { bookAsked } from "./book-asked";
import type { Command } from "./command";
import { heatJob } from "./job/heat-job";
import { filterFor, jobAsked } from "./job/job-asked";
import { JOB_OPTIONS } from "./job/read-job";
import { isHeat, jsonHeat, noteHeatGone, printHeat, refuseWithoutHeats } from "./print-heats";
import { STANDARD_OPTIONS } from "./standard-for";

/** `heats BOOK`: which marks came of which heat, by the cut list; one heat followed back with --heat. */
export const heats: Command = {
  name: "heats",
  usage:
    "heats BOOK... [--summary] [--heat NUMBER] [--pour NAME] [--size SIZES] [--sheet NAME] [--standard ID] [--own FILE] [--json]",
  summary: "mill certificates followed from the stock to marks and pours, and back",
  options: {
    heat: { type: "string" },
    summary: { type: "boolean" },
    ...JOB_OPTIONS,
    sheet: { type: "string" },
    ...STANDARD_OPTIONS,
    json: { type: "boolean" },
  },
  async run(given, streams) {
    const job = jobAsked(given, streams);
    if (job !== null) return heatJob(job, given, streams);
    const { book, question } = bookAsked(given, streams);
    const checked = answerOf(checkBooks([book], question)[0]!);
    const { workshop, standard, report, sheets } = checked;
    for (const note of [...checked.notes, ...shopNotes(workshop)]) streams.note(note);
    refuseWithoutHeats(workshop);
    const { tickets } = ticketsOf([{ report, sheets, workshop }]);
    const filter = filterFor(given, checked);
    const severe = severeWords(
      severeBars(
        heldRows(report, checked.schedules, workshop),
        filteredBy(askedBars(checked.schedules, filter)),
      ),
      checked.schedules.length > 1,
    );
    for (const note of [...severe, ...notToldLines(report.waivers)]) streams.note(note);
    const { groups, refused, notes } = cutListOf(checked);
    for (const note of notes) streams.note(note);
    const uses = heatUses(groups, tickets).map((use) => {
      const rows = use.rows.filter(({ pour }) => isAsked(filter, { pour, size: use.size }));
      return { ...use, rows };
    });
    const asked = given.text("heat");
    const shown = uses.filter(({ heat, rows }) => rows.length > 0 && (asked === null || isHeat(heat, asked)));
    if (given.flag("json"))
      streams.result(JSON.stringify({ heats: shown.map((use) => jsonHeat(use, standard.unit)) }));
    else for (const use of shown) printHeat(use, standard.unit, streams, given.flag("summary"));
    for (const row of refused)
      streams.note(`of no heat, for it is in no plan: ${refusedText(row, standard.unit)}`);
    if (asked !== null && shown.length === 0) noteHeatGone(asked, workshop, streams);
    return isBroken(checked) ? 1 : 0;
  },
};
