import type { RemarkReading } from "../bar-row";
import { LAYER_CODES } from "./row-words.data";

const CODES = new Set(LAYER_CODES.rows.map(({ code }) => code));
const NONE = /^[^A-Za-z]*$/;

/**
 * Layers, hand, alternation and stagger that a remark names in the trade's short codes; null where
 * it names none.
 *
 * @example readRemark("T1 & T2, ABR") // layers T1, T2, ABR; alternate true
 */
export function readRemark(remark: string): RemarkReading | null {
  if (NONE.test(remark)) return null;
  const text = remark.toUpperCase();
  // "E.F." is EF
  const layers = text
    .replace(/\b([A-Z])\.\s?([A-Z])\b\.?/g, "$1$2")
    .split(/[\s,;/&+().]+/)
    .filter((word) => CODES.has(word));
  const opposite = /\bOPP(?:OSITE)?\.?\s*HAND|\bHANDED\b|\bMIRROR/.test(text);
  const left = /\bL\.?\s?H\.?(?![A-Z])|\bLEFT\s+HAND/.test(text);
  const right = /\bR\.?\s?H\.?(?![A-Z])|\bRIGHT\s+HAND/.test(text);
  const alternate = /\bALT(?:ERNATE(?:LY)?)?\b|\bABR\b/.test(text);
  const stagger = /\bSTAGG?(?:ER(?:ED)?)?\b|\bABS\b/.test(text);
  const hand = opposite || (left && right) ? "opposite" : left ? "left" : right ? "right" : null;
  if (layers.length === 0 && hand === null && !alternate && !stagger) return null;
  return { layers, hand, alternate, stagger };
}

/** That reading with the layers that a size's cell names beside the bar: "T1 H16". */
export function withLayers(reading: RemarkReading | null, named: string | null): RemarkReading | null {
  if (named === null) return reading;
  const layers = named.split(/\s+/);
  if (reading === null) return { layers, hand: null, alternate: false, stagger: false };
  return { ...reading, layers: [...layers, ...reading.layers] };
}
