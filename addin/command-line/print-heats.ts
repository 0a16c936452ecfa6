import type { HeatRow, HeatUse } from "../../core/jobs";
import type { Workshop } from "../../core/shop";
import { holdMark } from "../../core/tickets";
import { fromMillimetres } from "../../core/units/convert-length";
import { counted } from "../../core/units/counted";
import type { LengthUnit } from "../../core/units/length-unit";
import { InputRefused } from "./input-refused";
import type { Streams } from "./streams";

/** Refuses where no certificate is written beside any stock. */
export function refuseWithoutHeats({ shop }: Workshop): void {
  if (shop.stock.some(({ heat }) => heat !== null)) return;
  throw new InputRefused(
    "no heat is written down: give the stock of the Shop sheet a column heat with the number of each mill certificate",
  );
}

/** Certificates are compared without case. */
export const isHeat = (heat: string | null, asked: string): boolean =>
  heat !== null && heat.toLowerCase() === asked.trim().toLowerCase();

/** Says why nothing stands under a heat that was asked for. */
export function noteHeatGone(asked: string, { shop }: Workshop, streams: Streams): void {
  const isHeld = shop.stock.some(({ heat }) => isHeat(heat, asked));
  streams.note(
    isHeld
      ? `heat ${asked} is in stock, and the cut list takes no bar of it`
      : `heat ${asked} is not among the stock of the Shop sheet`,
  );
}

/** A heat as scripts get it, lengths in the standard's unit. */
export function jsonHeat(use: HeatUse, unit: LengthUnit) {
  return { ...use, bars: use.bars.map((one) => ({ ...one, length: lengthIn(one.length, unit) })) };
}

/** A heat for a person: the bars taken, and a line for each mark; in short how many pieces of how many. */
export function printHeat(
  { heat, size, bars, rows }: HeatUse,
  unit: LengthUnit,
  streams: Streams,
  isSummary = false,
  placeOf = (row: HeatRow): string => `${row.sheet}!${row.cell}`,
): void {
  const taken = bars.map(({ length, remnant, bars: count }) => {
    return `${count} x ${lengthIn(length, unit)}${remnant ? " remnant" : ""}`;
  });
  const pieces = rows.reduce((sum, row) => sum + row.pieces, 0);
  const inShort = `; ${counted(pieces, "piece")} of ${counted(rows.length, "row")}`;
  streams.result(
    `heat ${heat ?? "not written down"}, ${size}: ${taken.join(", ")}${isSummary ? inShort : ""}`,
  );
  if (isSummary) return;
  for (const row of rows) {
    const { mark, member, pour, pieces } = row;
    const where = [pour === null ? "" : `pour ${pour}`, member ?? ""].filter((part) => part !== "");
    const to = where.length === 0 ? "" : ` for ${where.join(", ")}`;
    streams.result(`  ${pieces} of mark ${mark ?? "without a name"}${holdMark(row)}${to} (${placeOf(row)})`);
  }
}

const lengthIn = (mm: number, unit: LengthUnit): number => Number(fromMillimetres(mm, unit).toPrecision(12));
