import { cleanText } from "../cells/clean-text";
import { LONGEST_WORDS } from "../cells/longest-text";
import { holdsWord, isWord, plainWords } from "../cells/row-words";
import { HEADER_WORD_ROWS } from "../header/header-word-rows";

/** A sub-header row: the member below it and how many there are. */
export interface Heading {
  readonly member: string | null;
  readonly members: number | null;
}

const COUNT_BEHIND =
  /[\s\-–:,]*[([]?\s*(?:x\s*)?(\d+)\s*(?:nos?|numbers?|off|sets?|thus|pcs|ea|stk|stück|st|x|req'?d|required|szt|шт|ks|db|adet|kpl|kom|uds?|pz|buc)(?!\p{L})\.?\s*[)\]]?\s*$/iu;
const TIMES_BEHIND = /[\s\-–:,]*[([]?\s*(?<!\d)[x×]\s*(\d+)\s*[)\]]?\s*$/i;
const OFF_BEHIND =
  /[\s\-–:,]*[([]?\s*(?:nos?|qty|number|anzahl|nombre|шт|кол|sl|so luong)\.?\s*(?:(?:of|de|d')\s*\p{L}+\s*)?[:=]?\s*(\d+)\s*[)\]]?\s*$/iu;
const COUNT_BEFORE = /^(\d+)\s*(?:nos?\.?|off|x)\s+(?=\p{L})/iu;
const MEMBER_WORDS = new Set(
  HEADER_WORD_ROWS.filter(({ kind }) => kind === "member")
    .flatMap(({ words }) => words)
    .filter((word) => !word.includes(" ")),
);
const MORE_MEMBER_WORDS =
  /\b(?:foundation|pile ?cap|raft|lintel|stair|staircase|retaining|plinth|tie ?beam|grade ?beam|chajja|parapet|trager|stutze|decke|wand|fundament|poutre|poteau|dalle|semelle|voile|pier|abutment|deck|parapet|pour|level|floor|storey|block|core|panel|joist|chimney)\b|梁|柱|板|基础|墙/iu;

/** Member and number of members of a sub-header: "BEAM B1 (6 Nos)", "Column C2 x 4", "3 off Pad P1". */
export function readHeading(typed: string): Heading {
  const text = cleanText(typed).replace(/^(?:member|element|bauteil|élément)\s*[:=]\s*/i, "");
  if (text.length > LONGEST_WORDS) return { member: text, members: null };
  for (const pattern of [COUNT_BEHIND, TIMES_BEHIND, OFF_BEHIND, COUNT_BEFORE]) {
    const found = pattern.exec(text);
    const count = Number(found?.[1]);
    if (found === null || !Number.isSafeInteger(count) || count < 1) continue;
    const member = text.replace(found[0], "").trim();
    return { member: member === "" ? null : member, members: count };
  }
  return saidByWord(text) ?? { member: text.replace(/:$/, "") || null, members: null };
}

/** "T1 (kom. 3)", "G2 - buc. 4", "柱C1 12箇所": a word of any language for how many there are, and the number beside it. */
const WORD_THEN_NUMBER =
  /[\s\-–:,]*[([（]?\s*((?:\p{L}[\p{L}-]*\.?\s)?\p{L}[\p{L}-]*)(?:\s*[.:=]\s*(\d{1,4})|\s+(\d{1,4})\s*[)\]）])\s*[)\]）]?\s*$/u;
/** "Zapata Z-1 – cantidad 14": behind a dash or a comma it needs no sign between */
const WORD_BEHIND_DASH = /\s*(?:\s[-–]|[–,;])\s*(\p{L}{2,}\.?)\s(\d{1,4})\s*$/u;
const NUMBER_THEN_WORD =
  /[\s\-–:,]*[([（]?\s*(?<![\p{L}\d.,/-])(?:x\s*)?(\d{1,4})\s*((?:\p{L}[\p{L}-]*\.?\s)?\p{L}[\p{L}-]*)\.?\s*[)\]）]?\s*$/u;

function saidByWord(text: string): Heading | null {
  for (const [pattern, word, number] of [
    [WORD_THEN_NUMBER, 1, 2],
    [WORD_BEHIND_DASH, 1, 2],
    [NUMBER_THEN_WORD, 2, 1],
  ] as const) {
    const found = pattern.exec(text);
    const count = Number(found?.[number] ?? found?.[3]);
    if (found === null || !(count > 0)) continue;
    const said = found[word] ?? "";
    // "dolu kom. 3": the last word says it, the one before is the member's
    const own = isSaid(said) ? said : (said.split(/\s/).at(-1) ?? "");
    const behind = text.slice(found.index);
    // one letter is a name but for "n. 2"
    if (
      !isSaid(own) ||
      (own.length === 1 && /\p{Script=Latin}/u.test(own) && !behind.includes(`${own.toLowerCase()}.`))
    )
      continue;
    const member = (text.slice(0, found.index) + (word === 1 ? behind.slice(0, behind.indexOf(own)) : ""))
      .replace(/[\s\-–:,([（]+$/u, "")
      .trim();
    return { member: member === "" ? null : member, members: count };
  }
  return null;
}

const isSaid = (word: string): boolean => isWord("members-said", plainWords(word));

const SENTENCE = /\b(?:is|are|be|shall|must|complies|accordance|has|have|this schedule)\b/;

/** of a heading that says at length where its member stands */
const LONGEST_NAME = 160;

/** "beam b1 to b9 on gridline a ...": a word for a member and its mark come first. */
function beginsWithName(plain: string): boolean {
  const word = /^(\p{L}+) \p{L}{1,3}\d+\b/u.exec(plain)?.[1] ?? "";
  return MEMBER_WORDS.has(word) || MORE_MEMBER_WORDS.test(word);
}

/** True where a lone text names a member rather than says something about the bars. */
export function isHeadingText(typed: string, standsFirst: boolean): boolean {
  const plain = plainWords(typed);
  if (SENTENCE.test(plain)) return false;
  if (plain.length > 60) return standsFirst && plain.length <= LONGEST_NAME && beginsWithName(plain);
  if (readHeading(typed).members !== null) return true;
  const isMember =
    plain.split(/[^\p{L}]+/u).some((word) => MEMBER_WORDS.has(word)) || MORE_MEMBER_WORDS.test(plain);
  if (holdsWord("note", plain))
    return isMember && standsFirst && !/\d\s*%|^(?:see|all|note|notes|refer|provide)\b/.test(plain);
  return isMember || standsFirst;
}
