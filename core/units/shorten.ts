/** The text, cut at `most` characters with a sign that it goes on; never half of a pair of surrogates. */
export function shorten(text: string, most: number): string {
  if (text.length <= most) return text;
  const last = text.charCodeAt(most - 2);
  const end = last >= 0xd800 && last <= 0xdbff ? most - 2 : most - 1;
  return `${text.slice(0, end)}…`;
}
