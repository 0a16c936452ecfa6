/** Raised where a file cannot be read or must not be patched: one line with the reason and the remedy. */
export class UnreadableWorkbook extends Error {
  override readonly name = "UnreadableWorkbook";
}
