/**
 * True where `a` is a later revision than `b`: none, "-" or 0 come first, then numbers and letters in order;
 * C1 follows P5. A letter and a number are two ways of counting, of which nobody can say which is later.
 */
export function isLaterRevision(a: string | null, b: string | null): boolean {
  const one = rank(a);
  const other = rank(b);
  if (one.stage > 0 && other.stage > 0 && one.counts !== other.counts) return false;
  if (one.stage !== other.stage) return one.stage > other.stage;
  if (one.letters.length !== other.letters.length) return one.letters.length > other.letters.length;
  if (one.letters !== other.letters) return one.letters > other.letters;
  return one.number > other.number;
}

interface Rank {
  /** 0 before the first revision, 2 for construction, else 1 */
  readonly stage: number;
  readonly counts: "" | "letters" | "numbers" | "stages";
  readonly letters: string;
  readonly number: number;
}

const FIRST: Rank = { stage: 0, counts: "", letters: "", number: 0 };

function rank(revision: string | null): Rank {
  const text = (revision ?? "")
    .trim()
    .toUpperCase()
    .replace(/^REV\.?\s*/, "");
  if (text === "" || text === "-" || text === "0" || text === "00") return FIRST;
  const parts = /^([A-Z]*)\s*(\d*)$/.exec(text);
  if (parts === null) return FIRST;
  const [, letters = "", digits = ""] = parts;
  const number = digits === "" ? 0 : Number(digits);
  // P is preliminary and C for construction, where a number follows
  if ((letters === "P" || letters === "C") && digits !== "") {
    return { stage: letters === "P" ? 1 : 2, counts: "stages", letters: "", number };
  }
  return { stage: 1, counts: letters === "" ? "numbers" : "letters", letters, number };
}
