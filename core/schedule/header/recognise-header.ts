import type { ColumnKind, ColumnUnit } from "../bar-row";
import { cleanText } from "../cells/clean-text";
import { isWord } from "../cells/row-words";
import { headText } from "./head-text";
import { HEADER_UNITS } from "./header-units.data";
import { HEADER_WORD_ROWS } from "./header-word-rows";
import { headingOfParts, partsByWord } from "./heading-of-parts";
import { innerUnit } from "./inner-unit";
import type { HeaderWords, WordPart } from "./language-words";
import { oneForm } from "./one-form";
import { oneSpelling } from "./one-spelling";

/** What one header text stands for. */
export interface HeaderMeaning {
  readonly kind: ColumnKind | "ignored";
  readonly unit: ColumnUnit | null;
  /** gives way to another word of its kind, and then means `otherwise` */
  readonly weak: boolean;
  readonly otherwise: ColumnKind | null;
  /** numbers the rows where it stands first */
  readonly serial: boolean;
}

const UNITS: ReadonlyMap<string, ColumnUnit> = new Map(HEADER_UNITS.rows);
const FILLERS = new Set([
  "of",
  "the",
  "bar",
  "bars",
  "steel",
  "rebar",
  "reinforcement",
  "reinf",
  "de",
  "des",
  "barres",
  "req",
  "reqd",
  "wise",
  "approx",
]);

const EXACT = new Map<string, HeaderWords>();
const LOOSE = new Map<string, HeaderWords>();
const RESPELT = new Map<string, HeaderWords>();
for (const row of HEADER_WORD_ROWS) {
  for (const word of row.words) {
    if (!EXACT.has(word)) EXACT.set(word, row);
    const form = oneForm(word);
    if (!EXACT.has(form)) EXACT.set(form, row);
    const loose = withoutFillers(form);
    if (loose !== "" && !LOOSE.has(loose)) LOOSE.set(loose, row);
    const respelt = oneSpelling(form);
    if (!RESPELT.has(respelt)) RESPELT.set(respelt, row);
  }
}

const PARTS = partsByWord((word) => oneSpelling(oneForm(word)));

/** No known word has a digit, and nearly every mark has one; "in 1 member" and "+ 10 %" are words. */
const HOLDS_DIGIT = /\d/;
const DIGITS_OF_WORDS = /\+\s*\d+\s*%| 1 |(?<!\d)1(?=\p{Lo})/gu;
const WASTE_ADDED = /\+\s*\d+\s*%/g;
const LONGEST_HEADER = 80;
const remembered = new Map<string, HeaderMeaning | null>();

/**
 * Column kind and unit of a header text in any of the known languages; null where no known word fits.
 *
 * @example recogniseHeader("Cutting Length (m)") // { kind: "length", unit: "m" }
 */
export function recogniseHeader(typed: string): HeaderMeaning | null {
  if (typed.length > LONGEST_HEADER) return null;
  const known = remembered.get(typed);
  if (known !== undefined) return known;
  const text = headText(typed);
  const holdsDigit = HOLDS_DIGIT.test(text) && HOLDS_DIGIT.test(oneLine(text).replace(DIGITS_OF_WORDS, " "));
  const found = holdsDigit ? null : (recognise(text) ?? recogniseParted(text));
  // "Zone mm" is as long as the bars are spread over, and no pour
  const meaning = found?.kind === "pour" && unitInHeader(text) !== null ? null : found;
  if (remembered.size < 4000) remembered.set(typed, meaning);
  return meaning;
}

/** legs in one cell, though one of them, "Dim.", is a bar's size in Swedish */
const LEGS_ALONE = /^(?:bar |bending )?(?:dims|dimensions)$/;

function recognise(typed: string): HeaderMeaning | null {
  if (LEGS_ALONE.test(splitUnit(plainHeader(typed)).text)) return null;
  const found =
    recognisePerMetre(typed) ??
    recogniseTwice(typed) ??
    recogniseWhole(typed) ??
    recogniseMadeUp(typed) ??
    recogniseParts(typed) ??
    recogniseUnit(typed);
  // "Bil c/c": from centre to centre stand bars, and no word beside it counts them
  return CENTRE_TO_CENTRE.test(typed) && (found === null || COUNTS.has(found.kind))
    ? { ...SPACING, unit: found?.unit ?? unitInHeader(typed) }
    : found;
}

/** "SCHNITT-" over "LAENGE": a word that is parted at the end of its line. */
function recogniseParted(text: string): HeaderMeaning | null {
  const whole = text.replace(PARTED, "");
  return whole === text ? null : recognise(whole);
}

const PARTED = /(?<=\p{L}{2})-\s+(?=\p{L}{2})/gu;

const oneLine = (text: string): string => text.replace(/\s+/g, " ");

const CENTRE_TO_CENTRE = /(?<!\p{L})c\s?\/\s?c(?!\p{L})/iu;
const COUNTS: ReadonlySet<string> = new Set(["total", "each", "members"]);
const SPACING = meaningOf({ kind: "spacing", words: [] }, null);

/** "Berat/m kg/m", "Massa | kg/m": a mass in a unit by the metre is that of a metre. */
function recognisePerMetre(typed: string): HeaderMeaning | null {
  const plain = plainHeader(typed)
    .replace(/[()[\]]/g, " ")
    .replace(/\s+/g, " ")
    .trim();
  if (isWord("per-metre", plain)) return PER_METRE;
  for (let from = plain.indexOf(" "); from > 0; from = plain.indexOf(" ", from + 1)) {
    if (!isWord("per-metre", plain.slice(from + 1))) continue;
    const words = oneSpelling(plain.slice(0, from)).replace(/\s*\/\s*m(?:etre)?$/, "");
    const kind = lookUp(words)?.kind ?? headingOfParts(words.replace(/\//g, " / "), PARTS)?.kind;
    // "g [kg/m]": a letter is what its unit says
    if (words.length === 1) return PER_METRE;
    if (kind !== undefined && !OF_MASS.has(kind)) return null;
    return kind === undefined ? null : PER_METRE;
  }
  return null;
}

const PER_METRE: HeaderMeaning = { ...SPACING, kind: "unitMass" };

/** the mass of a bar in "kg/m" is none of the row's, and a mass by the metre is "ignored" as a mass by something */
const OF_MASS: ReadonlySet<string> = new Set(["mass", "unitMass", "pieceMass", "ignored"]);

/** What the words of a sentence say of counts, members and the like; words that are not known say nothing. */
export function partsSaid(sentence: string): ReadonlySet<WordPart> {
  const words = oneSpelling(plainHeader(sentence).replace(/[^\p{L}\s]/gu, " ")).split(/\s+/);
  return new Set(words.flatMap((word) => PARTS.get(word) ?? (word === "one" ? "one" : [])));
}

/** Words that nobody knows before "kg": some mass, unless another column is named for it. */
function recogniseUnit(typed: string): HeaderMeaning | null {
  const { text, unit } = splitUnit(plainHeader(typed));
  if (unit === null || !MASS_UNITS.has(unit) || !/\p{L}{3}/u.test(text)) return null;
  // "Dimensions mm, mass kg" is a note
  if (text.split(" ").some((word) => UNITS.has(word))) return null;
  return { kind: "mass", unit, weak: true, otherwise: null, serial: false };
}

/** A heading that is made up of known words, in whichever order. */
function recogniseMadeUp(typed: string): HeaderMeaning | null {
  const whole = plainHeader(typed, true);
  const inner = innerUnit(whole);
  const { text, unit } = inner ?? splitUnit(whole);
  for (const words of [text, whole]) {
    const plain = words
      .replace(/[()[\]-]/g, " ")
      .replace(/\//g, " / ")
      .replace(/\s+/g, " ")
      .trim();
    const found = headingOfParts(oneSpelling(plain), PARTS) ?? headingOfParts(plain, PARTS);
    if (found === null) continue;
    const inside = BRACKETED.exec(whole)?.[1];
    const isOfPart = found.kind === "ignored" || found.kind === "pieceMass";
    if (isOfPart && inside !== undefined && lookUp(inside)?.kind === "unitMass")
      return { ...found, kind: "unitMass", unit: null, serial: false };
    const own = unit !== null && fits(found.kind, unit) ? unit : null;
    return { ...found, unit: own, serial: false };
  }
  return null;
}

function recogniseWhole(typed: string): HeaderMeaning | null {
  const plain = plainHeader(typed);
  const { text, unit } = splitUnit(plain);
  const direct = lookUp(
    plain
      .replace(/[()[\]]/g, " ")
      .replace(/\s+/g, " ")
      .trim(),
  );
  if (direct?.kind === "unitMass") return meaningOf(direct, null);
  const found = lookUp(text);
  // "Weight (kg/m)" is the mass of a metre
  const inside = BRACKETED.exec(plain)?.[1];
  if (found?.kind === "mass" && inside !== undefined && lookUp(inside)?.kind === "unitMass") {
    return { ...meaningOf(found, null), kind: "unitMass" };
  }
  // "Total (kg)" sums masses, "Total (m)" lengths, "Each (m)" is one bar's
  const measures = unit === null || unit === "in" ? undefined : MEASURES.get(found?.kind ?? "");
  if (measures !== undefined && unit !== null) {
    return { ...SPACING, kind: MASS_UNITS.has(unit) ? measures.mass : measures.length, unit, weak: true };
  }
  if (found !== null) {
    const meaning = meaningOf(found, unit !== null && fits(found.kind, unit) ? unit : null);
    // "Total (varas)": of what in brackets, nobody knows
    const isOpen = found.kind === "total" && unit === null && isTotalAlone(text) && isOther(inside);
    return isOpen ? { ...meaning, weak: true } : meaning;
  }
  return direct === null ? null : meaningOf(direct, null);
}

/** what a count in a unit is */
const MEASURES: ReadonlyMap<string, { readonly mass: ColumnKind; readonly length: ColumnKind }> = new Map([
  ["total", { mass: "mass", length: "totalLength" }],
  ["each", { mass: "pieceMass", length: "length" }],
]);

function isTotalAlone(text: string): boolean {
  return PARTS.get(oneSpelling(text)) === "total";
}

function isOther(inside: string | undefined): boolean {
  if (inside === undefined || !/\p{L}/u.test(inside)) return false;
  return !isWord("count-unit", inside) && headingOfParts(oneSpelling(inside), PARTS)?.kind !== "total";
}

/** Two words for one column, in two languages or as "Type / size": the one kind that they share or make up. */
function recogniseParts(typed: string): HeaderMeaning | null {
  for (const parts of partings(typed)) {
    const known = parts.map(recogniseWhole).filter((one): one is HeaderMeaning => one !== null);
    const meaning = oneOf(known);
    if (meaning === null) continue;
    // "cuts/bar" are of a bar and "No." over "piles" counts no bars: a part of one text names nothing
    // "dimensions E/r" are of a leg or of a radius
    const isLoose = meaning.weak || meaning.kind === "R";
    if (isLoose && known.length < parts.length && isOneText(typed)) continue;
    const unit = meaning.unit ?? splitUnit(plainHeader(typed)).unit;
    return { ...meaning, unit: unit !== null && fits(meaning.kind, unit) ? unit : null };
  }
  return null;
}

/** Parts at a slash, or lines in one writing. */
function isOneText(typed: string): boolean {
  return /\S\/\S/.test(typed) || (typed.includes("\n") && !OTHER_WRITING.test(typed));
}

const OTHER_WRITING = /(?!\p{Script=Latin})\p{L}/u;
/** "Bauteil / Element": one column named in two languages; its stroke is no "per". */
function recogniseTwice(typed: string): HeaderMeaning | null {
  const [one = "", other, more] = typed.split(/\s+[/|]\s+/);
  if (other === undefined || more !== undefined) return null;
  const [first, second] = [one, other].map((part) => recogniseWhole(part) ?? recogniseMadeUp(part));
  if (!first || !second || !NAMES.has(first.kind)) return null;
  const isSame = first.kind === second.kind || (first.kind === "member" && second.kind === "members");
  const unit = first.unit ?? second.unit;
  return isSame ? { ...second, unit, weak: first.weak && second.weak } : null;
}

/** kinds whose words beside a stroke would be read as a count by the other */
const NAMES: ReadonlySet<string> = new Set(["member", "members"]);
const LATIN = /\p{Script=Latin}/u;
const LATIN_WORDS = /[\p{Script=Latin}\p{M}'’.()]+/gu;

function partings(typed: string): string[][] {
  const partings: string[][] = [];
  const split = typed
    .replace(/(?<=[\p{L})]\s)c\/c(?!\p{L})/giu, "")
    .split(/\s*[\n/|&+]\s*|\s+(?:-|and|und|et|y|e)\s+/i)
    .filter((part) => part.trim() !== "");
  if (split.length > 1) partings.push(split);
  const other = typed.replace(LATIN_WORDS, " ").trim();
  const latin = (typed.match(LATIN_WORDS) ?? []).join(" ");
  if (/\p{L}/u.test(other) && LATIN.test(latin)) partings.push([latin, other]);
  // "Diameter, class": the first of the things that one column holds
  const [first = "", another] = typed.split(/[,;]\s+/);
  // but "Dimensions, mm" over letters heads legs
  if (another !== undefined && !LEGS_ALONE.test(plainHeader(first)) && !LETTER_IN_UNIT.test(another))
    partings.push([first]);
  const inside = /^(.+)[([](.+)[)\]]\s*$/s.exec(typed);
  if (inside !== null) partings.push([inside[1] ?? "", inside[2] ?? ""]);
  return partings;
}

/** "Dim., cm A" */
const LETTER_IN_UNIT = /^(?:mm|cm|m|in)\s+[a-k]$/i;

/** A bar's type goes with its size; a word that gives way gives way here too. */
function oneOf(known: readonly HeaderMeaning[]): HeaderMeaning | null {
  const strong = known.filter(({ weak }) => !weak);
  const asked = strong.length > 0 ? strong : known;
  const kinds = new Set(asked.map(({ kind }) => kind));
  if (kinds.size > 1) kinds.delete("grade");
  if (kinds.size > 1) kinds.delete("ignored");
  if (kinds.size !== 1) return null;
  return asked.find(({ kind }) => kinds.has(kind)) ?? null;
}

function meaningOf({ kind, weak, otherwise, serial }: HeaderWords, unit: ColumnUnit | null): HeaderMeaning {
  return { kind, unit, weak: weak ?? false, otherwise: otherwise ?? null, serial: serial ?? false };
}

function lookUp(text: string): HeaderWords | null {
  const known = lookUpWhole(text);
  if (known !== null || !OF_DIAMETER.test(text)) return known;
  const former = lookUpWhole(text.replace(OF_DIAMETER, ""));
  return former?.kind === "former" ? former : null;
}

/** "Dor Ø", "Ø mandrin": the sign is that of the former's diameter */
const OF_DIAMETER = /^ø | ø$/;

function lookUpWhole(text: string): HeaderWords | null {
  const exact = EXACT.get(text);
  if (exact !== undefined) return exact;
  const loose = withoutFillers(text);
  const found = (loose === text ? undefined : (EXACT.get(loose) ?? LOOSE.get(loose))) ?? LOOSE.get(text);
  return found ?? RESPELT.get(oneSpelling(text)) ?? RESPELT.get(oneSpelling(loose)) ?? null;
}

function plainHeader(typed: string, keepsOne = false): string {
  return oneForm(
    cleanText(typed)
      .normalize("NFD")
      .replace(/[\u0300-\u036f]/g, "")
      // Korean and Japanese signs are put together again
      .normalize("NFC")
      .toLowerCase()
      .replace(/ł/g, "l")
      .replace(/ı/g, "i")
      .replace(/\u00f8|\u00d8/g, "ø")
      // measures, which without its sharp s would be a mass
      .replace(/\bmaße\b/g, "abmessungen")
      .replace(/ß/g, "ss")
      .replace(/n\.?\s?[°º]\.?/g, "no ")
      .replace(/\breq'?d\b/g, "reqd")
      .replace(keepsOne ? WASTE_ADDED : DIGITS_OF_WORDS, " ")
      .replace(/nr\.? of /g, "no of ")
      .replace(/['’.,:;_"*†=]/g, " ")
      .replace(/\s*\/\s*/g, "/")
      // "spacing mm c/c"
      .replace(/(?<=[\p{L})]) c\/c(?!\p{L})/gu, "")
      .replace(/(?<=\p{L}{2})-(?=\p{L})/gu, " ")
      .replace(/ - /g, " ")
      .replace(/\s+/g, " ")
      .trim(),
  );
}

const BRACKETED = /[([]\s*([^()[\]]*?)\s*[)\]]/;

function splitUnit(text: string): { text: string; unit: ColumnUnit | null } {
  const bracket = BRACKETED.exec(text);
  if (bracket !== null) {
    const inside = (bracket[1] ?? "").replace(/^in /, "");
    const rest = text.replace(bracket[0], " ").replace(/\s+/g, " ").trim();
    const unit = UNITS.get(inside);
    if (unit !== undefined) return { text: rest, unit };
    if (rest !== "") return { text: rest, unit: null };
    return { text: inside, unit: null };
  }
  const tail = /^(.*?)[\s/]+(?:in\s+)?(ft in|\S+)$/.exec(text);
  if (tail !== null && (tail[1] ?? "") !== "") {
    const unit = UNITS.get(tail[2] ?? "");
    if (unit !== undefined && !EXACT.has(text)) return { text: tail[1] ?? "", unit };
  }
  return { text, unit: null };
}

function withoutFillers(text: string): string {
  return text
    .split(" ")
    .filter((word) => !FILLERS.has(word))
    .join(" ");
}

const MASS_UNITS: ReadonlySet<ColumnUnit> = new Set<ColumnUnit>(["kg", "t", "lb"]);

function fits(kind: ColumnKind | "ignored", unit: ColumnUnit): boolean {
  if (kind === "mass" || kind === "pieceMass") return MASS_UNITS.has(unit);
  if (kind === "unitMass") return false;
  return !MASS_UNITS.has(unit);
}

/** The unit that a header text names, alone or behind its words: "mm", "(kg)", "Dimensions (mm)". */
export function unitInHeader(typed: string): ColumnUnit | null {
  if (typed.length > LONGEST_HEADER) return null;
  const plain = plainHeader(typed);
  return UNITS.get(plain.replace(/[()[\]]/g, "").trim()) ?? splitUnit(plain).unit;
}
