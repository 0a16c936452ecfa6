import { proofWords, type RefusedRow, refusedText, type SizePlan, type Stock } from "../../core/cutting";
import { cutListOf, openForJob, readForCutting, shopNotes } from "../../core/jobs";
import type { ScheduleReading } from "../../core/schedule";
import type { Standard } from "../../core/standards";
import { scheduleHead } from "../../core/tickets";
import { fromMillimetres } from "../../core/units/convert-length";
import type { LengthUnit } from "../../core/units/length-unit";
import { parseLength } from "../../core/units/parse-length";
import { isRefusal, refusalText } from "../../core/units/refusal";
import { cutListPage } from "../print/cut-list-page";
import { heatWords } from "../print/heat-words";
import type { ScheduleHead } from "../print/print-page";
import { answerOf } from "./answer-of";
import { bookAsked } from "./book-asked";
import type { Command } from "./command";
import { copyWithRemnants } from "./copy-with-remnants";
import { InputRefused } from "./input-refused";
import { STANDARD_OPTIONS } from "./standard-for";
import type { Streams } from "./streams";
import { refuseTarget, writeCopy } from "./write-copy";
import { refusePage, writePage } from "./write-page";

/** `cutplan BOOK`: which stock bars to buy and how to cut them, size by size, with the bound. */
export const cutplan: Command = {
  name: "cutplan",
  usage:
    "cutplan BOOK [--stock 12000,9000] [--out FILE.html | COPY.xlsx [--again]] [--sheet NAME] [--standard ID] [--own FILE] [--json]",
  summary: "cutting plan and its bound; --out writes the cut list, or a copy with the remnants booked",
  options: {
    stock: { type: "string" },
    out: { type: "string" },
    again: { type: "boolean" },
    sheet: { type: "string" },
    ...STANDARD_OPTIONS,
    json: { type: "boolean" },
  },
  async run(given, streams) {
    const target = given.text("out");
    const { path, book, question } = bookAsked(given, streams, (path) => {
      if (target !== null) (isWorkbookName(target) ? refuseTarget : refusePage)(path, target);
    });
    const opened = answerOf(openForJob(book, question));
    const { standard, sheets, workshop } = opened;
    const stock = stockGiven(given.text("stock"), standard);
    const read = answerOf(readForCutting(opened));
    for (const note of [...read.notes, ...shopNotes(workshop)]) streams.note(note);
    const { groups, refused, supply, toBuy, notes } = cutListOf({ ...read, stock });
    if (groups.length === 0) refuseUnread(refused);
    for (const note of notes) streams.note(note);
    if (target !== null) {
      if (isWorkbookName(target)) {
        const { leastRemnant } = supply;
        const copied = { book, groups, leastRemnant, standard, sheets, isAgain: given.flag("again") };
        const { bytes, said } = copyWithRemnants(copied);
        writeCopy(target, bytes);
        for (const line of said) streams.note(line);
      } else {
        const { endCrop, kerf } = supply;
        const facts = { refused, toBuy, endCrop, kerf, unit: standard.unit };
        const [first] = read.schedules;
        writePage(path, target, cutListPage(groups, headOf(first?.reading, standard), facts));
      }
      streams.note(`written: ${target}`);
    }
    const out = (mm: number): number => Number(fromMillimetres(mm, standard.unit).toPrecision(12));
    if (given.flag("json")) {
      const json = {
        groups: groups.map((group) => jsonGroup(group, out)),
        refused: refused.map((row) => jsonRefused(row, out, standard.unit)),
      };
      streams.result(JSON.stringify(json));
    } else {
      for (const group of groups) printPlan(group, out, streams);
      printRefused(refused, groups.length === 0, sheets.length > 1, standard.unit, streams);
    }
    return refused.length > 0 ? 1 : 0;
  },
};

function stockGiven(option: string | null, standard: Standard): Stock[] | null {
  if (option === null) return null;
  return option.split(",").map((text) => {
    const length = parseLength(text.trim(), standard.unit);
    if (isRefusal(length)) throw new InputRefused(`--stock: ${refusalText(length)}`);
    return { length, count: null, remnant: false };
  });
}

/** Where not one row is a bar with a length and a count, the input could not be read. */
function refuseUnread(refused: readonly RefusedRow[]): void {
  const [first] = refused;
  if (first === undefined)
    throw new InputRefused("no piece to cut was found: lengths and counts are blank or 0");
  const isKnown = refused.some(({ longestStock, cell }) => longestStock !== null || cell === null);
  if (isKnown) return;
  const more = refused.length === 1 ? "" : `; ${refused.length - 1} more rows likewise`;
  throw new InputRefused(`nothing can be planned: ${refusedText({ ...first, sheet: null })}${more}`);
}

function headOf(reading: ScheduleReading | undefined, standard: Standard): ScheduleHead {
  const head = reading === undefined ? null : scheduleHead(reading);
  return {
    job: head?.job ?? null,
    schedule: head?.schedule ?? null,
    revision: head?.revision ?? null,
    standard: standard.id,
  };
}

function jsonGroup({ size, grade, stock, plan, list }: SizePlan, out: (mm: number) => number) {
  return {
    size,
    ...(grade === null ? {} : { grade }),
    stock: [...new Set(stock.map(({ length }) => out(length)))],
    bars: plan.bars,
    stockLength: out(plan.stockLength),
    lowerBound: plan.boundIn === "bars" ? plan.lowerBound : out(plan.lowerBound),
    pieces: plan.pieces,
    wasteRatio: plan.wasteRatio,
    patterns: plan.patterns.map((pattern, at) => ({
      stock: out(pattern.stock),
      cuts: pattern.cuts.map(({ length, count }) => ({ length: out(length), count })),
      times: pattern.times,
      ...(list[at]!.heats.length === 0 ? {} : { heats: list[at]!.heats }),
    })),
  };
}

function jsonRefused(row: RefusedRow, out: (mm: number) => number, unit: LengthUnit) {
  const { size, grade, mark, sheet, cell, length, count, longestStock, reason } = row;
  return {
    size,
    grade,
    mark,
    sheet,
    cell,
    length: length === null ? null : out(length),
    count,
    longestStock: longestStock === null ? null : out(longestStock),
    code: reason.code,
    message: refusalText(reason, unit),
  };
}

function printPlan(group: SizePlan, out: (mm: number) => number, streams: Streams): void {
  const { size, grade, plan, list } = group;
  const got = plan.boundIn === "bars" ? plan.barsBought : out(plan.stockLength);
  const bound = plan.boundIn === "bars" ? plan.lowerBound : out(plan.lowerBound);
  const proof = proofWords(plan, String(bound));
  const waste = (plan.wasteRatio * 100).toFixed(1);
  const name = size === "" ? "all pieces" : [size, grade].filter((part) => part !== null).join(" ");
  const remnants = plan.bars - plan.barsBought;
  const own = remnants === 0 ? "" : ` (${remnants} of them remnants)`;
  streams.result(
    `${name}: ${counted(plan.bars, "bar")}${own} for ${counted(plan.pieces, "piece")}, ${waste} % left over; ${got} to buy, ${proof}`,
  );
  for (const [at, { stock, cuts, times, offcut, remnant }] of plan.patterns.entries()) {
    const words = cuts.map(({ length, count }) => `${count} x ${out(length)}`).join(" + ");
    const from = remnant ? " remnant" : "";
    const { heats } = list[at]!;
    const ofHeats = heats.length === 0 ? "" : `; ${heatWords(heats)}`;
    streams.result(`  ${times} x ${out(stock)}${from}: ${words}, rest ${out(offcut)}${ofHeats}`);
  }
}

const counted = (count: number, word: string): string => `${count} ${word}${count === 1 ? "" : "s"}`;

function printRefused(
  refused: readonly RefusedRow[],
  isAll: boolean,
  namesSheets: boolean,
  unit: LengthUnit,
  streams: Streams,
): void {
  if (refused.length === 0) return;
  const rows = refused.length === 1 ? "1 row is" : `${refused.length} rows are`;
  streams.result(isAll ? `nothing can be planned: ${rows} refused` : `in no plan: ${rows} refused`);
  for (const row of refused)
    streams.result(`  ${refusedText(namesSheets ? row : { ...row, sheet: null }, unit)}`);
}

const isWorkbookName = (path: string): boolean => /\.xls[xm]$/i.test(path);
