import type { BarRow, ScheduleReading } from "../../../core/schedule";
import { groupName, reckonTonnage, type TonnageGroup } from "../../../core/totals";
import type { Pours } from "./engine";
import type { KeptCheck } from "./kept-check";

/** The reading with the bars of some pours alone, named as the totals name them. Throws where none is of them. */
export function barsOfPours(
  { sheet, audit: { report } }: KeptCheck,
  reading: ScheduleReading,
  pours: Pours,
): ScheduleReading {
  if (pours === null) return reading;
  const { groupedBy } = reckonTonnage([{ sheet, reading }], report.standard);
  const wanted = new Set(pours.map((pour) => pour.toLowerCase()));
  const bars = reading.bars.filter((bar) => wanted.has(pourOf(bar, groupedBy, sheet.name).toLowerCase()));
  if (bars.length === 0)
    throw new Error(`no bar of sheet ${sheet.name} is of ${pours.join(", ")}: choose other pours`);
  return { ...reading, bars };
}

/** What the totals call the pour of a bar, or whatever stands for it. */
export function pourOf(bar: BarRow, groupedBy: TonnageGroup, sheet: string): string {
  return groupName({ pour: bar.pour, member: bar.member, sheet }[groupedBy]?.trim() ?? "", groupedBy);
}
