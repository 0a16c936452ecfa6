import { LANGUAGES } from "../../core/schedule/header/all-languages";
import { HEADER_WORD_ROWS } from "../../core/schedule/header/header-word-rows";
import { PATTERNS } from "../../tests/core/schedule/patterns/patterns";
import { FIRST_RUNS } from "../../tests/corpus/unseen/first-runs.data";

/** Pictured by `npx tsx docs/generate/screenshots.ts`. */
const PICTURED = [
  {
    name: "uk-tank-untidy",
    words: "A tank in the UK form, with repeated headers, gaps and numbers typed as text",
  },
  {
    name: "de-unterzug-untidy",
    words: "A German beam list in metres, its shapes written as paths, to DIN-EC2:2013",
  },
];

/** The page of what the reader takes untidy schedules for, from the list that its tests run. */
export async function generate(): Promise<Map<string, string>> {
  const lines = [
    "# How a schedule is read",
    "",
    "Every row of the used range is a bar, a heading, a total, a note, blank, or unread with a reason. A cell that",
    "cannot be read is said with its address and never taken as 0. A guess is shown beside the typed cell; one that",
    "would move steel by more than 1 % or change a shape is asked first, and its value is not used until confirmed.",
    "",
    "Generated from the cases that the tests run: `npm run generate`.",
    "",
    "`check --json` says under `reading`, sheet by sheet, what was made of it: `columns` (what each was taken for,",
    "its unit, by what that was decided, and how many rows agree), `held` (null, or why its totals are held back),",
    "and `unread`: the filled columns whose heading no known word fits, so that nothing was read of them, each as",
    "`column` (its letters), `header` and `filled` (how many bars it stands beside). Nothing of those is in any",
    "finding or total; an empty list says that no such column is there.",
    "",
    `## ${PATTERNS.length} ways in which schedules are untidy`,
    "",
    "| # | what | seen | read as | trust |",
    "| --- | --- | --- | --- | --- |",
    ...PATTERNS.map(({ number, name, seen, reads, trust }) =>
      row([String(number), name, seen, reads, trust]),
    ),
    "",
    "## Two of the corpus, as they came and as checked",
    "",
    ...PICTURED.flatMap(({ name, words }) => [
      `${words}, as it came:`,
      "",
      `![The sheet with no flag and no finding](images/${name}-before.png)`,
      "",
      "Checked:",
      "",
      `![The same sheet with flagged rows, and beside it the findings and the bar of one](images/${name}-after.png)`,
      "",
    ]),
    "## Schedules written by people who had not seen the program",
    "",
    "Each batch was run once before anybody looked at a book of it; then what failed was mended in general. Right is a",
    "tonnage within one per cent of the truth, or of what is written where mistakes were planted; without a word is",
    "another tonnage that nothing warns of. The first run of the last batch is the figure that tells how good the",
    "reader is on a sheet that it never saw. All books are invented.",
    "",
    "| batch | books | right at first | right now | without a word now | mistakes found at first | now |",
    "| --- | --- | --- | --- | --- | --- | --- |",
    ...FIRST_RUNS.map(({ batch, books, rightFirst, right, silent, foundFirst, found, mistakes }) =>
      row([
        batch.toUpperCase(),
        String(books),
        String(rightFirst),
        String(right),
        String(silent),
        `${foundFirst} of ${mistakes}`,
        `${found} of ${mistakes}`,
      ]),
    ),
    "",
    "## Words over the columns",
    "",
    `Column headings of bar schedules in ${LANGUAGES.length - 1} files of words, one a language, common practice where not said otherwise: ${LANGUAGES.map(({ language, provenance }) => `${language}${provenance === "memory" ? " (from memory)" : ""}`).join(", ")}. A word that is not listed is shown as unknown; how a speaker adds one stands in DEVELOPERS.md. Case, points, accents and a unit behind the word do not matter.`,
    "",
    "| column | words |",
    "| --- | --- |",
    ...wordsByColumn(),
    "",
  ];
  return new Map([["reading.md", lines.join("\n")]]);
}

function wordsByColumn(): string[] {
  const byKind = new Map<string, string[]>();
  for (const { kind, words } of HEADER_WORD_ROWS) byKind.set(kind, [...(byKind.get(kind) ?? []), ...words]);
  return [...byKind].map(([kind, words]) => row([kind, [...new Set(words)].join(", ")]));
}

function row(cells: readonly string[]): string {
  return `| ${cells.map((cell) => cell.replaceAll("|", "\\|")).join(" | ")} |`;
}
