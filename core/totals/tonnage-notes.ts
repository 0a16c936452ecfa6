import { counted } from "../units/counted";
import { poursAlikeWords } from "./pours-alike";
import type { ReckonedTonnage } from "./reckon-tonnage";
import type { NotInTotal } from "./row-mass";
import type { SumBeyond } from "./sum-beyond";
import { weighedAsMadeWords } from "./weighed-as-made";

/** What the tonnes leave out or rest on, a sentence each; empty where every bar is in them by its cut length. */
export function tonnageNotes({
  groupedBy,
  held,
  notInTotal,
  doubted,
  hidden,
  asTyped,
  byTyped,
  beyond,
  tonnage,
}: ReckonedTonnage): string[] {
  const notes: string[] = [];
  if (held !== null) notes.push(`totals are held back, since they may be wrong: ${held}`);
  if (groupedBy === "member") notes.push("the schedule names no pours: grouped by member");
  if (groupedBy === "sheet") notes.push("the schedule names no pours and no members: grouped by sheet");
  if (groupedBy === "pour") notes.push(...poursAlikeWords(tonnage.pours.map(({ pour }) => pour)));
  notes.push(...notInTotalWords(notInTotal), ...doubtedWords(doubted, tonnage.total), ...hiddenWords(hidden));
  if (held === null && beyond !== null) notes.push(beyondWords(beyond));
  if (held === null) notes.push(...weighedAsMadeWords(asTyped, tonnage.total));
  for (const from of ["typed length", "typed mass"] as const) {
    const count = byTyped[from];
    if (count > 0)
      notes.push(`${counted(count, "row")} by the ${from}: the shape gives no length that is surer`);
  }
  const inAll = byTyped["typed total length"];
  if (inAll > 0)
    notes.push(
      `${counted(inAll, "row")} by the total length that is typed: the length of one bar is not used until its cell is corrected`,
    );
  const inMetres = byTyped["metres alone"];
  if (inMetres > 0)
    notes.push(
      `${counted(inMetres, "row")} in metres alone, without a number of bars: weighed by the metre, and in no cutting list`,
    );
  return notes;
}

/** The rows whose own figures make another mass of them, the heaviest difference first; `total` in tonnes. */
export function doubtedWords(doubted: ReckonedTonnage["doubted"], total: number | null = null): string[] {
  if (doubted.length === 0) return [];
  const off = ({ row }: (typeof doubted)[number]): number => Math.abs(row.mass - (row.otherwise?.mass ?? 0));
  const told = [...doubted].sort((one, other) => off(other) - off(one)).slice(0, MOST_CELLS);
  const isSeveral = new Set(doubted.map(({ sheet }) => sheet)).size > 1;
  const words = told.map(({ sheet, row: { cell, mass, otherwise } }) => {
    const at = isSeveral ? `${sheet}!${cell}` : cell;
    if (otherwise?.by === "repeat") return `${at} ${shownKg(mass)} kg, though the row repeats another`;
    if (otherwise?.by === "length that a bar may have")
      return `${at} ${shownKg(mass)} kg${shareWords(mass, total)}, by a length that no bar is rolled in`;
    return `${at} ${shownKg(mass)} kg, by its ${otherwise?.by} ${shownKg(otherwise?.mass ?? 0)} kg`;
  });
  const more = doubted.length > told.length ? ` and ${doubted.length - told.length} more` : "";
  return [`weighed by number and length, against another figure of the row: ${words.join("; ")}${more}`];
}

/** What part of the total rests on a row. */
function shareWords(mass: number, total: number | null): string {
  if (total === null || total <= 0) return "";
  return ` (${Math.round((mass / (total * KG_PER_TONNE)) * 100)} % of the total)`;
}

/** A sum of the schedule's own that says there is more than was read. */
function beyondWords({ sheet, cell, mass, made }: SumBeyond): string {
  return `the schedule's own sum of ${shownTonnes(mass / KG_PER_TONNE)} t (${sheet}!${cell}) is far above the ${shownTonnes(made / KG_PER_TONNE)} t of the bars: look whether bars of one member were counted for all, or rows were left out`;
}

const KG_PER_TONNE = 1000;
const shownTonnes = (tonnes: number): string => tonnes.toFixed(3);

/** The rows that nobody sees and every total counts. */
export function hiddenWords(hidden: ReckonedTonnage["hidden"]): string[] {
  if (hidden.length === 0) return [];
  const isSeveral = new Set(hidden.map(({ sheet }) => sheet)).size > 1;
  const rows = hidden.slice(0, MOST_CELLS).map(({ sheet, row }) => (isSeveral ? `${sheet} ${row}` : row));
  const more = hidden.length > MOST_CELLS ? ` and ${hidden.length - MOST_CELLS} more` : "";
  const mass = hidden.reduce((sum, row) => sum + row.mass, 0);
  return [
    `${counted(hidden.length, "hidden row")} counted in the total (row ${rows.join(", ")}${more}): ${shownKg(mass)} kg`,
  ];
}

const shownKg = (mass: number): string => mass.toFixed(1);

/** Reasons are told one by one up to this many, and cells of each. */
const MOST_REASONS = 5;
const MOST_CELLS = 8;

/** The rows that are in no total, reason by reason with their cells. */
export function notInTotalWords(all: readonly NotInTotal[]): string[] {
  const byReason = new Map<string, NotInTotal[]>();
  for (const row of all) {
    const alike = byReason.get(row.why);
    if (alike === undefined) byReason.set(row.why, [row]);
    else alike.push(row);
  }
  const told = [...byReason].slice(0, MOST_REASONS);
  const more = [...byReason.values()].slice(MOST_REASONS).reduce((sum, list) => sum + list.length, 0);
  const isSeveral = new Set(all.map(({ sheet }) => sheet)).size > 1;
  const cells = (list: readonly NotInTotal[]): string => {
    const named = list.slice(0, MOST_CELLS).map(({ sheet, cell }) => (isSeveral ? `${sheet}!${cell}` : cell));
    const rest = list.length - named.length;
    return named.join(", ") + (rest > 0 ? ` and ${rest} more` : "");
  };
  return [
    ...told.map(([why, list]) => `not in the total: ${counted(list.length, "row")} (${cells(list)}): ${why}`),
    ...(more === 0 ? [] : [`not in the total for other reasons: ${counted(more, "row")}`]),
  ];
}
