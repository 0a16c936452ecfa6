import type { BarFacts } from "../bar/bar-facts";
import type { SheetFacts } from "../bar/sheet-facts";
import type { Place } from "./wrong-sum";

/** sizes that have one text each before a column goes with the size, and rows of a size */
const FEWEST_SIZES = 3;
const FEWEST_ROWS = 2;
const SHARE = 0.85;
const MOST_BARS = 20_000;
const MOST_COLUMNS = 60;
const LONGEST = 24;

/** A cell of a column that names the size once more, such as 5/8" beside #5, with the text that another size has. */
export interface OffSize {
  readonly facts: BarFacts;
  readonly place: Place;
  readonly typed: string;
  readonly usual: string;
  readonly other: string;
}

/** The cells of columns of no field that hold one text a size, another for each, where a row has that of another size. */
export function offSizes(sheet: SheetFacts): readonly OffSize[] {
  const { bars, reading } = sheet;
  if (bars.length < FEWEST_SIZES * FEWEST_ROWS || bars.length > MOST_BARS) return [];
  const taken = new Set(
    reading.tables.flatMap(({ columns, bySize = [] }) =>
      [...columns.values(), ...bySize].map(({ column }) => column),
    ),
  );
  const columns = Array.from({ length: Math.min(sheet.sheet.columnCount, MOST_COLUMNS) }, (_, at) => at);
  return columns.filter((column) => !taken.has(column)).flatMap((column) => offIn(sheet, column));
}

function offIn({ sheet, bars }: SheetFacts, column: number): readonly OffSize[] {
  const rows: { facts: BarFacts; text: string }[] = [];
  const counts = new Map<number, Map<string, number>>();
  for (const facts of bars) {
    const cell = sheet.cell(facts.row.row, column);
    if ((typeof cell !== "string" && typeof cell !== "number") || facts.diameter === null) continue;
    const text = String(cell).trim();
    if (text === "" || text.length > LONGEST) continue;
    rows.push({ facts, text });
    const ofSize = counts.get(facts.diameter) ?? new Map<string, number>();
    counts.set(facts.diameter, ofSize.set(text, (ofSize.get(text) ?? 0) + 1));
  }
  if (rows.length < SHARE * bars.length) return [];
  const usual = new Map<number, string>();
  const owners = new Map<string, number>();
  let kept = 0;
  for (const [diameter, ofSize] of counts) {
    const [[text, most] = ["", 0], second] = [...ofSize].sort((one, other) => other[1] - one[1]);
    kept += most;
    if (most < FEWEST_ROWS || most === second?.[1]) continue;
    // one text for several sizes is a grade, or a unit
    if (owners.has(text)) return [];
    usual.set(diameter, text);
    owners.set(text, diameter);
  }
  if (usual.size < FEWEST_SIZES || kept < SHARE * rows.length) return [];
  return rows.flatMap(({ facts, text }) => {
    const own = usual.get(facts.diameter ?? 0);
    const other = bars.find(({ diameter }) => diameter === owners.get(text))?.sizeName;
    if (own === undefined || own === text || other === undefined || other === null) return [];
    return [{ facts, place: { row: facts.row.row, column }, typed: text, usual: own, other }];
  });
}
