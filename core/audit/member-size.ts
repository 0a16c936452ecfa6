/** mm: what a heading or remark says of the concrete round the bar. */
export interface MemberSize {
  readonly wide: number;
  readonly narrow: number;
  readonly cover: number | null;
}

const SECTION = /\b(\d{3,4})\s*(?:mm)?\s*[x×*]\s*(\d{3,4})\b/;
const COVER = /\b(?:cover|cov\.?|c)\s*[=:]?\s*(\d{2,3})\b(?!\s*[x×*])|\b(\d{2,3})\s*(?:mm)?\s*cover\b/;
const LENGTH = /\b(?:length|height|depth|long|l|h)\s*[=:]?\s*(\d{3,5})\b/;

/** Section and cover out of words such as "beam b1 300x600 cover 40"; null where no section is said. */
export function memberSize(words: string): MemberSize | null {
  const section = SECTION.exec(words);
  if (section === null) return null;
  const sides = [Number(section[1]), Number(section[2])];
  return { wide: Math.max(...sides), narrow: Math.min(...sides), cover: coverIn(words) };
}

/** mm of cover in words such as "cover 40" or "c=40". */
export function coverIn(words: string): number | null {
  const said = COVER.exec(words);
  return said === null ? null : Number(said[1] ?? said[2]);
}

/** mm along the member in words such as "length 6000" or "L=6000"; a span is no length of formwork. */
export function memberLength(words: string): number | null {
  const said = LENGTH.exec(words)?.[1];
  return said === undefined ? null : Number(said);
}
