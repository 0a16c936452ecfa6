import type { ICellData, IStyleData, Nullable, Worksheet } from "@univerjs/core";
import { HorizontalAlign } from "@univerjs/core";
import { DEFAULT_STANDARD_ID } from "../../core/standards";
import { html, Markup } from "../print/html";
import { pageSize, printPage } from "../print/print-page";
import { FLAG_FILLS } from "../workbook/flag-fills";
import { type RowFlag, WorkbookRefusal } from "../workbook/workbook-port";
import type { Grid } from "./grid/create-grid";
import type { FlagOverlay } from "./grid/flag-overlay";

/** Across the paper, small enough for a schedule's columns; a flag is told by its word, its fill is only beside it. */
const STYLE = new Markup(`
@page { margin: 9mm 9mm 13mm; @bottom-right { content: counter(page) " of " counter(pages); font: 8pt sans-serif; } }
body { font-size: 7.5pt; max-width: none; }
.sheet td, .sheet th { padding: 0.5mm 1mm; overflow-wrap: break-word; white-space: pre-wrap; }
.sheet td, .sheet th { border-width: 0.1mm; }
.sheet .number { color: #555; }
.sheet .found td { border-top: 0; font-style: italic; padding-left: 4mm; white-space: pre-line; }
.sheet td { print-color-adjust: exact; }
`);

/** The sheet in view as a page to print: its cells as they are shown, and under each flagged row what was found. */
export function sheetPage(
  grid: Grid,
  overlay: FlagOverlay,
  { file, standard }: { readonly file: string; readonly standard: string },
): { title: string; html: string } {
  const sheet = grid.api.getActiveWorkbook()?.getActiveSheet();
  if (sheet === undefined) throw new WorkbookRefusal("no workbook is open: open one first");
  const worksheet = sheet.getSheet();
  const title = sheet.getSheetName();
  const flags = new Map<number, RowFlag[]>();
  for (const flag of overlay.flags(sheet.getSheetId()))
    flags.set(flag.row, [...(flags.get(flag.row) ?? []), flag]);
  const [rows, columns] = [sheet.getLastRow() + 1, sheet.getLastColumn() + 1];
  const frozen = Math.max(0, worksheet.getFreeze().ySplit);
  const lines = Array.from({ length: rows }, (_, row) => row).filter((row) => worksheet.getRowVisible(row));
  const cells = (row: number): Markup => rowCells(worksheet, row, columns, flags.get(row) ?? []);
  const hidden = rows - lines.length;
  const kept = hidden === 0 ? "" : `, without ${hidden} hidden rows`;
  const told = flags.size === 0 ? "no rows are coloured" : `${flags.size} rows are coloured`;
  const head = { job: file, schedule: null, revision: null, standard: standard || DEFAULT_STANDARD_ID };
  return {
    title,
    html: printPage(title, head, [
      html`<style>${pageSize(head, " landscape")}${STYLE}</style>`,
      html`<p class="note">${rows} rows${kept}; ${told}. A check finds slips; it does not prove a schedule right.</p>`,
      html`<table class="sheet"><thead>${lines.filter((row) => row < frozen).map((row) => html`<tr>${cells(row)}</tr>`)}</thead>
<tbody>${lines
        .filter((row) => row >= frozen)
        .map((row) => html`<tr>${cells(row)}</tr>${found(flags.get(row) ?? [], columns)}`)}</tbody></table>`,
    ]),
  };
}

function rowCells(worksheet: Worksheet, row: number, columns: number, flags: readonly RowFlag[]): Markup {
  const numbers = html`<td class="number">${row + 1}</td>`;
  const cells = Array.from({ length: columns }, (_, column) => {
    const merged = worksheet.getMergedCell(row, column) ?? null;
    const isInside = merged !== null && (merged.startRow !== row || merged.startColumn !== column);
    if (isInside || worksheet.getColVisible(column) === false) return html``;
    const cell = worksheet.getCell(row, column);
    const look = worksheet.getComposedCellStyle(row, column);
    const flag = flags.find(({ firstColumn, lastColumn }) => column >= firstColumn && column <= lastColumn);
    const fill = flag !== undefined ? FLAG_FILLS[flag.colour] : look.bg?.rgb;
    const style = [
      fill ? `background: ${fill}` : "",
      look.bl === 1 ? "font-weight: 600" : "",
      isRight(look, cell) ? "text-align: right" : "",
    ];
    const across = merged === null ? 1 : merged.endColumn - merged.startColumn + 1;
    const down = merged === null ? 1 : merged.endRow - merged.startRow + 1;
    return html`<td style="${style.filter((part) => part !== "").join("; ")}" colspan="${across}" rowspan="${down}">${shown(cell)}</td>`;
  });
  return html`${numbers}${cells}`;
}

/** What was found in a row, in a row of its own. */
function found(flags: readonly RowFlag[], columns: number): Markup {
  const notes = flags.map(({ note }) => note).filter((note) => note !== "");
  if (notes.length === 0) return html``;
  return html`<tr class="found"><td></td><td colspan="${columns}">${notes.join("\n")}</td></tr>`;
}

const shown = (cell: Nullable<ICellData>): string => String(cell?.v ?? "");

function isRight(look: IStyleData, cell: Nullable<ICellData>): boolean {
  if (look.ht === HorizontalAlign.RIGHT) return true;
  return look.ht !== HorizontalAlign.CENTER && look.ht !== HorizontalAlign.LEFT && cell?.t === 2;
}
