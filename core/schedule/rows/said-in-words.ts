/** What a title says of itself without a cell or a colon for each: "Bar schedule S-101 rev B". */
export interface SaidInWords {
  readonly schedule: string | null;
  readonly drawing: string | null;
  readonly revision: string | null;
  /** the text without what was taken from it */
  readonly rest: string;
}

const REFERENCE = String.raw`((?=[^\s]*\d|[A-Z]{1,4}\s\d)[A-Z0-9][\w./-]*(?:\s(?!of\b|to\b|rev\b)[A-Z0-9./-]{1,3}(?=\s|$)){0,2})`;
const REVISION = String.raw`(?:rev(?:ision)?|issue)\b\.?\s*(?:no\b\.?|letter)?\s*([A-Z]\d?|\d{1,2})`;
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
        String.raw`^(?:${words})\b\.?\s*(?:(?:no|nr|number|ref|reference)\b\.?\s*)?${REFERENCE}${WITH_REVISION}`,
        "i",
      ),
    ] as const,
);
const REVISION_ALONE = new RegExp(`^${REVISION}$`, "i");

const LONGEST_TITLE = 200;

/** Schedule, drawing and revision named in the words of a title; null for what it does not name. */
export function saidInWords(text: string): SaidInWords {
  const found: { schedule: string | null; drawing: string | null; revision: string | null } = {
    ...{ schedule: null, drawing: null, revision: null },
  };
  if (text.length > LONGEST_TITLE) return { ...found, rest: text };
  const rest = text.split(/\s*[,;|\n]\s*|\s{2,}|\s[-–]\s/).filter((part) => {
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
    return true;
  });
  return { ...found, rest: rest.length === 0 ? "" : restOf(text, rest) };
}

/** The text as it was typed where nothing was taken from it. */
function restOf(text: string, rest: readonly string[]): string {
  const first = rest[0] ?? "";
  const last = rest.at(-1) ?? "";
  return text.slice(text.indexOf(first), text.lastIndexOf(last) + last.length);
}
