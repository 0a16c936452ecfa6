import { notToldLines } from "../../core/audit/not-told-words";
import { type RefusedRow, refusedText } from "../../core/cutting";
import {
  askedBars,
  asksOf,
  checkOpened,
  cutListOf,
  holdsOf,
  openForJob,
  piecesNotToMake,
  piecesOf,
  piecesToAsk,
  readForCutting,
  shopNotes,
  wholeSheetWords,
} from "../../core/jobs";
import { scheduleHead } from "../../core/tickets";
import { counted } from "../../core/units/counted";
import { isRefusal } from "../../core/units/refusal";
import { cutListPage } from "../print/cut-list-page";
import { headOfSchedules } from "../print/head-of-schedules";
import { answerOf } from "./answer-of";
import { bookAsked } from "./book-asked";
import type { Command } from "./command";
import { copyWithRemnants } from "./copy-with-remnants";
import { InputRefused } from "./input-refused";
import { cutJob } from "./job/cut-job";
import { filterFor, jobAsked, narrowedTo } from "./job/job-asked";
import { JOB_OPTIONS } from "./job/read-job";
import { jsonPlan, printCutList } from "./print-cut-list";
import { READ_OPTIONS, STANDARD_OPTIONS } from "./standard-for";
import { stockGiven } from "./stock-given";
import { isWorkbookName, refuseTarget, writeCopy } from "./write-copy";
import { refusePage, writePage } from "./write-page";

/** `cutplan BOOK`: which stock bars to buy and how to cut them, size by size, with the bound. */
export const cutplan: Command = {
  name: "cutplan",
  usage:
    "cutplan BOOK... [--summary] [--pour NAME] [--size SIZES] [--stock 12000,9000] [--out FILE.html | COPY.xlsx [--again]] [--sheet NAME] [--standard ID] [--own FILE] [--read COLUMNS] [--json]",
  summary: "cutting plan and its bound; --out writes the cut list, or a copy with the remnants booked",
  options: {
    stock: { type: "string" },
    out: { type: "string" },
    again: { type: "boolean" },
    summary: { type: "boolean" },
    ...JOB_OPTIONS,
    sheet: { type: "string" },
    ...STANDARD_OPTIONS,
    ...READ_OPTIONS,
    json: { type: "boolean" },
  },
  async run(given, streams) {
    const target = given.text("out");
    const job = jobAsked(given, streams, { targets: target === null ? [] : [target] });
    if (job !== null) return cutJob(job, target, given, streams);
    const { path, book, question } = bookAsked(given, streams, (path) => {
      if (target !== null) (isWorkbookName(target) ? refuseTarget : refusePage)(path, target);
    });
    const opened = answerOf(openForJob(book, question));
    const { standard, sheets, workshop } = opened;
    const stock = stockGiven(given.text("stock"), standard);
    const whole = answerOf(readForCutting(opened));
    const filter = filterFor(given, whole);
    const read = { ...whole, schedules: askedBars(whole.schedules, filter) };
    for (const note of [...read.notes, ...shopNotes(workshop)]) streams.note(note);
    const { groups, refused, supply, toBuy, notes: planned } = cutListOf({ ...read, stock });
    if (groups.length === 0) refuseUnread(refused);
    const checked = read.schedules.length === 0 ? null : checkOpened(opened, question);
    const report = checked === null || isRefusal(checked) ? null : checked.report;
    const { rows } = report === null ? { rows: [] } : piecesOf(read);
    const notToMake = piecesNotToMake(rows, holdsOf(report?.byRow ?? []));
    const toAsk = piecesToAsk(rows, asksOf(report?.byRow ?? []), notToMake);
    const notes = [...planned, ...wholeSheetWords(report?.findings ?? [])];
    const notTold = notToldLines(report?.waivers ?? []);
    for (const note of [...notes, ...notTold]) streams.note(note);
    if (target !== null) {
      if (isWorkbookName(target)) {
        const { leastRemnant } = supply;
        const copied = {
          book,
          groups,
          leastRemnant,
          standard,
          sheets,
          notToMake,
          isAgain: given.flag("again"),
        };
        const { bytes, said } = copyWithRemnants(copied);
        writeCopy(target, bytes);
        for (const line of said) streams.note(line);
      } else {
        const { endCrop, kerf } = supply;
        const namesSheets = sheets.length > 1;
        const { unit } = standard;
        const facts = { refused, notToMake, toAsk, namesSheets, toBuy, endCrop, kerf, unit };
        const heads = read.schedules.map(({ reading }) => scheduleHead(reading));
        const leftOut = [...narrowedTo(filter), ...read.notes, ...notes];
        writePage(
          path,
          target,
          cutListPage(groups, { ...headOfSchedules(heads, standard.id), leftOut, notTold }, facts),
        );
      }
      streams.note(`written: ${target}`);
    }
    if (given.flag("json"))
      streams.result(
        JSON.stringify({ ...jsonPlan({ groups, refused, notToMake, toAsk }, standard.unit), notTold }),
      );
    else {
      const how = { namesSheets: sheets.length > 1, isSummary: given.flag("summary") };
      printCutList({ groups, refused, notToMake, toAsk }, how, standard.unit, streams);
    }
    return refused.length + notToMake.length > 0 ? 1 : 0;
  },
};

/** Where not one row is a bar with a length and a count, the input could not be read. */
function refuseUnread(refused: readonly RefusedRow[]): void {
  const [first] = refused;
  if (first === undefined)
    throw new InputRefused("no piece to cut was found: lengths and counts are blank or 0");
  const isKnown = refused.some(({ longestStock, cell }) => longestStock !== null || cell === null);
  if (isKnown) return;
  const more = refused.length === 1 ? "" : `; ${counted(refused.length - 1, "more row")} likewise`;
  throw new InputRefused(`nothing can be planned: ${refusedText({ ...first, sheet: null })}${more}`);
}
