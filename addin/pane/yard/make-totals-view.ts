import { type AuditSettings, readAsCorrected } from "../../../core/audit";
import type { ScheduleReading, Sheet } from "../../../core/schedule";
import type { Standard } from "../../../core/standards";
import { type RowMass, rowMasses, type Tonnage, tonnageByPour, tonnageChart } from "../../../core/totals";
import { settingsNotes } from "./settings-notes";
import { totalsContent } from "./totals-content";
import type { TotalsView } from "./totals-view";

/** px, about the room that a task pane has */
const CHART_WIDTH = 380;
const NO_POUR = "no pour";
/** kg by which the schedule's own masses may be off for rounding before it is said */
const ROUNDING = 1;

/** Tonnes by pour and size of one schedule. Throws where the sheet holds none. */
export function totalsView(sheet: Sheet, standard: Standard, settings: AuditSettings): TotalsView {
  const reading = readAsCorrected(sheet, standard, settings);
  if (reading.bars.length === 0) {
    throw new Error(`sheet ${sheet.name} holds no bars of a schedule: choose the sheet that does`);
  }
  const masses = rowMasses(sheet, reading, standard).map((row, index) => {
    const bar = reading.bars[index]!;
    return bar.struckThrough || bar.superseded === true ? null : row;
  });
  const known = masses.flatMap((row) => row ?? []);
  const tonnage = tonnageByPour(known.map(({ pour, size, mass }) => ({ pour: pour ?? "", size, mass })));
  const table = tableOf(tonnage);
  return {
    sheet: sheet.name,
    sizes: [...tonnage.bySize.keys()],
    pours: tonnage.pours.map(({ pour, bySize, total }) => ({
      pour: pour === "" ? NO_POUR : pour,
      bySize: [...tonnage.bySize.keys()].map((size) => tonnes(bySize.get(size))),
      total: tonnes(total),
    })),
    bySize: [...tonnage.bySize.values()].map(tonnes),
    total: tonnes(tonnage.total),
    chart: tonnageChart(tonnage, CHART_WIDTH),
    csv: table.map((row) => `${row.map(csvCell).join(",")}\r\n`).join(""),
    tabbed: table.map((row) => row.map((cell) => cell.replace(/[\t\r\n]+/g, " ")).join("\t")).join("\n"),
    content: totalsContent(sheet, reading, masses),
    notes: [...settingsNotes(settings, sheet.name), ...notesOf(reading, masses, known)],
  };
}

function tableOf({ pours, bySize, total }: Tonnage): string[][] {
  const sizes = [...bySize.keys()];
  return [
    ["pour", ...sizes, "total, t"],
    ...pours.map((pour) => [
      pour.pour === "" ? NO_POUR : pour.pour,
      ...sizes.map((size) => exact(pour.bySize.get(size))),
      exact(pour.total),
    ]),
    ["total", ...sizes.map((size) => exact(bySize.get(size))), exact(total)],
  ];
}

function notesOf(
  reading: ScheduleReading,
  masses: readonly (RowMass | null)[],
  known: readonly RowMass[],
): string[] {
  const notes: string[] = [];
  const dropped = reading.bars.filter((bar) => bar.struckThrough || bar.superseded === true).length;
  const without = masses.length - known.length - dropped;
  if (dropped > 0) notes.push(`${rows(dropped)} struck through or superseded: left out`);
  if (without > 0) notes.push(`${rows(without)} without a mass that could be worked out: in no total`);
  for (const from of ["typed length", "typed mass"] as const) {
    const count = known.filter((row) => row.from === from).length;
    if (count > 0) notes.push(`${rows(count)} by the ${from}: the shape gives no length`);
  }
  const both = masses.flatMap((row, index) => {
    const typed = reading.bars[index]?.mass ?? null;
    return row === null || typed === null ? [] : [{ typed, mass: row.mass }];
  });
  const typed = both.reduce((sum, row) => sum + row.typed, 0);
  const reckoned = both.reduce((sum, row) => sum + row.mass, 0);
  if (both.length > 0 && Math.abs(typed - reckoned) > ROUNDING) {
    notes.push(
      `the schedule's own mass column, over the same ${rows(both.length)}, comes to ${tonnes(typed / 1000)} t, by cut lengths it is ${tonnes(reckoned / 1000)} t`,
    );
  }
  return notes;
}

const rows = (count: number): string => (count === 1 ? "1 row" : `${count} rows`);
const tonnes = (value: number | undefined): string => (value === undefined ? "" : value.toFixed(3));
const exact = (value: number | undefined): string => (value === undefined ? "" : String(value));

/** Quoted where it must be; a text that a spreadsheet would take for a formula gets an apostrophe. */
function csvCell(text: string): string {
  const safe = /^[=+@\t]/.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
