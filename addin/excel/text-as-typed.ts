const MONTH = /^(jan|feb|mar|apr|may|june?|july?|aug|sept?|oct|nov|dec)/i;

/**
 * True where Excel would make something else of a text written to a General cell: `01` a number, `1E2`
 * a hundred, `1-2` a date, `MAR1` the first of March, `=...` a formula. Errs on the side of true.
 */
export function changesWhenTyped(text: string): boolean {
  if (text === "") return false;
  const startsPlainly = /^[A-Za-z]/.test(text);
  return !startsPlainly || MONTH.test(text) || /^(true|false)$/i.test(text.trim());
}
