import type { ReckonedTonnage } from "./reckon-tonnage";

/** What the tonnes leave out or rest on, a sentence each; empty where every bar is in them by its cut length. */
export function tonnageNotes({ groupedBy, dropped, withoutMass, byTyped }: ReckonedTonnage): string[] {
  const notes: string[] = [];
  if (groupedBy === "member") notes.push("the schedule names no pours: grouped by member");
  if (groupedBy === "sheet") notes.push("the schedule names no pours and no members: grouped by sheet");
  if (dropped > 0) notes.push(`${rows(dropped)} struck through or superseded: left out`);
  if (withoutMass > 0)
    notes.push(`${rows(withoutMass)} without a mass that could be worked out: in no total`);
  for (const from of ["typed length", "typed mass"] as const) {
    const count = byTyped[from];
    if (count > 0) notes.push(`${rows(count)} by the ${from}: the shape gives no length`);
  }
  return notes;
}

const rows = (count: number): string => (count === 1 ? "1 row" : `${count} rows`);
