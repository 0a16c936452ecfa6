import { LIST_WORDS, LONGEST_TEXT, NAMED_BESIDE } from "./documents-named.data";
import { REGISTRY } from "./registry";
import type { StandardTables } from "./shared/standard-tables";

/** A document that words name. */
export interface DocumentNamed {
  readonly id: string;
  /** the words that name it */
  readonly typed: string;
  /** false where they are only the words of lists that go by it */
  readonly isNamed: boolean;
}

/** letters and digits of a name stand apart or together: BS8666, BS 8666, B.S. 8666 */
const APART = "[\\s./:-]{0,3}";
const EDITION = "(?:\\s?[:(-]\\s?((?:19|20)?\\d\\d)|\\s((?:19|20)\\d\\d))?(?![0-9])";

const NAMES = [...new Set(REGISTRY.flatMap(({ names }) => names))]
  .sort((one, other) => other.length - one.length)
  .map((name) => ({
    name,
    pattern: new RegExp(
      `(?<![A-Za-z0-9])${namePattern(name)}${EDITION}`,
      /[A-Z]{5}/.test(name) ? "giu" : "gu",
    ),
  }));

function namePattern(name: string): string {
  return (name.match(/\p{L}+|\d+/gu) ?? [])
    .map((run) => [...run].join(/\p{L}/u.test(run) ? "\\.?" : ""))
    .join(APART);
}

const ANY_NAME = new RegExp(
  `(?<![A-Za-z0-9])(?:${NAMES.map(({ name }) => namePattern(name)).join("|")})${EDITION}`,
  "iu",
);

/** True of a text in which a document held may be named: much cheaper than to say which. */
export function namesDocument(text: string): boolean {
  return text.length <= LONGEST_TEXT && ANY_NAME.test(text);
}

/** Documents held that a text names, with the edition where it says one; editions not held are none. */
export function documentsNamed(text: string): DocumentNamed[] {
  if (text.length > LONGEST_TEXT) return [];
  let rest = text;
  const found: DocumentNamed[] = [];
  for (const { name, pattern } of NAMES) {
    rest = rest.replace(pattern, (typed: string, behind?: string, apart?: string) => {
      const tables = editionOf(name, behind ?? apart ?? null);
      if (tables !== null) found.push({ id: tables.id, typed: typed.trim(), isNamed: true });
      return " ";
    });
  }
  const words = LIST_WORDS.find(({ words }) => words.some((word) => text.toLowerCase().includes(word)));
  if (words !== undefined) found.push({ id: words.id, typed: text.trim(), isNamed: false });
  return found;
}

/** True where a document named beside the one in force contradicts it. */
export function contradicts(named: string, inForce: string): boolean {
  return inForce
    .split("+")
    .every((id) => id !== named && !NAMED_BESIDE.some(([one, other]) => isOf(named, one) && isOf(id, other)));
}

const isOf = (id: string, document: string): boolean => id.split(":")[0] === document;

function editionOf(name: string, year: string | null): StandardTables | null {
  const family = REGISTRY.filter(({ names }) => names.includes(name));
  if (year === null) return family[0] ?? null;
  return family.find(({ id }) => id.endsWith(year)) ?? null;
}
