import type { BarRow, ScheduleReading } from "../schedule/bar-row";
import type { Sheet } from "../schedule/sheet";
import type { Standard } from "../standards/port";
import { isInTotal, type NotInTotal, type RowMass, weighRows } from "./row-mass";
import { type Tonnage, tonnageByPour } from "./tonnage-by-pour";

/** A sheet and what was read of it. */
export interface ReadSheet {
  readonly sheet: Sheet;
  readonly reading: ScheduleReading;
  /** where its book goes by another standard than the others of the job */
  readonly standard?: Standard;
}

/** What stands for the pours of a tonnage: members where no bar names a pour, sheets where none names either. */
export type TonnageGroup = "pour" | "member" | "sheet";

/** Tonnes of one or more schedules, what they are grouped by, and the rows that are not in them. */
export interface ReckonedTonnage {
  readonly tonnage: Tonnage;
  readonly groupedBy: TonnageGroup;
  /** why no total is to be shown, where a sheet may not be read right; null where it is */
  readonly held: string | null;
  /** sheet by sheet, one each bar row; null where the row is in no total */
  readonly masses: readonly (readonly (RowMass | null)[])[];
  /** rows struck through: in no total */
  readonly dropped: number;
  /** rows superseded, without a mass that could be worked out, or with dimensions that contradict each other */
  readonly notInTotal: readonly NotInTotal[];
  /** rows in the totals by what the schedule says, as the shape gives no length */
  /** rows that weigh otherwise by their own total length or mass */
  readonly doubted: readonly { readonly sheet: string; readonly row: RowMass }[];
  readonly byTyped: Readonly<Record<"typed length" | "typed mass", number>>;
}

/** Adds up the bars of schedules by pour and size. Bars struck through or superseded are left out. */
export function reckonTonnage(schedules: readonly ReadSheet[], standard: Standard): ReckonedTonnage {
  const counted: { bar: BarRow; row: RowMass; sheet: string }[] = [];
  const byTyped = { "typed length": 0, "typed mass": 0 };
  const notInTotal: NotInTotal[] = [];
  let dropped = 0;
  const masses = schedules.map(({ sheet, reading, standard: own = standard }) =>
    weighRows(sheet, reading, own).map((row, index) => {
      const bar = reading.bars[index]!;
      if (bar.struckThrough) {
        dropped += 1;
        return null;
      }
      if (!isInTotal(row)) {
        notInTotal.push(row);
        return null;
      }
      counted.push({ bar, row, sheet: sheet.name });
      if (row.from !== "cut length") byTyped[row.from] += 1;
      return row;
    }),
  );
  const groupedBy = groupOf(counted);
  const lines = counted.map(({ bar, row: { pour, size, mass }, sheet }) => {
    const group = { pour, member: bar.member, sheet }[groupedBy];
    return { pour: group ?? "", size, mass };
  });
  return {
    tonnage: tonnageByPour(lines),
    groupedBy,
    held: heldBack(schedules),
    masses,
    dropped,
    notInTotal,
    doubted: counted.filter(({ row }) => row.otherwise !== null).map(({ row, sheet }) => ({ sheet, row })),
    byTyped,
  };
}

function heldBack(schedules: readonly ReadSheet[]): string | null {
  const held = schedules.flatMap(({ sheet, reading }) =>
    reading.held === null ? [] : [`sheet "${sheet.name}": ${reading.held.reason}`],
  );
  return held.length === 0 ? null : held.join("; ");
}

function groupOf(counted: readonly { readonly bar: BarRow; readonly row: RowMass }[]): TonnageGroup {
  if (counted.some(({ row }) => isSaid(row.pour))) return "pour";
  return counted.some(({ bar }) => isSaid(bar.member)) ? "member" : "sheet";
}

const isSaid = (label: string | null): boolean => label !== null && label.trim() !== "";
