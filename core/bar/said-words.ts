import { fewBlanks } from "./few-blanks";

/** What the words round a bar say. Many bars share them, so each question is answered once for all. */
export class SaidWords {
  #answers: Map<(words: string) => unknown, unknown> | undefined;

  /** in lower case, without long gaps */
  constructor(readonly text: string) {}

  /** The answer of `read` to these words; `read` is one function that is made once, and depends on them alone. */
  ask<Answer>(read: (words: string) => Answer): Answer {
    this.#answers ??= new Map();
    let answer = this.#answers.get(read) as Answer | undefined;
    if (answer === undefined) {
      answer = read(this.text);
      this.#answers.set(read, answer);
    }
    return answer;
  }
}

const MOST_KEPT = 10_000;

/** The words of a sheet's bars, one object for each member and remark that differ. */
export class WordsOfBars {
  readonly #kept = new Map<string | null, Map<string | null, SaidWords>>();
  #count = 0;
  #lastMember: string | null = null;
  #last: Map<string | null, SaidWords> | undefined;

  of(member: string | null, remark: string | null): SaidWords {
    const byRemark = this.#ofMember(member);
    let words = byRemark.get(remark);
    if (words === undefined) {
      const said = remark === null ? (member ?? "") : `${member ?? ""} ${remark}`;
      words = new SaidWords(fewBlanks(said).toLowerCase());
      byRemark.set(remark, words);
      this.#count += 1;
      if (this.#count >= MOST_KEPT) {
        this.#kept.clear();
        this.#count = 0;
        this.#last = undefined;
      }
    }
    return words;
  }

  /** The bars of a member mostly follow one another. */
  #ofMember(member: string | null): Map<string | null, SaidWords> {
    if (this.#last !== undefined && member === this.#lastMember) return this.#last;
    let byRemark = this.#kept.get(member);
    if (byRemark === undefined) {
      byRemark = new Map();
      this.#kept.set(member, byRemark);
    }
    this.#lastMember = member;
    this.#last = byRemark;
    return byRemark;
  }
}

/** Whether the words hold a pattern, as a question for `SaidWords`. */
export function saying(pattern: RegExp): (words: string) => boolean {
  return (words) => pattern.test(words);
}
