import { checkBooks, shopNotes, ticketsOf } from "../../core/jobs";
import {
  INSPECTION_COLUMNS,
  INSPECTION_SHEET,
  type InspectionSample,
  inspectionSample,
  isInspectionSheet,
  judgeInspection,
} from "../../core/tickets";
import { fromMillimetres } from "../../core/units/convert-length";
import type { LengthUnit } from "../../core/units/length-unit";
import { printLength } from "../../core/units/print-length";
import { patchWorkbook } from "../xlsx/patch/patch-workbook";
import { answerOf } from "./answer-of";
import { bookAsked } from "./book-asked";
import type { Command } from "./command";
import { InputRefused } from "./input-refused";
import { nativeDeflater } from "./native-deflater";
import { STANDARD_OPTIONS } from "./standard-for";
import { refuseTarget, writeCopy } from "./write-copy";

/** Marks between those that are drawn, where nothing is said. */
const USUAL_EVERY = 10;

/** `inspect BOOK`: draws marks to be measured onto a sheet, and judges what was measured. */
export const inspect: Command = {
  name: "inspect",
  usage: "inspect BOOK [--every N] [--out COPY.xlsx] [--sheet NAME] [--standard ID] [--own FILE] [--json]",
  summary: "marks drawn to be measured, and measured lengths against the tolerance",
  options: {
    every: { type: "string" },
    out: { type: "string" },
    sheet: { type: "string" },
    ...STANDARD_OPTIONS,
    json: { type: "boolean" },
  },
  async run(given, streams) {
    const target = given.text("out");
    const { book, question } = bookAsked(given, streams, (path) => {
      if (target !== null) refuseTarget(path, target);
    });
    const checked = answerOf(checkBooks([book], question)[0]!);
    const { workshop, standard, report, sheets } = checked;
    for (const note of [...checked.notes, ...shopNotes(workshop)]) streams.note(note);
    const { tickets } = ticketsOf([{ report, sheets, workshop }]);
    const kept = book.sheets.find(({ name }) => isInspectionSheet(name));
    if (kept !== undefined) {
      if (target !== null)
        throw new InputRefused(
          `the book has a sheet ${kept.name} already: what was measured there stays; take it out or rename it to draw anew`,
        );
      const judged = judgeInspection(book.read(kept.name), tickets, standard.unit);
      if (given.flag("json")) streams.result(JSON.stringify(judged));
      else {
        const { measured, waiting, findings } = judged;
        streams.result(
          `${measured} lengths measured, ${waiting} waiting, ${findings.length} to be looked at`,
        );
        for (const { cell, outcome, message } of findings)
          streams.result(`  ${kept.name}!${cell} ${outcome === "unsure" ? "perhaps: " : ""}${message}`);
      }
      return 0;
    }
    const sample = inspectionSample(tickets, everyGiven(given.text("every")));
    if (sample.lines.length === 0)
      throw new InputRefused(
        `${standard.id} holds no tolerance for these bars: there is nothing to judge by`,
      );
    if (target !== null) {
      if (book.workbook === null)
        throw new InputRefused("--out with an inspection sheet needs an .xlsx file as BOOK");
      writeCopy(
        target,
        patchWorkbook(book.workbook, { added: [sheetOf(sample, standard.unit)] }, nativeDeflater),
      );
      streams.note(`written: ${target}`);
    }
    if (given.flag("json")) streams.result(JSON.stringify(sample));
    else {
      streams.result(sample.words);
      for (const { sheet, row, mark, what, wanted, least, most } of sample.lines) {
        const [from, to] = [printLength(least, standard.unit), printLength(most, standard.unit)];
        streams.result(
          `  ${mark ?? "no mark"} (${sheet} row ${row}), ${what}: ${printLength(wanted, standard.unit)}, ${from} to ${to}`,
        );
      }
    }
    return 0;
  },
};

function everyGiven(option: string | null): number {
  const every = option === null ? USUAL_EVERY : Number(option);
  if (!Number.isInteger(every) || every < 1)
    throw new InputRefused(`--every ${option} is no count: give a whole number, 1 for every mark`);
  return every;
}

/** The sheet to be filled in: how the sample was drawn, then a line for each length. */
function sheetOf({ words, lines }: InspectionSample, unit: LengthUnit) {
  const out = (mm: number): number => Number(fromMillimetres(mm, unit).toPrecision(12));
  const cell = (value: string | number | null, looks = {}) => ({ value, ...looks });
  const heads = Object.values(INSPECTION_COLUMNS).map((head) => cell(head, { bold: true, ruled: true }));
  const rows = lines.map(({ sheet, row, mark, what, wanted, least, most }) => [
    cell(sheet),
    cell(row),
    cell(mark ?? "no mark"),
    cell(what),
    ...[wanted, least, most].map((mm) => cell(out(mm))),
    ...[null, null, null].map((blank) => cell(blank)),
  ]);
  return {
    name: INSPECTION_SHEET,
    widths: [18, 8, 12, 18, 10, 10, 10, 12, 14, 14],
    frozenRows: 3,
    rows: [
      [cell(words, { bold: true })],
      [
        cell(
          `Lengths in ${unit}. Measure as the standard says; write what was measured, by whom, on which day.`,
        ),
      ],
      heads,
      ...rows,
    ],
  };
}
