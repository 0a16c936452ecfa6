import { defineRefusal, isRefusal, type Refusal } from "../units/refusal";
import { combineStandards } from "./combine-standards";
import { withOwn } from "./overlay";
import { NOTHING_OWN, type OwnStandard } from "./own-standard";
import type { Standard } from "./port";
import { DEFAULT_STANDARD, REGISTRY } from "./registry";
import { buildStandard } from "./shared/build-standard";
import { ANSWERS_REMEMBERED } from "./shared/remembered.data";
import type { StandardTables } from "./shared/standard-tables";

const standardUnknown = defineRefusal(
  "standard-unknown",
  "not-held",
  `standard "{typed}" is not held: Barwright holds {held}`,
);
const editionNotHeld = defineRefusal(
  "standard-edition-not-held",
  "not-held",
  `edition "{typed}" is not held: the nearest that is held is {nearest}`,
);
const tooManyParts = defineRefusal(
  "standard-parts",
  "value",
  `standard "{typed}" joins more than two documents: write SHAPES+BARS, such as {example}`,
);

/** Two documents of which one prints shapes and the other bars of its own. */
const EXAMPLE = "BS8666:2005+AS3600:2018";
interface Known {
  readonly built: Map<string, Standard>;
  readonly resolved: Map<string, Standard | Refusal>;
}

/** Standards by what their owner looked up: the same sheet gives the same objects. */
const known = new WeakMap<OwnStandard, Known>();

/**
 * The standard of an id: "BS8666:2005"; "bs 8666" is the newest edition held as sure; blank is the
 * default; "A+B" takes shapes and rounding from A, bars and formers from B. `own` is what the workbook's
 * owner looked up and added. The same id and own always give the same object. Refuses what is not held
 * and names the nearest that is.
 */
export function resolveStandard(id?: string | null, own: OwnStandard = NOTHING_OWN): Standard | Refusal {
  const typed = id ?? "";
  const { resolved } = knownOf(own);
  const answered = resolved.get(typed);
  if (answered !== undefined) return answered;
  if (resolved.size >= ANSWERS_REMEMBERED) resolved.clear();
  const answer = resolve(typed, own);
  resolved.set(typed, answer);
  return answer;
}

function knownOf(own: OwnStandard): Known {
  const answered = known.get(own);
  if (answered !== undefined) return answered;
  const fresh: Known = { built: new Map(), resolved: new Map() };
  known.set(own, fresh);
  return fresh;
}

function resolve(typed: string, own: OwnStandard): Standard | Refusal {
  const parts = typed.split("+").map((part) => part.trim());
  // an amendment, "BS 8666:2005+A1:2008", is the edition itself
  const documents = parts.filter((part, index) => index === 0 || !/^A\d(:\d+)?$/i.test(part));
  const [first = "", second, ...others] = documents;
  if (others.length > 0) return tooManyParts({ typed, example: EXAMPLE });
  const shapes = resolveOne(first, own);
  if (second === undefined || isRefusal(shapes)) return shapes;
  const bars = resolveOne(second, own);
  if (isRefusal(bars) || bars === shapes) return bars;
  return keep(`${shapes.id}+${bars.id}`, own, () => combineStandards(shapes, bars));
}

function resolveOne(typed: string, own: OwnStandard): Standard | Refusal {
  const wanted = plain(typed);
  if (wanted === "") return standardOf(DEFAULT_STANDARD, own);
  const exact = REGISTRY.find((tables) => spellings(tables).includes(wanted));
  if (exact !== undefined) return standardOf(exact, own);
  const named = amongSeveral(typed);
  if (named !== null) return standardOf(named, own);
  const family = REGISTRY.filter((tables) => tables.names.some((name) => isEditionOf(wanted, plain(name))));
  if (family.length > 0) return editionNotHeld({ typed, nearest: nearestEdition(family, wanted).id });
  return standardUnknown({ typed, held: REGISTRY.map((tables) => tables.id).join(", ") });
}

/** "AS 3600 / AS/NZS 4671": the one document held among those named, as lists head their columns. */
function amongSeveral(typed: string): StandardTables | null {
  const parts = typed.split("/").map(plain);
  const held = REGISTRY.filter((tables) => spellings(tables).some((name) => parts.includes(name)));
  const [first, second] = held.filter(
    ({ names }, at) => held.findIndex((one) => one.names[0] === names[0]) === at,
  );
  return parts.length > 1 && first !== undefined && second === undefined ? first : null;
}

function standardOf(tables: StandardTables, own: OwnStandard): Standard {
  return keep(tables.id, own, () => buildStandard(withOwn(tables, own), own));
}

function keep(id: string, own: OwnStandard, make: () => Standard): Standard {
  const { built } = knownOf(own);
  const answered = built.get(id);
  if (answered !== undefined) return answered;
  const standard = make();
  built.set(id, standard);
  return standard;
}

/** Its id, and each name alone, with the year or with the year's last two digits. */
function spellings({ id, names }: StandardTables): string[] {
  const year = editionOf(id);
  return [
    plain(id),
    ...names.flatMap((name) => [plain(name), plain(name + year), plain(name + year.slice(-2))]),
  ];
}

function isEditionOf(wanted: string, name: string): boolean {
  return wanted.startsWith(name) && /^(\d\d|\d{4})$/.test(wanted.slice(name.length));
}

function nearestEdition(family: readonly StandardTables[], wanted: string): StandardTables {
  const distance = (tables: StandardTables) =>
    Math.min(...yearsOf(wanted).map((year) => Math.abs(Number(editionOf(tables.id)) - year)));
  return family.reduce((best, tables) => (distance(tables) < distance(best) ? tables : best));
}

/** The year that an id ends in; two digits may be of either century. */
function yearsOf(wanted: string): number[] {
  const four = /(?:19|20)\d\d$/.exec(wanted);
  return four === null
    ? ["19", "20"].map((century) => Number(century + wanted.slice(-2)))
    : [Number(four[0])];
}

function editionOf(id: string): string {
  return id.split(":")[1] ?? "";
}

function plain(name: string): string {
  return name.toUpperCase().replace(/[^A-Z0-9]/g, "");
}
