import { parseA1Ref, stringifyA1Ref, stringifyTokens, tokenize } from "@borgar/fx/xlsx";
import type { LineMap } from "./line-map";

/** What became of one sheet of the file. */
export interface SheetShift {
  /** null where the sheet was deleted */
  readonly name: string | null;
  readonly rows: LineMap;
  readonly columns: LineMap;
}

/** What became of the sheets, by their names in the file in lower case. */
export type Shifts = ReadonlyMap<string, SheetShift>;

const GONE = "#REF!";

/** A formula's text, its references following what became of the sheets; `own` is the sheet it stands on. */
export function shiftFormula(formula: string, own: string, shifts: Shifts): string {
  if (!/[A-Za-z\d]/.test(formula)) return formula;
  let changed = false;
  const tokens = tokenize(formula, { withLocation: false }).map((token) => {
    if (token.type !== "range" && token.type !== "range_beam" && token.type !== "range_named") return token;
    const value = shiftReference(token.value, own, shifts);
    changed ||= value !== token.value;
    return { ...token, value };
  });
  return changed ? stringifyTokens(tokens) : formula;
}

function shiftReference(text: string, own: string, shifts: Shifts): string {
  const reference = parseA1Ref(text);
  if (reference === undefined) return text;
  const { workbookName = "", sheetName = "" } = reference;
  // another file's sheets, or a run of sheets
  if (workbookName !== "" || sheetName.includes(":")) return text;
  const shift = shifts.get((sheetName === "" ? own : sheetName).toLowerCase());
  if (shift === undefined) return text;
  const isNamed = "name" in reference;
  if (shift.name === null) return isNamed && sheetName === "" ? text : GONE;
  const sheet = sheetName === "" ? "" : shift.name;
  if (isNamed) return sheet === sheetName ? text : stringifyA1Ref({ ...reference, sheetName: sheet });
  const { range } = reference;
  const rows = moved(shift.rows, range.top, range.bottom);
  const columns = moved(shift.columns, range.left, range.right);
  if (rows === null || columns === null) return GONE;
  if (sheet === sheetName && rows === UNCHANGED && columns === UNCHANGED) return text;
  return stringifyA1Ref({
    ...reference,
    sheetName: sheet,
    range: {
      ...range,
      ...(rows !== UNCHANGED && { top: rows.first, bottom: rows.last }),
      ...(columns !== UNCHANGED && { left: columns.first, right: columns.last }),
    },
  });
}

const UNCHANGED = { first: -1, last: -1 };

/** A whole column has no rows, a whole row no columns: those stay as they are. */
function moved(map: LineMap, first: number | null | undefined, last: number | null | undefined) {
  if (map.isUnchanged || first === null || first === undefined) return UNCHANGED;
  return map.range(first, last ?? first);
}

/** Ranges of one sheet's own, "A1:B3 D5"; null where nothing of them is left. */
export function shiftRanges(text: string, shift: SheetShift): string | null {
  const shifts = new Map([["", shift]]);
  const list = text
    .trim()
    .split(/\s+/)
    .map((range) => shiftReference(range, "", shifts))
    .filter((range) => range !== GONE);
  return list.length === 0 ? null : list.join(" ");
}
