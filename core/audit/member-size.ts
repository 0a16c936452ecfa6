/** mm: what a heading or remark says of the concrete round the bar. */
export interface MemberSize {
  readonly wide: number;
  readonly narrow: number;
  readonly cover: number | null;
}

const SECTION = /\b(\d{3,4})\s*(?:mm)?\s*[x×*]\s*(\d{3,4})\b/;
const COVER = /\b(?:cover|cov\.?|c)\s*[=:]?\s*(\d{2,3})\b(?!\s*[x×*])/;
const COVER_BEHIND = /\b(\d{2,3})\s*(?:mm)?\s*cover\b/;
const EXTENT = /\b(?:length|height|depth|long|l|h)\s*[=:]?\s*(\d{3,5})\b/;
const LENGTH =
  /(?<!\b(?:lap|splice|anchorage|anchor|development|dev\.?|embedment|bond|hook|leg|tail|bars?|cut|cutting|total|thread|threaded|free|projecting)\s)(?<!(?:\bs|\be|@|c\/c)\s?=?\s?\d{2,3}(?:\s?mm)?(?:\s?c\/c)?,?\s)(?<!\d\s?c\/c,?\s)\b(?:length|long|l)\s*[=:]?\s*(\d{4,5})\b/;

/** Section and cover out of words such as "beam b1 300x600 cover 40"; null where no section is said. */
export function memberSize(words: string): MemberSize | null {
  const section = SECTION.exec(words);
  if (section === null) return null;
  const sides = [Number(section[1]), Number(section[2])];
  return { wide: Math.max(...sides), narrow: Math.min(...sides), cover: coverIn(words) };
}

/** mm of cover in words such as "cover 40" or "c=40". */
export function coverIn(words: string): number | null {
  const said = COVER.exec(words) ?? COVER_BEHIND.exec(words);
  return said === null ? null : Number(said[1]);
}

/** mm that a member measures along a spiral, in words such as "length 6000" or "depth 900"; a span is none. */
export function memberExtent(words: string): number | null {
  const said = EXTENT.exec(words)?.[1];
  return said === undefined ? null : Number(said);
}

/** mm along the member in words such as "length 6000" or "L=6000"; the length of a lap, of the bar itself or behind a spacing, over which bars stand, is none. */
export function memberLength(words: string): number | null {
  const said = LENGTH.exec(words)?.[1];
  return said === undefined ? null : Number(said);
}

const THICKNESS =
  /\b(?:slab|wall|raft|topping)\s*(?:thk\.?|thickness|thick|t)?\s*[=:]?\s*(\d{3,4})\b(?!\s*[x×*])|\b(\d{3,4})\s*(?:mm)?\s*(?:thk\.?|thick|slab|wall|raft)\b/;

/** mm that a slab or wall is thick, in words such as "slab 200" or "250 thk wall". */
export function memberThickness(words: string): number | null {
  const said = THICKNESS.exec(words);
  return said === null ? null : Number(said[1] ?? said[2]);
}

const COLUMN =
  /\b(?:columns?|cols?\.?|piers?|pilares?|pilastros?|columnas?|poteaux?|st[üu]e?tzen?|kolon\w*|s[łl]up\w*|kolom|cột)(?![\p{L}])|柱|колонн/u;

/** True of a member that is a column by its words. */
export function isColumn(words: string): boolean {
  return COLUMN.test(words);
}
