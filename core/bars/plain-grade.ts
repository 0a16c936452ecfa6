/**
 * A grade's text without what people write differently: capitals, no spaces or signs, no word "grade" and
 * nothing before it. Two texts that come out alike name one grade.
 *
 * @example plainGrade("A615 Gr. 60") // "60"
 */
export function plainGrade(text: string): string {
  return text
    .toUpperCase()
    .replace(/[^\p{L}\p{N}]/gu, "")
    .replace(/^.*?(?:GRADE|GR)(?=\d)/, "");
}
