/** Severity that a flag stands for. */
export type FlagSeverity = "unsafe" | "unbendable" | "off-standard" | "doubtful" | "note";

/**
 * Fill of a flagged cell in a file, RRGGBB. Off the values that palettes offer, so that a user's own
 * fill is not taken for a flag.
 */
export const FLAG_COLOURS: ReadonlyMap<FlagSeverity, string> = new Map([
  ["unsafe", "F6B2AB"],
  ["unbendable", "F9CBA1"],
  ["off-standard", "FBE79D"],
  ["doubtful", "CFE1F7"],
  ["note", "E3E4E7"],
]);

/** The severity whose fill a colour is; null for any other colour. */
export function flagOfColour(rgb: string): FlagSeverity | null {
  const wanted = rgb.slice(-6).toUpperCase();
  for (const [severity, colour] of FLAG_COLOURS) if (colour === wanted) return severity;
  return null;
}
