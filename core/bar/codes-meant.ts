import type { BarRow } from "../schedule/bar-row";
import { placeOf } from "../shapes/shape-values";
import { resolveStandard, STANDARD_IDS } from "../standards/index";
import type { Standard } from "../standards/port";
import { isRefusal } from "../units/refusal";

/** Another list that a sheet's shape codes are of. */
export interface CodesMeant {
  /** "SANS282:2011 or BS4466:1989" where the codes are of both; null where they are of no list that is held */
  readonly id: string | null;
  readonly first: BarRow;
  /** codes that the standard in force has not */
  readonly misfits: number;
  readonly fitting: number;
  readonly coded: number;
}

/** Two digits, as every list of codes that is told from another writes them. */
export const isShapeCode = (shape: string): boolean =>
  shape.length === 2 && isDigit(shape.charCodeAt(0)) && isDigit(shape.charCodeAt(1));
const isDigit = (code: number): boolean => code >= 48 && code <= 57;

/** What stands for the word "straight" in every list. */
export const STRAIGHT = "00";
const FEWEST_ROWS = 3;
const NEARLY_ALL = 0.9;

/**
 * The standard whose list holds nearly all of the shape codes of a sheet, where most of them are no codes
 * of the standard in force: its other codes then mean other shapes too. No list that is held, where most are codes
 * of none and the rest have dimensions that their shape in force does not take. Null where the list in force fits.
 */
export function codesMeant(bars: readonly BarRow[], inForce: Standard): CodesMeant | null {
  let misfits = 0;
  let codes = 0;
  let first: BarRow | undefined;
  for (const bar of bars) {
    // a straight bar is one in any list, whose word stands for its code
    if (bar.shape === null || bar.shape === STRAIGHT || !isShapeCode(bar.shape)) continue;
    codes += 1;
    if (inForce.shapes.has(bar.shape)) continue;
    misfits += 1;
    first ??= bar;
  }
  // most sheets are asked no further
  if (first === undefined || misfits < FEWEST_ROWS || misfits * 2 <= codes) return null;
  const coded = bars.filter(({ shape }) => shape !== null && isShapeCode(shape));
  let best = { ids: [] as string[], fitting: 0 };
  for (const id of STANDARD_IDS) {
    const other = resolveStandard(id);
    if (isRefusal(other) || other.id === inForce.id) continue;
    const fitting = coded.filter(({ shape }) => other.shapes.has(shape ?? "")).length;
    if (fitting < coded.length * NEARLY_ALL || fitting < best.fitting) continue;
    best = { ids: fitting === best.fitting ? [...best.ids, id] : [id], fitting };
  }
  const { ids, fitting } = best;
  const isOfNone = ids.length === 0;
  if (isOfNone && !takeOtherDims(coded, inForce)) return null;
  if (isOfNone) return { id: null, fitting: 0, first, misfits, coded: coded.length };
  return { id: ids.join(" or "), fitting, first, misfits, coded: coded.length };
}

/** Most bars whose code the standard holds have dimensions that its shape does not take. */
function takeOtherDims(coded: readonly BarRow[], inForce: Standard): boolean {
  let held = 0;
  let others = 0;
  for (const { shape, dims } of coded) {
    const letters = inForce.shapes.get(shape ?? "")?.dims;
    if (letters === undefined || shape === STRAIGHT) continue;
    held += 1;
    const takes = new Set(letters.map((letter) => placeOf(letter)));
    if (dims.some((dim, place) => dim !== null && !takes.has(place))) others += 1;
  }
  return others > 0 && others * 2 > held;
}
