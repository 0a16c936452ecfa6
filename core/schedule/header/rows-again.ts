import { type HeaderRow, LEAST_WORDS } from "./header-blocks";
import { recogniseHeader } from "./recognise-header";

/** Known heads of the top row are merged with the cells below them, where they stand again: it is no title. */
export function reachesDown(top: HeaderRow | undefined, below: HeaderRow | undefined): boolean {
  const shared = [...(top?.texts ?? [])].filter(
    ([column, text]) => below?.texts.get(column) === text && recogniseHeader(text) !== null,
  );
  return shared.length > 1;
}

/** The whole header stands below once more: the next row says word for word what its top row does. */
export function saysAgain(top: HeaderRow | undefined, next: HeaderRow): boolean {
  const own = ({ texts, merged }: HeaderRow) => [...texts].filter(([column]) => !merged.has(column));
  const words = own(next);
  if (top === undefined || words.length < LEAST_WORDS || words.length !== own(top).length) return false;
  return words.every(([column, text]) => top.texts.get(column) === text);
}
