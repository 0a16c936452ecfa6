/** Words for the help of each command; the options themselves stand with the command. */
export interface CommandHelp {
  /** what the command does, in a sentence or two */
  readonly says: string;
  readonly examples: readonly { readonly line: string; readonly says: string }[];
}

/** What an option takes, null for one that takes nothing, and what it does. */
export const OPTION_HELP: Readonly<Record<string, { readonly takes: string | null; readonly says: string }>> =
  {
    sheet: { takes: "NAME", says: "one sheet of the workbook; a hidden one is read when it is named" },
    standard: { takes: "ID", says: "standard and edition, such as BS8666:2005; else the workbook's own" },
    read: {
      takes: "COLUMNS",
      says: 'what columns hold: "D=total, F=length in cm"; a sheet before as in "S!D=total"',
    },
    json: { takes: null, says: "the result as JSON" },
    jsonl: { takes: null, says: "one JSON object a line: books, bars, findings, totals" },
    pour: { takes: "NAME", says: "shows this pour alone; may be given several times" },
    size: { takes: "SIZES", says: "shows these sizes alone, with commas between" },
    summary: { takes: null, says: "a line a book or size and the total, without details" },
    by: { takes: "WHAT", says: "what the tonnes go by: pour, member, schedule or date" },
    workers: { takes: "NUMBER", says: "how many books are read at once; else one a core" },
    "no-cache": { takes: null, says: "keeps no results for the next run, and uses none" },
    out: { takes: "FILE", says: "writes a file, of several books into a folder; never what is read" },
    explain: { takes: null, says: "why each row and column was read as it was" },
    own: { takes: "FILE", says: "values and shapes of your own, from a file with a Standard sheet" },
    stock: { takes: "MM,MM", says: "stock lengths to cut from, instead of the Shop sheet's" },
    values: { takes: null, says: "results in the place of the BAR formulas, which the copy loses" },
    again: { takes: null, says: "books the same cut list a second time" },
    labels: { takes: "FILE", says: "writes the bundle labels as a page to print" },
    "bundle-limit": { takes: "KG", says: "heaviest bundle; else the Shop sheet's lifting limit" },
    chart: { takes: "FILE", says: "writes the wall chart of compensated angles" },
    every: { takes: "N", says: "of each pour and size the first mark and every Nth; 1 is all, else 10" },
    heat: { takes: "NUMBER", says: "one heat only, by the number of its mill certificate" },
    "lorry-load": { takes: "KG", says: "what a lorry may carry; else the Shop sheet's limit" },
    "lorry-length": { takes: "LENGTH", says: "longest bar that it takes; else the Shop sheet's limit" },
    released: { takes: "MARKS", says: "marks already released, with commas between" },
  };

export const COMMAND_HELP: Readonly<Record<string, CommandHelp>> = {
  calc: {
    says: "The value of a BAR formula. An array prints a line a row, with tabs. With - it reads a formula a line from standard input and answers each at once.",
    examples: [
      { line: "calc '=BAR.MASS(\"H16\")'", says: "mass of a metre, kg" },
      { line: 'calc \'=BAR.CUTLENGTH("21","H16",{1000,400,500})\'', says: "cut length of a U bar, mm" },
    ],
  },
  check: {
    says: "Audits every sheet that has a schedule: what is unsafe, what cannot be bent, what the standard would refuse, and what is probably a slip. Nothing in your file changes.",
    examples: [
      { line: "check schedule.xlsx", says: "findings, the worst first" },
      { line: "check schedule.xlsx --out checked.xlsx", says: "a copy with the cells marked" },
      {
        line: 'check list.xlsx --read "C=size, E=length in m"',
        says: "columns pointed at; --out keeps them",
      },
      { line: "check bridge --summary", says: "a folder is a job: its books and what they say together" },
    ],
  },
  tonnage: {
    says: "Tonnes by pour and size by the lengths that the dimensions make, and the rows that are in no total with the reason of each.",
    examples: [
      { line: "tonnage schedule.xlsx", says: "a table to read" },
      { line: "tonnage bridge --by date", says: "of a job, the newest revisions alone" },
      { line: "tonnage bridge --out job.xlsx", says: "sums, and every bar with its source" },
      { line: "tonnage schedule.xlsx --out copy.xlsx", says: "a copy with a live Totals sheet" },
    ],
  },
  cutplan: {
    says: "Which stock bars to buy and how to cut them, with the bound that no plan can beat. A bar that cannot be cut is named; nothing is split.",
    examples: [
      { line: "cutplan schedule.xlsx --stock 12000,9000", says: "from these stock lengths" },
      { line: "cutplan schedule.xlsx --out cuts.html", says: "the cut list to print" },
      { line: "cutplan bridge --out cuts.xlsx", says: "one plan over a job, as a workbook" },
    ],
  },
  tickets: {
    says: "A ticket a mark for the person at the bender: cut length, drawing, former, marks, working order and compensated angles.",
    examples: [{ line: "tickets schedule.xlsx --out tickets.html", says: "a page to print" }],
  },
  heats: {
    says: "Which heat, by the number of the mill's certificate, the pieces of each mark are cut from by the cut list, and which marks came of a heat. Heats are written beside the stock on the Shop sheet.",
    examples: [
      { line: "heats schedule.xlsx", says: "every heat with its bars and marks" },
      { line: "heats schedule.xlsx --heat K4711", says: "what came of one heat" },
      { line: "heats bridge --heat K4711", says: "in all schedules of a job, by one cut list" },
    ],
  },
  loads: {
    says: "Bundles on lorries by the day of their pours, each loaded in reverse order of fixing. Limits and days stand on the Shop sheet.",
    examples: [
      { line: "loads schedule.xlsx --out loads.html", says: "the loading lists to print" },
      { line: "loads schedule.xlsx --lorry-load 24000", says: "under a limit given here" },
      { line: "loads bridge --pour P1", says: "lorries loaded from every schedule of a job" },
    ],
  },
  inspect: {
    says: "Draws marks to be measured, by a sampling that is stated, with the lengths that the standard's tolerance allows. Once what was measured stands on the sheet Inspection, it is judged instead.",
    examples: [
      { line: "inspect schedule.xlsx --out inspect.xlsx", says: "a copy with the sheet to fill in" },
      { line: "inspect inspect.xlsx", says: "what is out of tolerance" },
    ],
  },
  recalc: {
    says: "A copy of the workbook in which each BAR formula shows its value, for people who open it in Excel without the add-in. LibreOffice works such cells out anew and shows #NAME? in them: for it, --values leaves the results alone in their place.",
    examples: [
      { line: "recalc estimate.xlsx --out valued.xlsx", says: "formulas stay, values stand beside" },
      { line: "recalc estimate.xlsx --out plain.xlsx --values", says: "for LibreOffice and others" },
      { line: "recalc bridge --out valued", says: "a copy of each book of a job, in a folder" },
    ],
  },
  compare: {
    says: "What a newer revision changes: bars added, dropped and altered, released ones first, and tonnes by pour.",
    examples: [{ line: "compare old.xlsx new.xlsx --released 01,02", says: "01 and 02 are bent already" }],
  },
  demo: {
    says: "Writes the example workbooks that the README uses. Nothing that stands there is written over.",
    examples: [{ line: "demo try-it", says: "into a folder of their own" }],
  },
  standards: {
    says: "The standards held, and how many of their values are published, recalled, derived or confirmed.",
    examples: [{ line: "standards", says: "a table to read" }],
  },
};
