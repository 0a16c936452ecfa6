import { notToldLines } from "../../../core/audit/not-told-words";
import {
  type Costs,
  costsOf,
  filteredBy,
  heldRows,
  severeBars,
  severeWords,
  tonnageOf,
} from "../../../core/jobs";
import type { ScheduleReading } from "../../../core/schedule";
import { readShop } from "../../../core/shop";
import { plainWords } from "../../../core/shop/find-sections";
import {
  namedGroups,
  pourDates,
  type ReckonedTonnage,
  type Tonnage,
  tonnageChart,
  totalAsTyped,
} from "../../../core/totals";
import { counted } from "../../../core/units/counted";
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
  const { report } = kept.audit;
  const shop = kept.shop === null ? null : readShop(kept.shop, standard);
  const held = heldRows(report, [{ sheet, reading }], { shop });
  const severe = [
    ...severeWords(severeBars(held, filteredBy([{ sheet, reading }])), false),
    ...notToldLines(report.waivers),
  ];
  const said = [...settingsNotes(settings, sheet.name), ...notes, ...severe];
  if (reckoned.held !== null) {
    return {
      ...NO_TOTALS,
      sheet: sheet.name,
      groupedBy: reckoned.groupedBy,
      held: reckoned.held,
      notes: said,
    };
  }
  const tonnage = namedGroups(reckoned);
  const asTyped = tonnes(totalAsTyped(reckoned.asTyped, tonnage.total));
  const table = tableOf(tonnage, reckoned.groupedBy);
  const written = pourDates(sheet, reading, (bar) => pourOf(bar, reckoned.groupedBy, sheet.name));
  const days = shop?.pours ?? [];
  const costs =
    shop === null
      ? null
      : costsOf({ schedules: [{ sheet, reading }], standard, workshop: { shop } }, reckoned);
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
    asTyped: asTyped === tonnes(tonnage.total) ? null : asTyped,
    costs: costs === null ? null : costLines(costs),
    chart: tonnageChart(tonnage, CHART_WIDTH, reckoned.groupedBy),
    table,
    content: totalsContent(sheet, reading, reckoned, { standard, costs, severe }),
    notes: [...said, ...ownMasses(reading, reckoned), ...(costs?.notes ?? [])],
  };
}

/** While totals are held back there is nothing to show, copy or write. */
const NO_TOTALS = {
  sizes: [],
  pours: [],
  bySize: [],
  total: "",
  asTyped: null,
  costs: null,
  chart: "",
  table: [],
  content: { rows: [] },
} as const;

function costLines({ priced: { pours, total } }: Costs): TotalsView["costs"] {
  return [...pours, { ...total, pour: "Total" }].map(({ pour, waste, hours, cost }) => ({
    pour,
    waste: tonnes(waste),
    hours: hours?.toFixed(1) ?? "",
    cost: cost?.toFixed(2) ?? "",
  }));
}

function tableOf({ pours, bySize, total }: Tonnage, groupedBy: string): TotalsView["table"] {
  const sizes = [...bySize.keys()];
  return [
    [groupedBy, ...sizes, "total, t"],
    ...pours.map((pour) => [pour.pour, ...sizes.map((size) => pour.bySize.get(size) ?? ""), pour.total]),
    ["total", ...sizes.map((size) => bySize.get(size) ?? ""), total],
  ];
}

/** Said where the schedule's own masses come to something else. */
function ownMasses(reading: ScheduleReading, { masses: [masses] }: ReckonedTonnage): string[] {
  const both = reading.bars.flatMap(({ mass: typed }, index) => {
    const mass = masses?.massAt(index) ?? null;
    return mass === null || typed === null ? [] : [{ typed, mass }];
  });
  const typed = both.reduce((sum, row) => sum + row.typed, 0);
  const reckoned = both.reduce((sum, row) => sum + row.mass, 0);
  if (both.length === 0 || Math.abs(typed - reckoned) <= ROUNDING) return [];
  return [
    `the schedule's own mass column, over the same ${counted(both.length, "row")}, comes to ${tonnes(typed / 1000)} t, by the lengths that the dimensions make it is ${tonnes(reckoned / 1000)} t`,
  ];
}

const tonnes = (value: number | undefined): string => (value === undefined ? "" : value.toFixed(3));
