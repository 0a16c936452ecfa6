import type { Block } from "../../core/formulas";
import { type Cell, isCellError } from "../../core/schedule/sheet";

/** Key of a call: equal for equal content in the same place, of fixed length however long its ranges are. */
export function contentKey(name: string, place: string, blocks: readonly (Block | undefined)[]): string {
  const digest = new Digest();
  digest.add(`${name}\u0001${place}`);
  for (const block of blocks) {
    digest.add(block === undefined ? "\u0002-" : `\u0002${block.length}x${block[0]?.length ?? 0}`);
    const end = endOfRows(block);
    for (let row = 0; row < end; row += 1) for (const cell of block?.[row] ?? []) digest.add(cellText(cell));
  }
  return `${name} ${digest.text()}`;
}

/** Rows that need a look: the blank rows below a column share one row, which says all of them. */
function endOfRows(block: Block | undefined): number {
  let end = block?.length ?? 0;
  while (end > 1 && block![end - 2] === block![end - 1]) end -= 1;
  return end;
}

/** A number and a text of the same digits differ. */
function cellText(cell: Cell): string {
  if (cell === null) return "\u0003";
  if (isCellError(cell)) return `\u0004${cell.error}`;
  return typeof cell === "string" ? `\u0005${cell}` : `\u0006${cell}`;
}

/** Two independent 32-bit sums of products (FNV-1a and a multiplicative mix), with the length. */
class Digest {
  private first = 0x811c9dc5;
  private second = 0x9e3779b9;
  private length = 0;

  add(text: string): void {
    this.length += text.length;
    for (let at = 0; at < text.length; at += 1) {
      const code = text.charCodeAt(at);
      this.first = Math.imul(this.first ^ code, 0x01000193);
      this.second = Math.imul((this.second + code) ^ (this.second >>> 15), 0x85ebca6b);
    }
  }

  text(): string {
    return `${this.length}:${(this.first >>> 0).toString(36)}:${(this.second >>> 0).toString(36)}`;
  }
}
