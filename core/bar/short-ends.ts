import type { TableReading } from "../schedule/bar-row";
import { cleanText } from "../schedule/cells/clean-text";
import { readLengthText } from "../schedule/cells/read-length-text";
import { IN_COLUMN_UNIT } from "../schedule/columns/in-column-unit";
import { DIMENSION_LETTERS } from "../standards/dimension-letters";
import type { BarFacts } from "./bar-facts";
import { isInFeetInches } from "./feet-inches";
import { HOOK_WORDS } from "./hook-words.data";
import { SHORT_ENDS } from "./identities.data";
import { groupOf, SHAPE } from "./length-habits";
import type { SheetFacts } from "./sheet-facts";

/** A hook or end as a row gives it, mm. */
export interface EndOfRow {
  /** letter or heading of its column */
  readonly name: string;
  readonly at: (typeof DIMENSION_LETTERS)[number] | "length";
  readonly mm: number;
}

/** The value of a column that is headed as hooks, in no column of a known kind; null where a row has none. */
export function hookOf(facts: BarFacts): EndOfRow | null {
  const said = hookSaid(facts);
  return said === null || said.mayCount ? null : said.end;
}

/** Hooks by the column that is headed so, mm; small numbers among lengths are lengths too. */
export function hooksOf({
  answers,
}: SheetFacts): readonly { readonly facts: BarFacts; readonly mm: number }[] {
  const all = answers.those(hookSaid);
  const lengths = all.filter(({ answer }) => !answer.mayCount);
  const isOfLengths = lengths.length > all.length - lengths.length && lengths.length >= FEWEST_LENGTHS;
  return (isOfLengths ? all : lengths).map(({ facts, answer }) => ({ facts, mm: answer.end.mm }));
}

/** What the column of hooks says, and whether it may be how many there are. */
function hookSaid(facts: BarFacts): { readonly end: EndOfRow; readonly mayCount: boolean } | null {
  const column = hookColumn(facts.row.table);
  if (column === null) return null;
  const cell = facts.sheet.sheet.cell(facts.row.row, column.column);
  const { columns } = facts.row.table;
  const unit = columns.get("A")?.unit ?? columns.get("B")?.unit ?? null;
  const feetInches = isInFeetInches(facts, "A") || isInFeetInches(facts, "B");
  const said = (mm: number, mayCount: boolean) => ({
    end: { name: column.header, at: "length", mm } as const,
    mayCount,
  });
  if (typeof cell === "string" && cell.length <= LONGEST) {
    const own = readLengthText(cleanText(cell), { ...AS_TYPED, feetInches });
    if (own.is === "value" && !own.plain && !own.asks && own.value > 0) return said(own.value, false);
  }
  // among feet and inches a bare number is neither for sure
  if (unit === null || (feetInches && unit !== "in" && unit !== "ft")) return null;
  const value =
    typeof cell === "number" ? cell : Number(LAST_NUMBER.exec(String(cell ?? ""))?.[1]?.replace(",", "."));
  const mm = value * IN_COLUMN_UNIT[unit];
  return mm > 0 ? said(mm, Number.isInteger(value) && value <= MOST_COUNTED) : null;
}

const LONGEST = 16;
/** up to four hooks may be counted there, where not most of them are lengths */
const MOST_COUNTED = 4;
const AS_TYPED = { factor: 1, comma: "decimal" } as const;
const FEWEST_LENGTHS = 2;
const LAST_NUMBER = /(\d+(?:[.,]\d+)?)\s*(?:mm|cm|m)?\s*$/;

function hookColumn({
  unknownHeaders = [],
}: TableReading): { readonly column: number; readonly header: string } | null {
  const found = unknownHeaders.filter(({ header }) => {
    const words = header
      .normalize("NFD")
      .replace(/[\u0300-\u036f]/g, "")
      .normalize("NFC")
      .toLowerCase()
      .split(/[^\p{L}]+/u);
    return words.some((word) => HOOK_WORDS.value.some((hook) => word.startsWith(hook.normalize("NFC"))));
  });
  return found.length === 1 ? (found[0] ?? null) : null;
}

/** A hook that is a much smaller multiple of its diameter than the hooks of all other bars of the shape. */
export interface OffHook {
  readonly facts: BarFacts;
  readonly end: EndOfRow;
  /** diameters */
  readonly usual: number;
  readonly others: number;
}

/** Hooks unlike those of all other bars of their shape, by diameters. */
export function offHooks({ answers }: SheetFacts): readonly OffHook[] {
  const { others, alike, less, most } = SHORT_ENDS.value;
  const groups = new Map<
    string,
    { readonly facts: BarFacts; readonly end: EndOfRow; readonly times: number }[]
  >();
  for (const { facts, answer } of answers.those(lastEnd)) {
    const key = `${answer.shape} ${answer.end.name}`;
    const one = { facts, end: answer.end, times: answer.end.mm / (facts.diameter ?? 1) };
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [one]);
    else group.push(one);
  }
  return [...groups.values()].flatMap((group) => {
    const [odd, ...rest] = [...group].sort((a, b) => a.times - b.times);
    const [least] = rest;
    const greatest = rest.at(-1);
    if (odd === undefined || least === undefined || greatest === undefined || rest.length < others) return [];
    if (greatest.times > most || greatest.times > least.times * alike || odd.times > least.times * less)
      return [];
    return [{ facts: odd.facts, end: odd.end, usual: least.times, others: rest.length }];
  });
}

/** The hook of a bar that the standard does not measure: its own column, else the last leg of a named shape. */
function lastEnd(facts: BarFacts): { readonly shape: string; readonly end: EndOfRow } | null {
  const key = groupOf(facts);
  if (key === null || !key.startsWith(SHAPE) || !(facts.diameter ?? 0)) return null;
  const hook = hookOf(facts);
  if (hook !== null) return { shape: key, end: hook };
  const { dims } = facts.row;
  const last = dims.length - 1;
  const letter = DIMENSION_LETTERS[last];
  const mm = dims[last] ?? null;
  if (letter === undefined || mm === null || dims.filter((dim) => dim !== null).length < FEWEST_LEGS)
    return null;
  return { shape: key, end: { name: letter, at: letter, mm } };
}

/** a hook stands after two sides */
const FEWEST_LEGS = 3;
