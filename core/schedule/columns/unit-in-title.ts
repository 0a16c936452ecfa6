import type { ColumnUnit } from "../bar-row";
import { cleanText } from "../cells/clean-text";
import { LONGEST_WORDS } from "../cells/longest-text";
import type { Cell } from "../sheet";

/** What a title or note says of all lengths: "lengths in cm"; common practice in each of these languages. */
export const UNIT_OF_LENGTHS =
  /(?:lengths?|dimensions|lunghezze|misure|medidas|mesures|cotes|cotas|ma(?:ß|ss)e(?= )|maten|m[åa]tt?(?= )|mitat|ukuran|wymiary|rozm[eě]ry|размеры|ölçüler|longitudes|largos|longueurs|comprimentos|hosszak|hossz|langen|l\u00e4ngen|boylar|\u0434\u043b\u0438\u043d[\u044b\u0430])[^\d\n]{0,14}?(?<!\p{L})(mm|cm|m|\u043c\u043c|\u0441\u043c|\u043c)(?!\p{L})/iu;

/** "単位:cm", "단위 : mm", "尺寸单位 mm", "Đơn vị: mm": what the sheet's numbers are in, where no mass is said beside it. */
const UNIT_NAMED =
  /(?:单位|單位|単位|단위|寸法|尺寸|치수|đơn vị|units?|unidades?|einheit(?:en)?|unité|unità|eenheid)\s*(?:in|は)?\s*[:：=]?\s*(mm|cm|m|毫米|厘米|米)(?![\p{L}/])/iu;

/** The same in scripts that join a word before the unit: from memory. */
const UNIT_JOINED =
  /(?:\u05de\u05d9\u05d3\u05d5\u05ea|\u05d0\u05d5\u05e8\u05db\u05d9\u05dd|[\u0623\u0627]\u0628\u0639\u0627\u062f|[\u0623\u0627]\u0637\u0648\u0627\u0644|\u0645\u0642\u0627\u0633\u0627\u062a)[^\d\n]{0,14}?(\u05e1["\u05f4]\u05de|\u05de["\u05f4]\u05de|\u0633\u0645|\u0645\u0645|\u0645\u062a\u0631)(?!\p{L})/u;

/** rows of the tallest title block */
const TITLE_ROWS = 8;
const UNITS: Readonly<Record<string, ColumnUnit>> = {
  ...{ mm: "mm", cm: "cm", m: "m" },
  ...{ "\u043c\u043c": "mm", "\u0441\u043c": "cm", "\u043c": "m" },
  ...{ '\u05de"\u05de': "mm", '\u05e1"\u05de': "cm", "\u05de\u05f4\u05de": "mm", "\u05e1\u05f4\u05de": "cm" },
  ...{ 毫米: "mm", 厘米: "cm", 米: "m" },
  ...{ "\u0645\u0645": "mm", "\u0633\u0645": "cm", "\u0645\u062a\u0631": "m" },
};

/** The unit that the rows over the head of a list give for its lengths; null where they give none, or several. */
export function unitInTitle(cellsOf: (row: number) => readonly Cell[], top: number): ColumnUnit | null {
  const said = new Set<ColumnUnit>();
  for (let row = top - 1; row >= Math.max(0, top - TITLE_ROWS); row -= 1)
    for (const cell of cellsOf(row)) {
      if (typeof cell !== "string" || cell.length > LONGEST_WORDS) continue;
      const words = cleanText(cell);
      const typed = (UNIT_OF_LENGTHS.exec(words) ?? UNIT_NAMED.exec(words) ?? UNIT_JOINED.exec(words))?.[1];
      const unit = UNITS[typed?.toLowerCase() ?? ""];
      if (unit !== undefined) said.add(unit);
    }
  return said.size === 1 ? ([...said][0] ?? null) : null;
}
