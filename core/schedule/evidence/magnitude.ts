import { type LengthName, MAGNITUDE, METRES } from "./evidence.data";
import type { ValueColumn } from "./value-column";

/** What the middle of a list of lengths, m, says against its being one of bars. */
function bandWorth(metres: number): number {
  const m = MAGNITUDE.value;
  if (metres < m.least || metres > m.most) return m.impossible;
  return metres < m.short || metres > m.long ? m.unlikely : 0;
}

/** True where a list of lengths in that unit could be one of bars. */
export function canBeBars(length: ValueColumn, unit: LengthName): boolean {
  return bandWorth(length.middle * METRES.value[unit]) > MAGNITUDE.value.excluded;
}

/** What the values say of a length in that unit. */
export function unitLooks(length: ValueColumn, unit: LengthName): number {
  const m = MAGNITUDE.value;
  const isWholeOnly = length.wholeShare > m.wholeShare && length.distinct > m.wholeDistinct;
  const inLarge = unit === "m" || (unit === "ft" && !length.isFeetBesideInches);
  return (
    bandWorth(length.middle * METRES.value[unit]) +
    (inLarge && isWholeOnly ? m.wholeMetres : 0) +
    (unit === "mm" && length.wholeShare < m.millimetreWhole ? m.brokenMillimetres : 0) +
    (unit === "in" && !isInFeet(length) ? m.plainInches : 0)
  );
}

/** Small whole numbers: counts, and never a length by legs or total length. */
export function isSmall(column: ValueColumn): boolean {
  const m = MAGNITUDE.value;
  const isPlain = !column.isFeetBesideInches && column.feetInches === 0;
  return isPlain && column.wholeShare > m.smallWhole && column.middle < m.smallMiddle;
}

/** True where most values are written in feet and inches, so that the unit is known. */
export function isInFeet(column: ValueColumn): boolean {
  return column.feetInches > column.numbers / 2;
}

/** What a count's values say against its being one. */
export function countLooks(count: ValueColumn, length: ValueColumn): number {
  const m = MAGNITUDE.value;
  const large = m.countMiddles.find(([above]) => count.middle > above)?.[1] ?? 0;
  const isRound = roundShare(count) > m.roundCount && roundShare(length) < m.roundLength;
  return (
    m.moreDistinct * Math.sign(length.distinct - count.distinct) +
    large +
    (count.wholeShare < m.countWhole ? m.countBroken : 0) +
    (isRound ? m.roundCost : 0)
  );
}

function roundShare({ sorted }: ValueColumn): number {
  let round = 0;
  for (const value of sorted) if (value % MAGNITUDE.value.roundStep === 0) round += 1;
  return sorted.length === 0 ? 0 : round / sorted.length;
}
