/** The name, or the first of `Totals (2)`, `Totals (3)` that no sheet has; case does not tell sheets apart. */
export function freeSheetName(wanted: string, held: readonly string[]): string {
  const taken = new Set(held.map((name) => name.toLowerCase()));
  let name = wanted;
  for (let number = 2; taken.has(name.toLowerCase()); number += 1) name = `${wanted} (${number})`;
  return name;
}
