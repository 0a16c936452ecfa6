/**
 * Labels that differ only in case or in spaces around are one, as they are to a spreadsheet's own sums;
 * the spelling that came first stands for all.
 */
export class FirstSpelling {
  private readonly known = new Map<string, string>();

  of(label: string): string {
    // most come as they came before
    const same = this.known.get(label);
    if (same !== undefined) return same;
    const key = label.trim().toLowerCase();
    const first = this.known.get(key) ?? label.trim();
    this.known.set(key, first);
    this.known.set(label, first);
    return first;
  }
}
