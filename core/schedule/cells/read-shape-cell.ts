import type { Standard } from "../../standards/port";
import { toMillimetres } from "../../units/convert-length";
import type { GuessCode } from "../bar-row";
import { type Answer, type CellPlace, guessed, type RowContext, sameAsMark, unread } from "./cell-answer";
import { cleanText } from "./clean-text";
import { LONGEST_SHAPE, shortened } from "./longest-text";
import { unitsAtLegs } from "./path-in-unit";
import { remember } from "./remember";
import { isDitto, isWord, plainWords } from "./row-words";
import { turnsApart } from "./turns-apart";

/** What a shape cell says. */
export interface ShapeCell {
  readonly is: "shape" | "legs" | "ditto" | "blank" | "same-as" | "unread";
  readonly shape: string | null;
  readonly sameAs: string | null;
  readonly legs: readonly number[] | null;
  readonly guess: GuessCode | null;
  readonly asks: boolean;
  readonly reason: string;
}

const NOTHING: ShapeCell = {
  is: "blank",
  shape: null,
  sameAs: null,
  legs: null,
  guess: null,
  asks: false,
  reason: "",
};
const PATH = /(?:^|\s)(?:[+-](?:\d|hook)|-?hook(?:90|135|180))/i;
const LEGS = /^(?:[A-Z]{1,2}[\s-]*)?(\d+(?:\.\d+)?(?:\s*(?:[+/x]|(?<=\d) - (?=\d))\s*\d+(?:\.\d+)?)+)$/i;
const CODE_WORDS = /^(?:sc|s\.c\.|s\/c|shape|shape code|code|type|sh)[\s.:#-]*(?=[\dA-Z])/i;
/** a code with words behind it; "0,25 / 1,90" and 0'-8" + 4'-6" are legs */
const CODE_FIRST = /^(\d{1,2})(?![\d.'’"]|,\d|\s*[+/|x×]\s*\d)/;
const SAME_AS = /^(?:same as|as)\s+(?:mark\s+)?([\p{L}\d][\p{L}\d\-/.]*)$/iu;

/** Reads the shape cells of one column under one standard; answers are remembered by what was typed. */
export function shapeCellReader(standard: Standard) {
  return remember<string | number, ShapeCell>(
    (cell) => (typeof cell === "number" ? shapeOfNumber(cell, standard) : shapeOfText(cell, standard)),
    (reason) => ({ ...NOTHING, is: "unread", reason }),
  );
}

/** The shape and the legs that a reading stands for, where it is no plain code or path. */
export function settleShape(
  { is, guess, asks, reason, shape, legs, sameAs }: ShapeCell,
  place: CellPlace,
  context: RowContext,
): Answer<string> & { readonly legs: readonly number[] | null } {
  const { above } = context;
  if (is === "blank") return { value: null, problem: null, legs: null };
  if (is === "ditto") return { value: above?.shape ?? null, problem: null, legs: above?.legs ?? null };
  if (is === "same-as")
    return { ...sameAsMark<string>(place, sameAs, (bar) => bar.shape, context), legs: null };
  if (guess === null) return { ...unread(place, reason), legs: null };
  const offered = shape === null ? {} : { proposal: shape };
  return { ...guessed(place, shape, { guess, asks, reason, ...offered }, context), legs };
}

function shapeOfNumber(number: number, standard: Standard): ShapeCell {
  if (!Number.isInteger(number) || number < 0) {
    return { ...NOTHING, is: "unread", reason: `"${number}" is no shape code` };
  }
  return coded(codeOf(String(number), standard));
}

function shapeOfText(typed: string, standard: Standard): ShapeCell {
  const text = cleanText(typed);
  const plain = plainWords(text);
  if (text === "" || isWord("blank", plain)) return NOTHING;
  if (isDitto(plain)) return { ...NOTHING, is: "ditto" };
  if (standard.shapes.has(text) || standard.shapes.has(text.toUpperCase())) {
    return coded(standard.shapes.has(text) ? text : text.toUpperCase());
  }
  if (isWord("straight", plain)) return coded("00");
  if (text.length > LONGEST_SHAPE) return noShape(text, standard);
  const path = turnsApart(unitsAtLegs(text));
  if (PATH.test(path) && /\d/.test(path)) return coded(path);
  const legs = LEGS.exec(text.replace(/\s*mm\b/gi, ""));
  if (legs !== null) return fromLegs(text, legs[1] ?? "", standard);
  const same = SAME_AS.exec(text);
  if (same !== null) return { ...NOTHING, is: "same-as", sameAs: same[1] ?? "" };
  return fromCodeText(text, standard);
}

function fromCodeText(text: string, standard: Standard): ShapeCell {
  const bare = text.replace(CODE_WORDS, "");
  const leading = CODE_FIRST.exec(bare);
  if (leading !== null) {
    const code = codeOf(leading[1] ?? "", standard);
    const rest = bare.slice((leading[1] ?? "").length).trim();
    if (rest === "" || standard.shapes.has(code)) return rest === "" ? coded(code) : digitsOf(text, code);
  }
  const behindLetter = /^[A-Z]{1,2}[\s-]*(\d{2})$/i.exec(bare);
  const code = behindLetter === null ? null : codeOf(behindLetter[1] ?? "", standard);
  if (code !== null && standard.shapes.has(code)) return digitsOf(text, code);
  if (standard.shapes.has(bare.toUpperCase())) return coded(bare.toUpperCase());
  if (/^[\p{L}\d]{1,4}$/u.test(bare)) return coded(bare.toUpperCase());
  return noShape(text, standard);
}

function noShape(text: string, standard: Standard): ShapeCell {
  const reason = `"${shortened(text)}" is no shape code of ${standard.id} and no path`;
  return { ...NOTHING, is: "unread", reason };
}

/** "1" is "01" where the standard writes two digits. */
function codeOf(digits: string, standard: Standard): string {
  if (standard.shapes.has(digits)) return digits;
  const padded = digits.padStart(2, "0");
  if (standard.shapes.has(padded)) return padded;
  const short = String(Number(digits));
  if (standard.shapes.has(short)) return short;
  // a list without codes of two digits, or with codes of one, keeps what is typed
  const isPadded = standard.shapes.size > 1 && ![...standard.shapes.keys()].some((held) => held.length === 1);
  return isPadded ? padded : digits;
}

function fromLegs(text: string, list: string, standard: Standard): ShapeCell {
  const legs = list.split(/\s*[+/x]\s*| - /i).map(Number);
  const path = legs.join(" +90 ");
  return {
    ...NOTHING,
    is: "legs",
    legs: legs.map((leg) => toMillimetres(leg, standard.unit)),
    shape: path,
    guess: "shape-from-legs",
    asks: true,
    reason: `"${shortened(text)}" gives the legs ${legs.join(", ")} but not the turns: ${path} if every turn is a right angle one way`,
  };
}

function coded(shape: string): ShapeCell {
  return { ...NOTHING, is: "shape", shape };
}

function digitsOf(text: string, code: string): ShapeCell {
  return {
    ...coded(code),
    guess: "shape-digits",
    reason: `shape code ${code} was taken from "${shortened(text)}"`,
  };
}
