/**
 * Labels that differ only in case or in spaces around are one, as they are to a spreadsheet's own sums;
 * the spelling that came first stands for all.
 */
export class FirstSpelling {
  private readonly known = new Map<string, string>();

  of(label: string): string {
    const key = label.trim().toLowerCase();
    const first = this.known.get(key);
    if (first !== undefined) return first;
    this.known.set(key, label.trim());
    return label.trim();
  }
}
