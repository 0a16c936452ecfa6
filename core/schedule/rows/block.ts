import { shortened } from "../cells/longest-text";
import { type Carried, nothingCarried } from "./carried";
import type { OpenSummary } from "./open-summary";
import type { BarRowReader } from "./read-bar-row";
import { readHeading } from "./read-heading";
import type { DraftRow } from "./row-draft";
import type { RowEvidence } from "./row-evidence";
import type { RowReasonCode } from "./row-reason";
import { BLANK, type RowVerdict } from "./row-verdict";

/** A table that rows are being read under. */
export interface Block {
  readonly reader: BarRowReader;
  carried: Carried;
  above: DraftRow | null;
  blanks: number;
  ended: boolean;
  /** a block of sums, not of bars */
  readonly summary: OpenSummary | null;
}

/** A block takes its own columns; the last one everything to the right, the first to the left. */
export function columnsOf(blocks: readonly Block[], index: number, filled: readonly number[]): number[] {
  const from = index === 0 ? 0 : (blocks[index]?.reader.layout.left ?? 0);
  const to = blocks[index + 1]?.reader.layout.left ?? Number.POSITIVE_INFINITY;
  return filled.filter((column) => column >= from && column < to);
}

const BLANKS_THAT_END = 20;

/** A blank row under every table: many of them end it. */
export function passBlank(blocks: readonly Block[]): RowVerdict {
  for (const block of blocks) {
    block.blanks += 1;
    if (block.blanks >= BLANKS_THAT_END) block.ended = true;
  }
  return BLANK;
}

/** Gives the bars of every table without a column for sizes the one that a lone text names; null where none takes it. */
export function nameSize(blocks: readonly Block[], text: string): RowVerdict | null {
  let isTaken = false;
  for (const block of blocks) {
    const size = block.summary === null ? block.reader.sizeInHeading(text) : null;
    if (size === null) continue;
    isTaken = true;
    block.carried = { ...nothingCarried(block.carried.grade), size };
  }
  return isTaken
    ? { class: "heading", because: { code: "size-heading", values: { words: shortened(text) } } }
    : null;
}

/** What a heading of members says of the bars below it. */
export function carryHeading(block: Block, code: RowReasonCode, { heading }: RowEvidence): void {
  if (code !== "member-heading" || heading === null) return;
  const named = heading.member === null ? {} : { member: heading.member, heading: heading.member };
  block.carried = { ...block.carried, ...named, members: heading.members, membersTyped: null };
}

/** The member and its number that a text right above a header gives; nothing where it gives no number. */
export function membersOf(text: string): Partial<Carried> {
  const { member, members } = readHeading(text);
  return members === null ? {} : { member, heading: member, members };
}
