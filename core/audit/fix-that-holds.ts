import { BarFacts } from "../bar/bar-facts";
import { plainBar } from "../schedule/rows/stored-bar";
import { DIMENSION_LETTERS } from "../standards/dimension-letters";
import { carriedAlong } from "./carry-along";
import type { Severity } from "./finding";
import type { ReportedFix, RowReport, RowRule } from "./rule";

type Edit = ReportedFix["edits"][number];

/** What a rule said of a bar. */
export interface SaidOfBar {
  readonly rule: RowRule;
  readonly report: RowReport;
}

const WRONG: ReadonlySet<Severity> = new Set(["unsafe", "unbendable", "off-standard"]);

/**
 * The report with the first of its changes after which no other rule finds the bar wrong where it was not, nor in the
 * figure that is changed; without a change where there is none. `judge` is asked of the bar as it would be.
 */
export function withFixThatHolds(
  one: SaidOfBar,
  facts: BarFacts,
  before: readonly SaidOfBar[],
  judge: (bar: BarFacts) => readonly SaidOfBar[],
): RowReport {
  const { report, rule } = one;
  if (report.fix?.mustHold !== true) return report;
  const known = new Set(before.map(placeOf));
  for (const offer of [report, ...(report.instead ?? [])]) {
    const { edits } = offer.fix ?? report.fix;
    const changed = new Set(edits.map(({ at }) => at));
    const breaks = judge(barAfter(facts, edits)).some(
      (said) =>
        said.rule !== rule &&
        WRONG.has(said.report.severity ?? said.rule.severity) &&
        (changed.has(said.report.at) || !known.has(placeOf(said))),
    );
    if (!breaks) return { ...report, ...offer };
  }
  const { fix: _, ...rest } = report;
  return rest;
}

const placeOf = ({ rule, report }: SaidOfBar): string => `${rule.code} ${report.at}`;

/** The bar as it would be with its row changed, and what follows from the change. */
function barAfter(facts: BarFacts, edits: readonly Edit[]): BarFacts {
  const row = { ...plainBar(facts.row) };
  const dims = [...row.dims];
  for (const { at, to } of [...edits, ...carriedAlong(facts, edits)]) {
    if (typeof to !== "number") continue;
    const place = (DIMENSION_LETTERS as readonly string[]).indexOf(at);
    if (place >= 0) dims[place] = to;
    else if (at === "length" || at === "totalLength" || at === "mass") row[at] = to;
  }
  return new BarFacts({ ...row, dims }, facts.sheet, facts.standard);
}
