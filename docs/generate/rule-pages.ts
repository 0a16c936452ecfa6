import { exampleColumns, HEADERS } from "../../core/audit/example-sheet";
import type { Example, ExampleRow, Rule } from "../../core/audit/rule";
import { typedText } from "../../core/audit/typed-text";
import type { Cell } from "../../core/schedule/sheet";
import { hasShopName } from "../../core/shop/has-shop-name";
import { citationText } from "../../core/standards/index";
import { findingsOfExample } from "./example-findings";
import { measuredRows } from "./measured-pages";
import { ruleFiles } from "./rule-index";

const SEVERITY_WORDS: Readonly<Record<string, string>> = {
  unsafe:
    "a person may be hurt, the bar may crack or fail, or a member may be left without its designed steel",
  unbendable: "it cannot be made as scheduled",
  "off-standard": "the standard would refuse it, or the schedule contradicts itself",
  doubtful: "probably a slip",
  note: "context",
};

/** A page for each audit rule and one that lists them all; what the examples say is what the rule says. */
export async function generate(): Promise<Map<string, string>> {
  const rules = await ruleFiles();
  const pages = new Map<string, string>();
  pages.set("rules/README.md", listPage(rules.map(({ rule }) => rule)));
  for (const { file, rule } of rules) pages.set(`rules/${file}.md`, rulePage(rule));
  return pages;
}

function listPage(rules: readonly Rule[]): string {
  const severities = Object.entries(SEVERITY_WORDS).map(([name, words]) => `- \`${name}\`: ${words}.`);
  const rows = rules.map(
    ({ code, name, severity, docs }) => `| ${code} | [${name}](${name}.md) | ${severity} | ${docs.summary} |`,
  );
  return [
    "# Audit rules",
    "",
    "Generated from `core/audit/rules`. Each rule judges what a sheet can show; what it cannot judge it calls `unsure`.",
    "No rule replaces the machine's plate and manual, local codes, or the designer.",
    "",
    ...severities,
    "",
    `${rules.length} rules:`,
    "",
    "| code | rule | severity | what it finds |",
    "| --- | --- | --- | --- |",
    ...rows,
    "",
    "Lengths that were measured are held against the schedule as well:",
    "",
    "| code | finding | severity | what it finds |",
    "| --- | --- | --- | --- |",
    ...measuredRows(),
    "",
  ].join("\n");
}

function rulePage(rule: Rule): string {
  const { code, name, severity, docs, messages, fixes } = rule;
  const lines = [
    `# ${name}`,
    "",
    `${code}, \`${severity}\`. ${docs.summary}`,
    "",
    docs.why,
    "",
    "## What it says",
    "",
    ...Object.values(messages).map((message) => `- ${message}`),
    "",
  ];
  const labels = Object.values(fixes ?? {});
  if (labels.length > 0) {
    lines.push("## Fixes", "");
    lines.push(...labels.map(({ label, safety }) => `- ${label} (${safety})`), "");
  }
  if (docs.failing.length > 0) {
    lines.push("## Speaks", "");
    for (const example of docs.failing) lines.push(...exampleLines(rule, example));
  }
  if (docs.passing.length > 0) {
    lines.push("## Silent", "");
    for (const example of docs.passing) lines.push(...exampleLines(rule, example));
  }
  return `${lines.join("\n").trimEnd()}\n`;
}

function exampleLines(rule: Rule, example: Example): string[] {
  const lines: string[] = [];
  const limits = Object.entries(example.limits ?? {}).map(([limit, value]) => `${limit} ${value}`);
  if (limits.length > 0) lines.push(`With the workbook's limits: ${limits.join(", ")}.`, "");
  const sheets = Object.entries(example.sheets ?? { "": example.rows ?? [] });
  for (const [sheet, rows] of sheets) {
    if (sheet !== "") lines.push(`Sheet ${sheet}:`, "");
    lines.push(...table([...rows, ...(example.foot ?? [])]), "");
  }
  if (example.shop !== undefined) lines.push("Sheet Shop:", "", ...plainTable(example.shop), "");
  for (const { cell, sheet, message, cite } of findingsOfExample(rule, example)) {
    const source = cite === null ? "" : ` (${citationText(cite)})`;
    const place = hasShopName(sheet) ? `Shop ${cell ?? "sheet"}` : (cell ?? "sheet");
    lines.push(`> ${place}: ${message}${source}`, "");
  }
  return lines;
}

/** Rows as they stand on the sheet, the first as the head. */
function plainTable(rows: readonly (readonly Cell[])[]): string[] {
  const width = Math.max(...rows.map(({ length }) => length));
  const line = (row: readonly Cell[]): string =>
    `| ${Array.from({ length: width }, (_, column) => typedText(row[column] ?? null)).join(" | ")} |`;
  const [head = [], ...rest] = rows;
  return [line(head), `| ${Array.from({ length: width }, () => "---").join(" | ")} |`, ...rest.map(line)];
}

function table(rows: readonly ExampleRow[]): string[] {
  const given = new Set(rows.flatMap((row) => Object.keys(row)));
  const columns = exampleColumns(rows).filter((column) => given.has(column));
  const head = `| ${columns.map((column) => HEADERS[column]).join(" | ")} |`;
  const rule = `| ${columns.map(() => "---").join(" | ")} |`;
  return [
    head,
    rule,
    ...rows.map((row) => `| ${columns.map((column) => typedText(row[column] ?? null)).join(" | ")} |`),
  ];
}
