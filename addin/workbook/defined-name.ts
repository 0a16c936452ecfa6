/** A defined name of a workbook: what it stands for is a formula without its equals sign. */
export interface DefinedName {
  readonly name: string;
  readonly refersTo: string;
  /** index of the sheet it belongs to; null for the whole workbook */
  readonly sheetIndex: number | null;
}

/** The text that a name holds as a constant, `"a"` or `"a"&"b"`; null where it is anything else. */
export function constantText(refersTo: string): string | null {
  const formula = refersTo.trim().replace(/^=/, "");
  if (!/^"(?:[^"]|"")*"(?:\s*&\s*"(?:[^"]|"")*")*$/.test(formula)) return null;
  let text = "";
  for (const match of formula.matchAll(/"((?:[^"]|"")*)"/g)) text += match[1]!.replaceAll('""', '"');
  return text;
}

/** Longest text between quotes in a formula. */
const LONGEST_LITERAL = 255;

/** Excel's longest formula, its equals sign included. */
export const LONGEST_FORMULA = 8_192;

/** A text as a constant formula; long ones are joined of parts that a formula can hold. */
export function textConstant(text: string): string {
  const parts: string[] = [];
  for (let at = 0; at < text.length; ) {
    const end = at + LONGEST_LITERAL;
    const last = text.charCodeAt(end - 1);
    // a character of two units stays whole: half of one cannot be written
    const whole = end < text.length && last >= 0xd800 && last <= 0xdbff ? end - 1 : end;
    parts.push(text.slice(at, whole));
    at = whole;
  }
  return (parts.length === 0 ? [""] : parts).map((part) => `"${part.replaceAll('"', '""')}"`).join("&");
}
