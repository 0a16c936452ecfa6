import { encodeXml } from "../../../core/units/encode-xml";

export { encodeXml };

/** Text of a cell or comment: what XML cannot hold as spreadsheets write it, runs that look like it kept apart. */
export function encodeCellText(text: string): string {
  if (!NEEDS_CELL_ENCODING.test(text)) return text;
  const escaped = text
    .replace(/_(?=x[0-9a-fA-F]{4}_)/g, "_x005F_")
    .replace(CELL_CONTROL, (unit) => `_x${unit.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0")}_`);
  return encodeXml(escaped);
}

/** Line feeds and tabs stay as they are, all else below a blank is escaped. */
const CELL_CONTROL = /[^\P{Cc}\t\n]/gu;
const NEEDS_CELL_ENCODING = /[&<>"_\uFFFE\uFFFF]|[^\P{Cc}\t\n]/u;
