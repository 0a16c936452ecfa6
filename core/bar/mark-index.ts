/** One thing for each member and mark; the first kept stays, unless it is put in place of another. */
export class MarkIndex<Kept> {
  readonly #byMember = new Map<string | null, Map<string, Kept>>();
  #lastMember: string | null = null;
  #last: Map<string, Kept> | undefined;

  get(member: string | null, mark: string): Kept | undefined {
    return this.#ofMember(member)?.get(mark);
  }

  /** The first thing kept under this member and mark: the given one where there was none. */
  keep(member: string | null, mark: string, kept: Kept): Kept {
    let byMark = this.#ofMember(member);
    if (byMark === undefined) {
      byMark = new Map();
      this.#byMember.set(member, byMark);
    }
    const first = byMark.get(mark);
    if (first !== undefined) return first;
    byMark.set(mark, kept);
    return kept;
  }

  replace(member: string | null, mark: string, kept: Kept): void {
    this.#ofMember(member)?.set(mark, kept);
  }

  /** The bars of a member mostly follow one another. */
  #ofMember(member: string | null): Map<string, Kept> | undefined {
    if (this.#last === undefined || member !== this.#lastMember) {
      this.#last = this.#byMember.get(member);
      this.#lastMember = member;
    }
    return this.#last;
  }
}
