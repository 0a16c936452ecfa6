import type { ColumnKind, ColumnUnit } from "./bar-row";
import { cleanText } from "./clean-text";
import { HEADER_WORDS, type HeaderWords } from "./header-words.data";

/** What one header text stands for. */
export interface HeaderMeaning {
  readonly kind: ColumnKind | "ignored";
  readonly unit: ColumnUnit | null;
  /** gives way to another word of its kind, and then means `otherwise` */
  readonly weak: boolean;
  readonly otherwise: ColumnKind | null;
}

const UNITS: ReadonlyMap<string, ColumnUnit> = new Map<string, ColumnUnit>([
  ["mm", "mm"],
  ["millimetres", "mm"],
  ["cm", "cm"],
  ["m", "m"],
  ["mtr", "m"],
  ["mtrs", "m"],
  ["metre", "m"],
  ["metres", "m"],
  ["meter", "m"],
  ["meters", "m"],
  ["rmt", "m"],
  ["in", "in"],
  ["inch", "in"],
  ["inches", "in"],
  ["ft", "ft"],
  ["feet", "ft"],
  ["ft in", "ft"],
  ["ft-in", "ft"],
  ["kg", "kg"],
  ["kgs", "kg"],
  ["t", "t"],
  ["mt", "t"],
  ["ton", "t"],
  ["tons", "t"],
  ["tonne", "t"],
  ["tonnes", "t"],
  ["lb", "lb"],
  ["lbs", "lb"],
  ["毫米", "mm"],
  ["米", "m"],
  ["千克", "kg"],
  ["公斤", "kg"],
  ["吨", "t"],
  ["م", "m"],
  ["مم", "mm"],
  ["كجم", "kg"],
]);
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
for (const row of HEADER_WORDS.rows) {
  for (const word of row.words) {
    if (!EXACT.has(word)) EXACT.set(word, row);
    const loose = withoutFillers(word);
    if (loose !== "" && !LOOSE.has(loose)) LOOSE.set(loose, row);
  }
}

/** All known words, for the message where no header was found. */
export const KNOWN_HEADER_WORDS: readonly string[] = [
  "mark",
  "size",
  "no. of members",
  "no. in each",
  "total",
  "length",
  "shape code",
  "A",
  "B",
  "C",
];

/** No known word has a digit, and nearly every mark has one. */
const HOLDS_DIGIT = /\d/;
const remembered = new Map<string, HeaderMeaning | null>();

/**
 * Column kind and unit of a header text in any of the known languages; null where no known word fits.
 *
 * @example recogniseHeader("Cutting Length (m)") // { kind: "length", unit: "m" }
 */
export function recogniseHeader(typed: string): HeaderMeaning | null {
  if (typed.length > 80 || HOLDS_DIGIT.test(typed)) return null;
  const known = remembered.get(typed);
  if (known !== undefined) return known;
  const meaning = recognise(typed);
  if (remembered.size < 4000) remembered.set(typed, meaning);
  return meaning;
}

function recognise(typed: string): HeaderMeaning | null {
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
  // "Total (kg)" sums masses, "Total (m)" lengths
  if (found?.kind === "total" && unit !== null && unit !== "in") {
    return { kind: MASS_UNITS.has(unit) ? "mass" : "totalLength", unit, weak: true, otherwise: null };
  }
  if (found !== null) return meaningOf(found, unit !== null && fits(found.kind, unit) ? unit : null);
  return direct === null ? null : meaningOf(direct, null);
}

function meaningOf({ kind, weak, otherwise }: HeaderWords, unit: ColumnUnit | null): HeaderMeaning {
  return { kind, unit, weak: weak ?? false, otherwise: otherwise ?? null };
}

function lookUp(text: string): HeaderWords | null {
  const exact = EXACT.get(text);
  if (exact !== undefined) return exact;
  const loose = withoutFillers(text);
  return (loose === text ? undefined : (EXACT.get(loose) ?? LOOSE.get(loose))) ?? LOOSE.get(text) ?? null;
}

function plainHeader(typed: string): string {
  return cleanText(typed)
    .normalize("NFD")
    .replace(/[\u0300-\u036f]/g, "")
    .toLowerCase()
    .replace(/\u00f8|\u00d8/g, "ø")
    .replace(/ß/g, "ss")
    .replace(/n[°º]\.?/g, "no ")
    .replace(/nr\.? of /g, "no of ")
    .replace(/['’.,:;_"*†=]/g, " ")
    .replace(/\s*\/\s*/g, "/")
    .replace(/(?<=\p{L}{2})-(?=\p{L})/gu, " ")
    .replace(/ - /g, " ")
    .replace(/\s+/g, " ")
    .trim();
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
  if (kind === "mass") return MASS_UNITS.has(unit);
  if (kind === "unitMass") return false;
  return !MASS_UNITS.has(unit);
}

/** The unit that a header text names, alone or behind its words: "mm", "(kg)", "Dimensions (mm)". */
export function unitInHeader(typed: string): ColumnUnit | null {
  const plain = plainHeader(typed);
  return UNITS.get(plain.replace(/[()[\]]/g, "").trim()) ?? splitUnit(plain).unit;
}
