import type { Standard } from "../../core/standards";
import {
  holdMark,
  INSPECTION_COLUMNS,
  INSPECTION_SHEET,
  type InspectionLine,
  type InspectionSample,
  inspectionSample,
  isInspectionSheet,
  judgeInspection,
  type Ticket,
} from "../../core/tickets";
import { fromMillimetres } from "../../core/units/convert-length";
import type { LengthUnit } from "../../core/units/length-unit";
import { printLength } from "../../core/units/print-length";
import { patchWorkbook } from "../xlsx/patch/patch-workbook";
import { InputRefused } from "./input-refused";
import { nativeDeflater } from "./native-deflater";
import type { BookFile } from "./open-book";
import type { Streams } from "./streams";

/** What is to be measured of a book, or what became of what was measured. */
export interface Inspected {
  /** name of the sheet that what was measured stands on */
  readonly sheet: string;
  readonly judged: ReturnType<typeof judgeInspection> | null;
  readonly sample: InspectionSample | null;
  /** the book with a sheet to be filled in, where a copy is asked for */
  readonly copy: Uint8Array | null;
}

export interface InspectionAsked {
  readonly book: BookFile;
  /** of the whole book: what was measured is judged by them */
  readonly tickets: readonly Ticket[];
  /** those that a sample is drawn from */
  readonly drawn: readonly Ticket[];
  readonly standard: Standard;
  readonly every: number;
  /** where a copy is to be written; null for none */
  readonly target: string | null;
}

/** Judges what stands on a book's sheet Inspection; draws a sample where it has none. */
export function inspectBook({ book, tickets, drawn, standard, every, target }: InspectionAsked): Inspected {
  const kept = book.sheets.find(({ name }) => isInspectionSheet(name));
  if (kept !== undefined) {
    if (target !== null)
      throw new InputRefused(
        `the book has a sheet ${kept.name} already: what was measured there stays; take it out or rename it to draw anew`,
      );
    const judged = judgeInspection(book.read(kept.name), tickets, standard.unit);
    return { sheet: kept.name, judged, sample: null, copy: null };
  }
  const sample = inspectionSample(drawn, every);
  if (sample.lines.length === 0)
    throw new InputRefused(`${standard.id} holds no tolerance for these bars: there is nothing to judge by`);
  const copy = target === null ? null : copyOf(book, sample, standard.unit);
  return { sheet: INSPECTION_SHEET, judged: null, sample, copy };
}

/** The same for a person; in short what is wrong for certain alone is named. */
export function printInspection(
  { sheet, judged, sample }: Inspected,
  unit: LengthUnit,
  streams: Streams,
  isSummary: boolean,
): void {
  if (judged !== null) {
    const { measured, waiting, findings } = judged;
    streams.result(`${measured} lengths measured, ${waiting} waiting, ${findings.length} to be looked at`);
    for (const { cell, outcome, message } of findings.filter((one) => !isSummary || one.outcome === "broken"))
      streams.result(`  ${sheet}!${cell} ${outcome === "unsure" ? "perhaps: " : ""}${message}`);
  }
  if (sample === null) return;
  streams.result(sample.words);
  for (const { sheet: of, row, mark, why } of sample.left)
    streams.result(`  not in it: ${mark ?? "no mark"} (${of} row ${row}): ${why}`);
  for (const line of isSummary ? [] : sample.lines) {
    const { sheet: of, row, what, wanted, least, most } = line;
    const [from, to] = [printLength(least, unit), printLength(most, unit)];
    streams.result(
      `  ${nameOf(line)} (${of} row ${row}), ${what}: ${printLength(wanted, unit)}, ${from} to ${to}`,
    );
  }
}

/** The bar, and that it is not to be made or is asked about. */
const nameOf = (line: InspectionLine): string => `${line.mark ?? "no mark"}${holdMark(line)}`;

function copyOf({ workbook }: BookFile, sample: InspectionSample, unit: LengthUnit): Uint8Array {
  if (workbook === null) throw new InputRefused("--out with an inspection sheet needs an .xlsx file as BOOK");
  return patchWorkbook(workbook, { added: [sheetOf(sample, unit)] }, { newDeflater: nativeDeflater });
}

/** The sheet to be filled in: how the sample was drawn, then a line for each length. */
function sheetOf({ words, lines, left }: InspectionSample, unit: LengthUnit) {
  const out = (mm: number): number => Number(fromMillimetres(mm, unit).toPrecision(12));
  const cell = (value: string | number | null, looks = {}) => ({ value, ...looks });
  const heads = Object.values(INSPECTION_COLUMNS).map((head) => cell(head, { bold: true, ruled: true }));
  const rows = lines.map((line) => [
    cell(line.sheet),
    cell(line.row),
    cell(nameOf(line)),
    cell(line.what),
    ...[line.wanted, line.least, line.most].map((mm) => cell(out(mm))),
    ...[null, null, null].map((blank) => cell(blank)),
  ]);
  const without = left.map(({ sheet, row, mark, why }) => [
    cell(`not in it: ${mark ?? "no mark"} (${sheet} row ${row}): ${why}`),
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
      ...without,
    ],
  };
}
