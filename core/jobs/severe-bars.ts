import { type Finding, rowsBehind } from "../audit/finding";
import { severityWords } from "../audit/finding-words";
import { asksOf, holdsOf, isOfTotals, isSevere, whysInWords } from "../audit/holds";
import { shortened } from "../schedule/cells/longest-text";
import { counted } from "../units/counted";

type Judged = Pick<
  Finding,
  "name" | "severity" | "outcome" | "sheet" | "row" | "rows" | "message" | "behind" | "also"
>;

/** A bar that sums and comparisons hold like any other, though somebody has to clear it or be asked first. */
export interface SevereBar {
  readonly sheet: string;
  readonly row: number;
  readonly mark: string | null;
  readonly size: string;
  readonly why: string;
}

/** What of the bars is not to be passed on without a word. */
export interface SevereBars {
  /** not to be made until somebody clears them */
  readonly notToMake: readonly SevereBar[];
  /** perhaps unsafe or unbendable: to be asked about before they are made */
  readonly toAsk: readonly SevereBar[];
  /** what holds for every bar of a sheet */
  readonly ofSheets: readonly string[];
}

/** Told where a bar is left out, by its own words. */
const LEFT_OUT = "superseded-revision";

/** Sorts out of findings row by row which of these bars are not to be made, and which are to be asked about. */
export function severeBars(findings: readonly Judged[], bars: readonly Omit<SevereBar, "why">[]): SevereBars {
  const told = findings.filter(({ name }) => name !== LEFT_OUT);
  const holds = holdsOf(told);
  const asks = asksOf(told);
  const notToMake: SevereBar[] = [];
  const toAsk: SevereBar[] = [];
  for (const { sheet, row, mark, size } of bars) {
    const held = whysInWords(holds(sheet, row));
    const asked = whysInWords(asks(sheet, row));
    if (held !== undefined) notToMake.push({ sheet, row, mark, size, why: held });
    else if (asked !== undefined) toAsk.push({ sheet, row, mark, size, why: asked });
  }
  return { notToMake, toAsk, ofSheets: wholeSheetWords(findings) };
}

/** What is unsafe, or perhaps, for all bars of a sheet, or may count them twice: no paper of its bars has a row for it. */
export function wholeSheetWords(findings: readonly Judged[]): string[] {
  return findings
    .filter((finding) => rowsBehind(finding).length === 0 && (isSevere(finding) || isOfTotals(finding)))
    .map((finding) =>
      isOfTotals(finding)
        ? `${severityWords(finding)}, ${finding.sheet}: ${finding.message}`
        : `${severityWords(finding)}, for every bar of ${finding.sheet}: ${finding.message}`,
    );
}

/** The same in a sentence each, for whoever reads sums or changes alone. */
export function severeWords({ notToMake, toAsk, ofSheets }: SevereBars, namesSheet: boolean): string[] {
  return [
    ...listed("not to be made until cleared", notToMake, namesSheet),
    ...listed("to be asked about before they are made", toAsk, namesSheet),
    ...ofSheets,
  ];
}

const MOST_ROWS = 12;
const MOST_REASONS = 8;

/** Reason by reason, each with its rows. */
function listed(what: string, bars: readonly SevereBar[], namesSheet: boolean): string[] {
  if (bars.length === 0) return [];
  const byWhy = new Map<string, string[]>();
  for (const { sheet, row, mark, size, why } of bars) {
    const named = mark === null ? shortened(size) : `${shortened(mark)} ${shortened(size)}`;
    const bar = `${namesSheet ? `${sheet} ` : ""}row ${row}, ${named}`;
    const known = byWhy.get(why);
    if (known === undefined) byWhy.set(why, [bar]);
    else known.push(bar);
  }
  const told = [...byWhy].slice(0, MOST_REASONS).map(([why, rows]) => {
    const more = rows.length > MOST_ROWS ? ` and ${rows.length - MOST_ROWS} more` : "";
    return `${rows.slice(0, MOST_ROWS).join("; ")}${more}: ${why}`;
  });
  const rest = [...byWhy.values()].slice(MOST_REASONS).reduce((sum, rows) => sum + rows.length, 0);
  const others = rest === 0 ? [] : [`${what}, for other reasons: ${counted(rest, "bar row")}`];
  return [...told.map((words) => `${what}: ${words}`), ...others];
}
