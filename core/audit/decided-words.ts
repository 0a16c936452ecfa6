/** Why, by whom and when something was decided; blank where nobody said. */
export interface DecidedBy {
  readonly reason: string;
  readonly by: string;
  /** YYYY-MM-DD */
  readonly date: string;
}

/**
 * Who decided, when and why, in one line.
 *
 * @example decidedWords({ by: "A. Detailer", date: "2026-03-02", reason: "agreed" }) // by A. Detailer, 2026-03-02: agreed
 */
export function decidedWords({ reason, by, date }: DecidedBy): string {
  const who = by.trim() === "" ? "no name given" : `by ${oneLine(by)}`;
  const when = date.trim() === "" ? "no date given" : oneLine(date);
  return `${who}, ${when}: ${reason.trim() === "" ? "no reason given" : oneLine(reason)}`;
}

function oneLine(text: string): string {
  return text.trim().replace(/\s+/g, " ");
}
