/** What a title says of itself without a cell or a colon for each: "Bar schedule S-101 rev B". */
export interface SaidInWords {
  readonly schedule: string | null;
  readonly drawing: string | null;
  readonly revision: string | null;
  /** the text without what was taken from it */
  readonly rest: string;
}

const REFERENCE = String.raw`((?=[^\s]*\d|[A-Z]{1,4}\s\d)[A-Z0-9][\w./-]*(?:\s(?!of\b|to\b|rev\b)[A-Z0-9./-]{1,3}(?=\s|$)){0,2})`;
const REVISION = String.raw`(?:rev(?:ision)?|issue)\b[.:]?\s*(?:no\b\.?|letter)?\s*([A-Z]\d?|\d{1,2})`;
const KINDS = {
  schedule: String.raw`(?:bar\s+)?(?:bending\s+)?schedule|bbs`,
  drawing: "drawing|dwg",
} as const;
const WITH_REVISION = String.raw`(?:\s*[(,-]?\s*${REVISION}\)?)?$`;
const SAID = Object.entries(KINDS).map(
  ([kind, words]) =>
    [
      kind as keyof typeof KINDS,
      new RegExp(
        String.raw`^(?:${words})\b[.:]?\s*(?:(?:no|nr|number|ref|reference)\b[.:]?\s*)?${REFERENCE}${WITH_REVISION}`,
        "i",
      ),
    ] as const,
);
/** "BS-101 revision A": a reference that has a revision is the schedule's, where nothing else is named so. */
const REVISED = new RegExp(
  String.raw`^(?!(?:page|sheet|part|lot|pour|zone|area|job)\b)${REFERENCE}\s*[(,-]?\s*${REVISION}\)?$`,
  "i",
);
const REVISION_ALONE = new RegExp(`^${REVISION}$`, "i");

const LONGEST_TITLE = 200;

/** Schedule, drawing and revision named in the words of a title; null for what it does not name. */
export function saidInWords(text: string): SaidInWords {
  const found: { schedule: string | null; drawing: string | null; revision: string | null } = {
    ...{ schedule: null, drawing: null, revision: null },
  };
  if (text.length > LONGEST_TITLE) return { ...found, rest: text };
  const parts = text.split(/\s*[,;|\n]\s*|\s{2,}|\s[-–]\s/);
  // a label of a cell of its own
  if (parts.length === 1 && /^[^:]+:/.test(text)) return { ...found, rest: text };
  const rest = parts.filter((part) => {
    const revision = REVISION_ALONE.exec(part)?.[1] ?? null;
    if (revision !== null) {
      found.revision ??= revision;
      return false;
    }
    for (const [kind, said] of SAID) {
      const named = said.exec(part);
      if (named === null) continue;
      found[kind] ??= named[1] ?? null;
      found.revision ??= named[2] ?? null;
      return false;
    }
    const revised = REVISED.exec(part);
    if (revised === null) return true;
    found.schedule ??= revised[1] ?? null;
    found.revision ??= revised[2] ?? null;
    return false;
  });
  return { ...found, rest: restOf(text, parts, rest) };
}

/** The text as it was typed, up to what was taken from it: what follows a schedule or a revision is no part of a name before it. */
function restOf(text: string, parts: readonly string[], rest: readonly string[]): string {
  const first = rest[0];
  if (first === undefined) return "";
  const from = parts.indexOf(first);
  const taken = parts.findIndex((part, at) => at > from && !rest.includes(part));
  const last = parts[taken < 0 ? parts.length - 1 : taken - 1] ?? first;
  const start = text.indexOf(first);
  return text.slice(start, text.indexOf(last, start) + last.length);
}
