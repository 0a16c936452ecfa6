import type { Cell } from "../sheet";

const MULTIPLE =
  /^\s*(\d{1,2}(?:[.,]\d)?)\s*(?:[x×*]\s*)?(?:d|ds|db|dia\.?|diam\.?|ø|φ|ϕ|∅)\s*(?:=\s*(\d+(?:[.,]\d+)?)\s*(?:mm)?\s*)?$/iu;

/** Multiples of the bar above this are no former's: "40 dia" under formers is one of 40 mm as well (common practice). */
const MOST_DIAMETERS = 25;

/** mm: a former written as a multiple of the bar, "4d", "7 ds", "4 Ø", "3d=39"; null for anything else, and without a size. */
export function formerInDiameters(cell: Cell | undefined, diameter: number | null): number | null {
  if (typeof cell !== "string" || diameter === null) return null;
  const [, said, made] = MULTIPLE.exec(cell) ?? [];
  if (made !== undefined) return Number(made.replace(",", "."));
  const times = said === undefined ? Number.NaN : Number(said.replace(",", "."));
  return times <= MOST_DIAMETERS ? Math.round(times * diameter * 1000) / 1000 : null;
}
