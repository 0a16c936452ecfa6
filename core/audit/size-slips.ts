import type { Bar, Standard } from "../standards/port";
import { isRefusal } from "../units/refusal";

const FABRIC = /^(?:[ABCD]\s?\d{3}|S[LER]\s?\d{2,3}|R[SLF]\d{2,3}|(?:mesh|fabric).*|.*\b(?:mesh|fabric))$/i;

/** True for names of welded fabric such as A393, SL82 or "mesh". */
export function isFabricName(typed: string): boolean {
  return FABRIC.test(typed.trim());
}

/** The bar meant where the two digits of a size stand the wrong way round: 21 for 12, 61 for 16, 02 for 20. */
export function swappedSize(
  typed: string,
  standard: Standard,
): { readonly size: string; readonly bar: Bar } | null {
  const digits = /^(.*?)(\d)(\d)(\D*)$/.exec(typed.trim());
  if (digits === null) return null;
  const size = `${digits[1]}${digits[3]}${digits[2]}${digits[4]}`;
  const reading = standard.readSize(size);
  if (isRefusal(reading) || reading.bar === null || size === typed.trim()) return null;
  return { size, bar: reading.bar };
}
