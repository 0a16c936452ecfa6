import { RULES } from "../../core/audit/rules/index";
import { PATTERNS } from "../../tests/core/schedule/patterns/patterns";
import { CORPUS } from "../../tests/corpus/corpus";
import { type KindResult, measureAuditQuality } from "../../tests/corpus/mutations/audit-quality";
import { UNHELD_MISTAKES } from "../../tests/corpus/mutations/unheld-mistakes";

const JUDGED_BY = { cell: "rule and cell", row: "rule and row", sheet: "rule and sheet" } as const;

/** The page of what the audit finds and what it says without cause, from the run that the tests hold. */
export async function generate(): Promise<Map<string, string>> {
  const { kinds, cleanRows, cleanAlarms, besideRows, besideAlarms } = measureAuditQuality();
  const found = kinds.filter((kind) => kind.found > 0);
  const always = kinds.filter(({ planted, found: hits }) => planted > 0 && hits === planted);
  const mistakes = kinds.length + UNHELD_MISTAKES.length;
  const lines = [
    "# What the audit finds, and what it says without cause",
    "",
    "Measured on schedules of our own making, by fixed seeds; `npm run bench audit-quality` prints the same figures,",
    "and a test holds them. The schedules and the mistakes put into them import nothing of the audit, and lengths in them",
    "come from formulas typed anew or from a line walked along the bar. Planted mistakes are ours: they show that a rule",
    "speaks at its limit, not how often a yard's own mistakes are of these kinds.",
    "",
    "| figure | value |",
    "| --- | --- |",
    row(["kinds of mistake that detailers make", String(mistakes)]),
    row(["of them found", String(found.length)]),
    row(["of them found in every planting", String(always.length)]),
    row(["of them that no sheet can show", String(UNHELD_MISTAKES.length)]),
    row(["bar rows in clean schedules", String(cleanRows)]),
    row(["false alarms per 1,000 clean rows", perThousand(cleanAlarms.length, cleanRows)]),
    row(["rows beside a planted mistake", String(besideRows)]),
    row(["false alarms per 1,000 of those", perThousand(besideAlarms.length, besideRows)]),
    row([
      "untidy patterns that are read",
      `${PATTERNS.length} of ${PATTERNS.length}: [how a schedule is read](reading.md)`,
    ]),
    "",
    "A false alarm is a finding above a note. Notes of a sheet say what it does not hold; a note counts as no alarm.",
    "Rows beside a mistake that alters every row (a yard's machines, one factor on all masses) are not counted.",
    "",
    `## ${mistakes} mistakes`,
    "",
    "A hit needs the rule that is for the mistake, and its cell; where the rule speaks of the row or the sheet as a whole,",
    "the row or the sheet. About a third of the plantings are the smallest that the limit admits.",
    "",
    "| # | mistake | rules | a hit needs | smallest planted | found | recall |",
    "| --- | --- | --- | --- | --- | --- | --- |",
    ...mistakeRows(kinds),
    "",
    "Not found, and what a sheet lacks for it:",
    "",
    ...UNHELD_MISTAKES.map(({ number, name, lacks }) => `- ${number}, ${name}: ${lacks}.`),
    "",
    "Mistakes 6, 7 and 8 show only where a [Shop sheet](rules/README.md) names the yard's bender, and 47 only where the",
    "workbook sets the opening. Those of the designer (16, 50, 52, 53 among them) are worded as a question to the designer.",
    "",
    "## The schedules",
    "",
    `${CORPUS.length} schedules, ${rowsOf(CORPUS)} bar rows, of invented jobs and members; untidy ones hold mistakes whose`,
    "findings were reviewed and are kept beside the tests.",
    "",
    "| practice | clean: schedules, rows | untidy: schedules, rows | standards |",
    "| --- | --- | --- | --- |",
    ...practiceRows(),
    "",
  ];
  return new Map([["audit-quality.md", lines.join("\n")]]);
}

function mistakeRows(kinds: readonly KindResult[]): string[] {
  return kinds.map(({ mistake, planted, found }) => {
    const rules = mistake.rules.map((code) => linkTo(code)).join(", ");
    const recall = planted === 0 ? "" : (found / planted).toFixed(2);
    const cells = [
      String(mistake.number),
      mistake.name,
      rules,
      JUDGED_BY[mistake.judgedBy],
      mistake.smallest,
    ];
    return row([...cells, `${found} of ${planted}`, recall]);
  });
}

function practiceRows(): string[] {
  const practices = [...new Set(CORPUS.map(({ practice }) => practice))];
  return practices.map((practice) => {
    const own = CORPUS.filter((schedule) => schedule.practice === practice);
    const clean = own.filter(({ isClean }) => isClean);
    const untidy = own.filter(({ isClean }) => !isClean);
    const standards = [...new Set(own.map(({ standard }) => standard))].join(", ");
    return row([
      practice,
      `${clean.length}, ${rowsOf(clean)}`,
      `${untidy.length}, ${rowsOf(untidy)}`,
      standards,
    ]);
  });
}

function linkTo(code: string): string {
  const rule = RULES.find((one) => one.code === code);
  if (rule === undefined) throw new Error(`no rule ${code}`);
  return `[${code}](rules/${rule.name}.md)`;
}

function rowsOf(schedules: typeof CORPUS): number {
  return schedules.reduce((sum, { bars }) => sum + bars.length, 0);
}

function perThousand(alarms: number, rows: number): string {
  return ((1000 * alarms) / rows).toFixed(2);
}

function row(cells: readonly string[]): string {
  return `| ${cells.map((cell) => cell.replaceAll("|", "\\|")).join(" | ")} |`;
}
