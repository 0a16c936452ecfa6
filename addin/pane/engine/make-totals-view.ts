import type { AuditReport } from "../../../core/audit/audit-report";
import { tonnageOf } from "../../../core/jobs";
import type { ScheduleReading } from "../../../core/schedule";
import { readShop } from "../../../core/shop";
import { plainWords } from "../../../core/shop/find-sections";
import {
  namedGroups,
  pourDates,
  type ReckonedTonnage,
  type Tonnage,
  tonnageChart,
} from "../../../core/totals";
import { counted } from "../../../core/units/counted";
import { isRefusal } from "../../../core/units/refusal";
import { pourOf } from "./bars-of-pours";
import { barsRead, type KeptCheck } from "./kept-check";
import { settingsNotes } from "./settings-notes";
import { totalsContent } from "./totals-content";
import type { TotalsView } from "./totals-view";

/** px, about the room that a task pane has */
const CHART_WIDTH = 380;
/** kg by which the schedule's own masses may be off for rounding before it is said */
const ROUNDING = 1;

/** Tonnes by pour and size of a checked sheet. Throws where it holds no bars. */
export function totalsView(kept: KeptCheck): TotalsView {
  const { sheet, settings } = kept;
  const { standard } = kept.audit.report;
  const reading = barsRead(kept);
  const { reckoned, notes } = tonnageOf([{ schedules: [{ sheet, reading }], standard }]);
  const said = [...settingsNotes(settings, sheet.name), ...notes];
  if (reckoned.held !== null) {
    return {
      ...NO_TOTALS,
      sheet: sheet.name,
      groupedBy: reckoned.groupedBy,
      held: reckoned.held,
      notes: said,
    };
  }
  const tonnage = sizesInOrder(namedGroups(reckoned), standard);
  const table = tableOf(tonnage, reckoned.groupedBy);
  const written = pourDates(sheet, reading, (bar) => pourOf(bar, reckoned.groupedBy, sheet.name));
  const days = kept.shop === null ? [] : readShop(kept.shop, standard).pours;
  // the day of a pour on the Shop sheet, by which loads go, stands before what the schedule writes
  const datesOf = (pour: string): readonly string[] => {
    const day = days.find((each) => plainWords(each.pour) === plainWords(pour))?.day;
    return day === undefined ? (written.get(pour) ?? []) : [day];
  };
  return {
    sheet: sheet.name,
    groupedBy: reckoned.groupedBy,
    held: null,
    sizes: [...tonnage.bySize.keys()],
    pours: tonnage.pours.map(({ pour, bySize, total }) => ({
      pour,
      dates: datesOf(pour),
      bySize: [...tonnage.bySize.keys()].map((size) => tonnes(bySize.get(size))),
      total: tonnes(total),
    })),
    bySize: [...tonnage.bySize.values()].map(tonnes),
    total: tonnes(tonnage.total),
    chart: tonnageChart(tonnage, CHART_WIDTH, reckoned.groupedBy),
    csv: table.map((row) => `${row.map(csvCell).join(",")}\r\n`).join(""),
    tabbed: table.map((row) => row.map((cell) => cell.replace(/[\t\r\n]+/g, " ")).join("\t")).join("\n"),
    content: totalsContent(sheet, reading, reckoned, standard),
    notes: [...said, ...ownMasses(reading, reckoned)],
  };
}

/** While totals are held back there is nothing to show, copy or write. */
const NO_TOTALS = {
  sizes: [],
  pours: [],
  bySize: [],
  total: "",
  chart: "",
  csv: "",
  tabbed: "",
  content: { rows: [] },
} as const;

/** Sizes from thin to thick, those that the standard does not know last. */
function sizesInOrder(tonnage: Tonnage, standard: AuditReport["standard"]): Tonnage {
  const diameter = (size: string): number => {
    const reading = standard.readSize(size);
    // a size of another standard stands among the others by its number
    return isRefusal(reading) ? Number(/\d+(?:\.\d+)?/.exec(size)?.[0] ?? Infinity) : reading.diameter;
  };
  const bySize = [...tonnage.bySize].sort(([a], [b]) => diameter(a) - diameter(b) || a.localeCompare(b));
  return { ...tonnage, bySize: new Map(bySize) };
}

function tableOf({ pours, bySize, total }: Tonnage, groupedBy: string): string[][] {
  const sizes = [...bySize.keys()];
  return [
    [groupedBy, ...sizes, "total, t"],
    ...pours.map((pour) => [
      pour.pour,
      ...sizes.map((size) => exact(pour.bySize.get(size))),
      exact(pour.total),
    ]),
    ["total", ...sizes.map((size) => exact(bySize.get(size))), exact(total)],
  ];
}

/** Said where the schedule's own masses come to something else. */
function ownMasses(reading: ScheduleReading, { masses: [masses = []] }: ReckonedTonnage): string[] {
  const both = masses.flatMap((row, index) => {
    const typed = reading.bars[index]?.mass ?? null;
    return row === null || typed === null ? [] : [{ typed, mass: row.mass }];
  });
  const typed = both.reduce((sum, row) => sum + row.typed, 0);
  const reckoned = both.reduce((sum, row) => sum + row.mass, 0);
  if (both.length === 0 || Math.abs(typed - reckoned) <= ROUNDING) return [];
  return [
    `the schedule's own mass column, over the same ${counted(both.length, "row")}, comes to ${tonnes(typed / 1000)} t, by cut lengths it is ${tonnes(reckoned / 1000)} t`,
  ];
}

const tonnes = (value: number | undefined): string => (value === undefined ? "" : value.toFixed(3));
const exact = (value: number | undefined): string => (value === undefined ? "" : String(value));

/** Quoted where it must be; a text that a spreadsheet would take for a formula gets an apostrophe. */
function csvCell(text: string): string {
  const safe = /^[=+@\t]/.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
