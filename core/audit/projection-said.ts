import { MM_PER_UNIT } from "../units/unit-table";

const SAID =
  /\bproj\w*[^\d]{0,10}?(\d+(?:[.,]\d+)?)\s*(mm|cm|m\b|"|″|in(?:ch(?:es)?)?\b|ft\b|'|′)?(?:\s*-?\s*(\d+(?:\.\d+)?)\s*(?:"|″|in\b))?/;
/** A bare figure of three digits or more is mm. */
const LEAST_BARE = 100;

/** mm that starters stand out of the concrete, in words such as "projects 1500" or "projects 4'-6""; null where none is said. */
export function projectionSaid(words: string): number | null {
  const said = SAID.exec(words);
  if (said === null) return null;
  const [, figure = "", unit, inches] = said;
  const number = Number(figure.replace(",", "."));
  if (unit === undefined) return number >= LEAST_BARE ? number : null;
  return number * MM_PER_UNIT[unitOf(unit)] + Number(inches ?? 0) * MM_PER_UNIT.in;
}

function unitOf(typed: string): keyof typeof MM_PER_UNIT {
  if (typed === "mm" || typed === "cm" || typed === "m") return typed;
  return typed === "'" || typed === "′" || typed === "ft" ? "ft" : "in";
}
