const SIZE = String.raw`(?:#\s?\d{1,2}|\p{L}{1,2}\s?\d{1,2}|\d{1,2}\s?(?:mm|M))`;
const BOTH = new RegExp(`^(${SIZE})\\s*[(\uff08]\\s*${SIZE}\\s*[)\uff09]$`, "u");

/**
 * The first of two names of one size, a bar number and its diameter; any other text as it stands.
 *
 * @example sizeInTwoSystems("#8 (D25)") // "#8"
 */
export function sizeInTwoSystems(text: string): string {
  return BOTH.exec(text)?.[1] ?? text;
}
