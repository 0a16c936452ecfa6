import { WEIGH } from "./evidence.data";
import { type Agreement, readingAgreement } from "./reading-agreement";
import type { ColumnDecision, Weighing } from "./weighed";
import type { EvidenceRole, WordReading, Words } from "./word-reading";

/** The words' reading with amounts taken as those of one member, and what is to be said of them. */
export interface AmountsOfMember {
  readonly words: Words;
  readonly agreement: readonly Agreement[];
  readonly decisions: readonly ColumnDecision[];
}

/**
 * Where the header counts members and the bars of each, and every mass or total length of the rows is that of one
 * member's bars, the amounts are one member's: the words count the bars, and arithmetic leaves no member out. Null
 * elsewhere.
 */
export function amountsOfMember({
  columns,
  tables,
  rows,
  words,
  agreement,
}: Weighing): AmountsOfMember | null {
  const { wordsKeep, confirms } = WEIGH.value;
  const named = [...words.values()];
  const members = named.find(({ role }) => role === "members");
  if (!countsMembers(words) || named.some(({ by }) => by === "user")) return null;
  const ofWords = agreement.filter(isOfAmount);
  if (
    ofWords.length === 0 ||
    named.some(({ role }) => role === "bySize") ||
    ofWords.some(({ share }) => share > wordsKeep)
  )
    return null;
  const tried = readingAgreement(
    columns,
    named.filter((word) => word !== members),
    tables,
    rows,
  );
  const ofOne = tried.filter(isOfAmount);
  if (ofOne.length < ofWords.length || ofOne.some(({ share, byHeading }) => byHeading || share < confirms))
    return null;
  const amounts = named.filter(({ role }) => AMOUNTS.has(role));
  const decisions = amounts.map((word): ColumnDecision => {
    const share = (all: readonly Agreement[]) => all.find(({ identity }) => identity === word.role) ?? null;
    return {
      column: word.column,
      about: "role",
      byWords: word,
      byArithmetic: { column: word.column, role: "ofMember", unit: null },
      grade: "proof",
      verdict: "arithmetic",
      how: "fills",
      words: share(ofWords),
      arithmetic: share(ofOne),
    };
  });
  const others = new Map<number, WordReading>(words);
  for (const word of amounts) others.set(word.column, { ...word, role: "other", unit: null });
  return { words: others, agreement: tried, decisions };
}

/** The header counts members and the bars in each, and no column all of them. */
export function countsMembers(words: Words): boolean {
  const roles = new Set([...words.values()].map(({ role }) => role));
  return roles.has("members") && roles.has("each") && !roles.has("total");
}

const AMOUNTS: ReadonlySet<EvidenceRole> = new Set<EvidenceRole>(["mass", "totalLength"]);

function isOfAmount({ identity, bars }: Agreement): boolean {
  return AMOUNTS.has(identity as EvidenceRole) && bars >= WEIGH.value.leastBars;
}
