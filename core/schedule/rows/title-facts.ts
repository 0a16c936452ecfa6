import type { TableReading } from "../bar-row";
import { beginsWithWord, isWord, plainWords } from "../cells/row-words";
import type { Cell } from "../sheet";
import { shownText } from "./row-cells";
import { saidInWords } from "./said-in-words";

/** A row that may say something of the whole schedule. */
export interface TitleRow {
  readonly cells: readonly Cell[];
  readonly filled: readonly number[];
  /** no bar stands above it */
  readonly isAbove: boolean;
  /** a cell that holds a date, year first; null for one that does not */
  dateAt(column: number): string | null;
}

/** Facts that hold of one pour or member: where a sheet says two, it says none of all its bars. */
const OF_BARS: ReadonlySet<string> = new Set([
  "member",
  "element",
  "pour",
  "pour no",
  "pour number",
  "pour ref",
]);
const SEVERAL = "";

/** Adds the facts of a title row: "Drawing No." with its value beside it or behind a colon. */
export function addTitleFacts(facts: Map<string, string>, row: TitleRow): void {
  const { cells, filled, isAbove } = row;
  const isTitle = filled.some((column) => {
    const text = cells[column];
    return typeof text === "string" && (/[:=]\s*$/.test(text) || isWord("title", plainWords(text)));
  });
  const isLabel = (label: string): boolean => isWord("title", label) || (isTitle && isWord("fact", label));
  const add = (label: string, value: string): void => {
    const known = facts.get(label);
    if (OF_BARS.has(label) && known !== undefined && known !== value) facts.set(label, SEVERAL);
    else if (isAbove || !isWord("fact", label)) facts.set(label, value);
    else if (OF_BARS.has(label)) facts.set(label, SEVERAL);
  };
  for (let index = 0; index < filled.length; index += 1) {
    const typed = cells[filled[index] as number];
    if (typeof typed !== "string") continue;
    const cell = isAbove ? withoutNames(facts, typed.trim()) : typed.trim();
    const inside = /^([^:=]{2,30})[:=]\s*(\S.*)$/.exec(cell);
    const named = plainWords(inside?.[1] ?? "");
    if (inside !== null && (isLabel(named) || (isWord("fact", named) && !OF_BARS.has(named)))) {
      add(named, withoutLabels(inside[2] ?? ""));
      continue;
    }
    const label = plainWords(cell);
    const column = filled[index + 1] ?? -1;
    const next = cells[column];
    if (isLabel(label) && next !== undefined && next !== null) {
      const value = row.dateAt(column) ?? shownText(next);
      if (!isLabel(plainWords(value))) add(label, value);
    }
  }
}

/** "Quay Street deck   Job no. 4471": what is said first, where the next part says of itself what it is. */
function withoutLabels(value: string): string {
  const parts = value.split(/(\s{2,})/);
  const next = parts.findIndex((part, at) => at > 0 && beginsWithWord("title", plainWords(part)));
  return (next < 0 ? value : parts.slice(0, next).join("")).trim();
}

/** Takes schedule, drawing and revision that the words of a title name, and gives what else they say. */
function withoutNames(facts: Map<string, string>, text: string): string {
  const { rest, ...said } = saidInWords(text);
  for (const [kind, value] of Object.entries(said))
    if (value !== null && !facts.has(kind)) facts.set(kind, value);
  return rest;
}

/** What a title block says of all bars under it, where no column says it bar by bar. */
export function barsOfTitle(
  facts: ReadonlyMap<string, string> | undefined,
  tables: readonly TableReading[],
): { readonly member: string | null; readonly pour: string | null } {
  const said = (kind: "member" | "pour", words: readonly string[]): string | null => {
    if (tables.some(({ columns }) => columns.has(kind))) return null;
    return words.map((word) => facts?.get(word)?.trim() ?? "").find((text) => text !== "") ?? null;
  };
  return {
    member: said("member", ["member", "element"]),
    pour: said("pour", ["pour", "pour no", "pour number", "pour ref"]),
  };
}

/** Gives bars the member and pour of the title where they have none of their own. */
export function takeTitle(
  bars: readonly { member: string | null; pour: string | null }[],
  { member, pour }: { readonly member: string | null; readonly pour: string | null },
): void {
  if (bars.every((bar) => bar.member === null)) for (const bar of bars) bar.member = member;
  if (pour !== null) for (const bar of bars) bar.pour ??= pour;
}

/** Days from the first of the serial numbers that spreadsheets count dates by, to the first of 1970. */
const FIRST_DAY = Date.UTC(1899, 11, 30);
const MS_A_DAY = 86_400_000;

/** "2030-05-31" of a date's serial number, where the text that is shown says the same year; else that text. */
export function dateText(serial: Cell, shown: string | undefined): string | null {
  if (typeof serial !== "number" || !(serial > 0) || serial > 100_000) return shown?.trim() || null;
  const day = new Date(FIRST_DAY + Math.floor(serial) * MS_A_DAY).toISOString().slice(0, 10);
  const text = shown?.trim() ?? "";
  return text === "" || text.includes(day.slice(2, 4)) ? day : text;
}
