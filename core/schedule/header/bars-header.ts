import type { Standard } from "../../standards/port";
import { findHeader, type Header } from "./find-header";
import type { HeaderSource } from "./header-source";
import { listsDetails } from "./lists-details";
import { listsOtherThings } from "./lists-other-things";

/** The header of bars that begins in this row; "details" where it heads details of bars listed before, null where it heads neither. */
export function barsHeader(
  source: HeaderSource,
  row: number,
  standard: Standard,
  least: number | undefined,
  marks: () => ReturnType<Parameters<typeof listsDetails>[3]>,
): Header | "details" | null {
  const header = findHeader(source, row, standard, least);
  if (header === null) return null;
  if (header.blocks.every((block) => listsDetails(source, header, block, marks))) return "details";
  return header.blocks.some((block) => listsOtherThings(source, header, block)) ? null : header;
}
