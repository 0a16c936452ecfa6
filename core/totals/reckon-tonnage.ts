import type { SheetFacts } from "../bar/sheet-facts";
import { sizeName } from "../bar/size-name";
import type { ScheduleReading } from "../schedule/bar-row";
import type { Sheet } from "../schedule/sheet";
import type { Standard } from "../standards/port";
import { inOrderOfPours } from "./in-order-of-pours";
import { MassesOfSheet } from "./masses-of-sheet";
import {
  factsToWeigh,
  isInTotal,
  type NotInTotal,
  namesOfWeight,
  type RowMass,
  struckRow,
  weighBars,
} from "./row-mass";
import { type SumBeyond, sumBeyond } from "./sum-beyond";
import { type Tonnage, type TonnageLine, tonnageByPour } from "./tonnage-by-pour";
import type { WeighedAsMade } from "./weighed-as-made";

/** A sheet and what was read of it. */
export interface ReadSheet {
  readonly sheet: Sheet;
  readonly reading: ScheduleReading;
  /** where its book goes by another standard than the others of the job */
  readonly standard?: Standard;
  /** it has the bars alone that were asked for: no sum of the sheet is held against them */
  readonly isPart?: true;
}

/** What stands for the pours of a tonnage: members where no bar names a pour, sheets where none names either. */
export type TonnageGroup = "pour" | "member" | "sheet";

/** Tonnes of one or more schedules, what they are grouped by, and the rows that are not in them. */
export interface ReckonedTonnage {
  readonly tonnage: Tonnage;
  readonly groupedBy: TonnageGroup;
  /** why no total is to be shown, where a sheet may not be read right; null where it is */
  readonly held: string | null;
  /** sheet by sheet */
  readonly masses: readonly MassesOfSheet[];
  /** rows struck through or superseded, without a mass that could be worked out, or with dimensions that contradict each other */
  readonly notInTotal: readonly NotInTotal[];
  /** rows that weigh otherwise by their own total length or mass */
  readonly doubted: readonly {
    readonly sheet: string;
    /** the sheet's own row number, from 1 */
    readonly at: number;
    readonly row: RowMass;
  }[];
  /** rows of the totals that the sheet hides */
  readonly hidden: readonly { readonly sheet: string; readonly row: number; readonly mass: number }[];
  /** rows that weigh otherwise by the length as typed, which is cut and loaded */
  readonly asTyped: readonly WeighedAsMade[];
  /** a sum of the schedules' own that the bars do not come near; null where none is */
  readonly beyond: SumBeyond | null;
  /** rows in the totals by what the schedule says, as the shape gives no length */
  readonly byTyped: Readonly<Record<Exclude<RowMass["from"], "cut length">, number>>;
}

/**
 * Adds up the bars of schedules by pour and size. Bars struck through or superseded are left out. `known`: the
 * facts of a sheet's bars, where an audit has them.
 */
export function reckonTonnage(
  schedules: readonly ReadSheet[],
  standard: Standard,
  known: (read: ReadSheet) => SheetFacts | undefined = () => undefined,
): ReckonedTonnage {
  const doubted: { sheet: string; at: number; row: RowMass }[] = [];
  const hidden: { sheet: string; row: number; mass: number }[] = [];
  const asTyped: WeighedAsMade[] = [];
  let groupedBy: TonnageGroup = "sheet";
  const byTyped = { "typed length": 0, "typed mass": 0, "typed total length": 0, "metres alone": 0 };
  const notInTotal: NotInTotal[] = [];
  const masses = schedules.map((read) => {
    const { sheet, reading } = read;
    const ofSheet = new MassesOfSheet(sheet, reading.bars);
    let place = -1;
    for (const row of weighed(read, read.standard ?? standard, known(read))) {
      place += 1;
      const bar = reading.bars[place]!;
      if (bar.struckThrough) {
        notInTotal.push(struckRow(sheet, bar));
        continue;
      }
      if (!isInTotal(row)) {
        notInTotal.push(row);
        continue;
      }
      if (isSaid(bar.pour)) groupedBy = "pour";
      else if (groupedBy === "sheet" && isSaid(bar.member)) groupedBy = "member";
      if (row.otherwise !== null)
        doubted.push({
          sheet: sheet.name,
          at: sheet.top + bar.row + 1,
          row: { ...row, ...namesOfWeight(sheet, bar) },
        });
      if (bar.hidden) hidden.push({ sheet: sheet.name, row: sheet.top + bar.row + 1, mass: row.mass });
      if (row.asTyped !== null) {
        const { cell } = namesOfWeight(sheet, bar);
        asTyped.push({ sheet: sheet.name, cell, mass: row.mass, asTyped: row.asTyped });
      }
      if (row.from !== "cut length") byTyped[row.from] += 1;
      ofSheet.keep(place, row);
    }
    return ofSheet;
  });
  const sums = tonnageByPour(linesOf(schedules, masses, groupedBy));
  const tonnage = { ...sums, pours: inOrderOfPours(sums.pours, groupedBy) };
  // rows that are in no total are told, and a sum may count them
  const isWhole = notInTotal.length === 0 && !schedules.some(({ isPart }) => isPart);
  return {
    tonnage,
    beyond: isWhole ? sumBeyond(schedules, tonnage.total * KG_PER_TONNE) : null,
    groupedBy,
    held: heldBack(schedules),
    masses,
    notInTotal,
    doubted,
    hidden,
    asTyped,
    byTyped,
  };
}

const KG_PER_TONNE = 1000;

function heldBack(schedules: readonly ReadSheet[]): string | null {
  const held = schedules.flatMap(({ sheet, reading }) =>
    reading.held === null ? [] : [`sheet "${sheet.name}": ${reading.held.reason}`],
  );
  return held.length === 0 ? null : held.join("; ");
}

function weighed({ sheet, reading }: ReadSheet, standard: Standard, known: SheetFacts | undefined) {
  const isOfStandard = known?.bars[0]?.standard === standard;
  return weighBars(isOfStandard ? known : factsToWeigh(sheet, reading, standard));
}

/** One by one: of a whole sheet's bars a list of lines would take more room than all else. */
function* linesOf(
  schedules: readonly ReadSheet[],
  masses: ReckonedTonnage["masses"],
  groupedBy: TonnageGroup,
): Generator<TonnageLine> {
  for (const [at, { sheet, reading }] of schedules.entries()) {
    for (const [place, bar] of reading.bars.entries()) {
      const mass = masses[at]?.massAt(place) ?? null;
      if (mass === null) continue;
      const group = groupedBy === "sheet" ? sheet.name : bar[groupedBy];
      yield { pour: group ?? "", size: sizeName(bar), mass };
    }
  }
}

const isSaid = (label: string | null): boolean => label !== null && label.trim() !== "";
