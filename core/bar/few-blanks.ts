/**
 * A text without long runs of blanks: two adjacent groups that eat blanks would try each way to share one.
 *
 * @example fewBlanks("beam      300x600") // "beam  300x600"
 */
export function fewBlanks(text: string): string {
  return text.includes("   ") ? text.replace(/ {3,}/g, "  ") : text;
}
