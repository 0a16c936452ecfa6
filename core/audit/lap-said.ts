import type { BarFacts } from "../bar/bar-facts";
import { MM_PER_UNIT } from "../units/unit-table";

/** A lap that the words of a row name: in mm, or in diameters of the bar. */
interface LapInWords {
  readonly number: number;
  readonly unit: "mm" | "d" | "in" | "ft" | "m";
}

const LAP_WORDS =
  "laps?|lapped|lap length|splices?|spliced|overlaps?|recouvr\\p{L}*|traslapes?|empalmes?|solapes?|solape|emendas?|traspasses?|transpasses?|übergreif\\p{L}*|uebergreif\\p{L}*|stoß|stoss|zakład|zaklad|bindirme|sovrapposizione|přesah\\p{L}*|нахл[её]ст\\p{L}*|搭接(?:长度)?|重ね継手|重ね|継手";
const SAID = new RegExp(
  `(?:^|[^\\p{L}])(?:${LAP_WORDS})(?:\\s*(?:length|de|di|von|boyu))?\\s*(?:=|:|of)?\\s*(\\d+(?:[.,]\\d+)?)\\s*(mm|dia\\b|db\\b|d\\b|ø|"|″|in\\b|'|′|ft\\b|m\\b)?`,
  "u",
);
const NO_LAP = /\b(?:no|without)\s+(?:laps?|splices?)\b|\bweld|\bcoupl|\bside lap/;

/** mm: the lap that the row's own words name; null where they name none, or a weld or coupler takes its place. */
export function lapSaid(facts: BarFacts): number | null {
  const said = facts.inWords(lapInWords);
  if (said === null) return null;
  if (said.unit !== "d") return said.number * MM_PER_UNIT[said.unit];
  return facts.diameter === null ? null : said.number * facts.diameter;
}

function lapInWords(words: string): LapInWords | null {
  const said = NO_LAP.test(words) ? null : SAID.exec(words);
  if (said === null) return null;
  const number = Number((said[1] ?? "").replace(",", "."));
  if (said[2] !== undefined) return { number, unit: unitOf(said[2]) };
  // a bare small figure is metres where it has a fraction; else it may be diameters, and nothing is known
  if (number < LEAST_IN_MM) return number % 1 === 0 ? null : { number, unit: "m" };
  return { number, unit: "mm" };
}

/** mm */
const LEAST_IN_MM = 100;

function unitOf(typed: string): LapInWords["unit"] {
  if (typed === "mm") return "mm";
  if (typed === '"' || typed === "″" || typed === "in") return "in";
  if (typed === "'" || typed === "′" || typed === "ft") return "ft";
  return typed === "m" ? "m" : "d";
}

/** True where the words speak of a lap at all, or the length was typed with one. */
export function isLapped(facts: BarFacts): boolean {
  return Boolean(facts.row.lap) || facts.inWords(lapInWords) !== null || facts.inWords(namesLap);
}

const NAMED = new RegExp(`(?:^|[^\\p{L}])(?:${LAP_WORDS})(?![\\p{L}])`, "u");

function namesLap(words: string): boolean {
  return NAMED.test(words) && !NO_LAP.test(words);
}
