import * as z from "zod";
import type { SizePlan } from "./plan-by-size";

const bookedCuts = z.array(
  z.object({ sheet: z.string(), mark: z.string(), pieces: z.number(), on: z.string() }),
);

/** A cut list whose remnants stand on the Shop sheet. */
export interface BookedCut {
  readonly sheet: string;
  /** tells the pieces of one cut from those of another, whatever stock they are cut from */
  readonly mark: string;
  readonly pieces: number;
  /** day, as "2026-11-25" */
  readonly on: string;
}

/** The cut of these plans as it is kept once its remnants are written. */
export function cutOf(sheet: string, plans: readonly SizePlan[], on: string): BookedCut {
  const counts = new Map<string, number>();
  for (const { rows } of plans) {
    for (const { size, grade, length, count } of rows) {
      const key = [size, grade ?? "", length.toFixed(THOUSANDTHS)].join("|").toLowerCase();
      counts.set(key, (counts.get(key) ?? 0) + count);
    }
  }
  const lines = [...counts].map(([key, count]) => `${key}|${count}`).sort();
  const pieces = plans.reduce((sum, { plan }) => sum + plan.pieces, 0);
  return { sheet, mark: checkWord(lines.join("\n")), pieces, on };
}

/** The cuts that a workbook keeps as a text; null where the text cannot be read. */
export function bookedCutsFrom(text: string | null): readonly BookedCut[] | null {
  if (text === null || text.trim() === "") return [];
  try {
    const read = bookedCuts.safeParse(JSON.parse(text));
    return read.success ? read.data : null;
  } catch {
    return null;
  }
}

/** The text to keep with one more cut; the oldest are let go, for a workbook's name holds only so much. */
export function bookedCutsText(cuts: readonly BookedCut[], added: BookedCut): string {
  return JSON.stringify([...cuts, added].slice(-MOST_CUTS));
}

/**
 * Why writing the remnants of this cut would count steel twice; null where it would not. An earlier state
 * of the same sheet counts too: its bars are cut already.
 */
export function bookedTwice(cuts: readonly BookedCut[], cut: BookedCut): string | null {
  const same = cuts.filter(({ mark }) => mark === cut.mark).at(-1);
  if (same !== undefined)
    return `the remnants of these ${same.pieces} pieces (sheet ${same.sheet}) were written on ${same.on}: writing them again takes the same steel twice`;
  const earlier = cuts.filter(({ sheet }) => sheet.toLowerCase() === cut.sheet.toLowerCase()).at(-1);
  if (earlier === undefined) return null;
  return `the remnants of an earlier state of ${earlier.sheet} (${earlier.pieces} pieces) were written on ${earlier.on}: this writes those of all ${cut.pieces} pieces, not of the difference`;
}

const MOST_CUTS = 40;
const THOUSANDTHS = 3;

/** FNV-1a over two halves of 32 bits each: enough to tell cuts apart, and no secret. */
function checkWord(text: string): string {
  let [one, other] = [0x811c9dc5, 0x01000193];
  for (let at = 0; at < text.length; at += 1) {
    one = Math.imul(one ^ text.charCodeAt(at), 0x01000193) >>> 0;
    other = Math.imul(other ^ text.charCodeAt(at) ^ at, 0x85ebca6b) >>> 0;
  }
  return one.toString(36) + other.toString(36);
}
