import { addressAt } from "../../core/schedule/cell-address";
import { FLAG_FILLS } from "../workbook/flag-fills";
import { type FlagColour, type RowFlag, WorkbookRefusal } from "../workbook/workbook-port";
import { runBatch } from "./run-batch";

/**
 * Flags are conditional formats of our own, so the user's fills, fonts and conditional formats are never
 * written to. Each carries its owner's name in its formula, which is true for every cell; that is how
 * they are found again in any session, also in a copied row or a reopened file.
 */
const OWNER = "Barwright";
const ruleOf = (colour: FlagColour) => `=LEN("${OWNER} ${colour}")>0`;
const isOurRule = (formula: string | undefined) => formula?.includes(`"${OWNER} `) === true;

/** Excel refuses longer lists of addresses (8,192 characters). */
const LONGEST_ADDRESSES = 8_000;
const CELLS_PER_REQUEST = 20_000;

/** Replaces the sheet's flags: one request to look, one to write for each 20,000 cells. */
export async function showFlags(
  name: string,
  flags: readonly RowFlag[],
  progress?: (done: number) => void,
): Promise<void> {
  await runBatch(
    async (context) => {
      const sheet = context.workbook.worksheets.getItem(name);
      const { existing, isLocked } = await findFlags(context, sheet);
      if (flags.length === 0 && existing.length === 0) return;
      if (isLocked) throw protectedSheet(name);
      for (const id of existing) sheet.getRange().untrack().conditionalFormats.getItem(id).delete();
      let done = 0;
      let cells = 0;
      suspendUntilSync(context);
      for (const group of groupsOf(flags)) {
        if (cells > 0 && cells + group.cells > CELLS_PER_REQUEST) {
          await context.sync();
          progress?.(done);
          suspendUntilSync(context);
          cells = 0;
        }
        addFlag(sheet, group);
        cells += group.cells;
        done += group.flags;
      }
      await context.sync();
      progress?.(done);
    },
    { sheet: name },
  );
}

/** Takes every flag of ours off the sheet, whichever session put it there. */
export async function clearFlags(name: string): Promise<void> {
  await showFlags(name, []);
}

export async function hasFlags(name: string): Promise<boolean> {
  return runBatch(
    async (context) => {
      const formats = loadFormats(context.workbook.worksheets.getItem(name));
      await context.sync();
      return formats.items.some(isOurs);
    },
    { sheet: name },
  );
}

async function findFlags(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
): Promise<{ existing: string[]; isLocked: boolean }> {
  sheet.protection.load("protected,options");
  const formats = loadFormats(sheet);
  await context.sync();
  const isLocked = sheet.protection.protected && sheet.protection.options?.allowFormatCells !== true;
  return { existing: formats.items.filter(isOurs).map((format) => format.id), isLocked };
}

function protectedSheet(name: string): WorkbookRefusal {
  return new WorkbookRefusal(
    `sheet ${name} is protected, so the colours of its rows cannot be changed: take off the protection (Review, Unprotect Sheet), or allow formatting of cells in it`,
  );
}

function loadFormats(sheet: Excel.Worksheet): Excel.ConditionalFormatCollection {
  return sheet
    .getRange()
    .untrack()
    .conditionalFormats.load("items/id,items/type,items/customOrNullObject/rule/formula");
}

function isOurs(format: Excel.ConditionalFormat): boolean {
  return format.type === "Custom" && isOurRule(format.customOrNullObject.rule.formula);
}

interface FlagGroup {
  readonly colour: FlagColour;
  readonly addresses: string;
  readonly cells: number;
  readonly flags: number;
}

function addFlag(sheet: Excel.Worksheet, group: FlagGroup): void {
  const format = sheet.getRanges(group.addresses).untrack().conditionalFormats.add("Custom");
  format.custom.rule.formula = ruleOf(group.colour);
  format.custom.format.fill.color = FLAG_FILLS[group.colour];
  format.custom.format.font.color = "#000000";
  format.priority = 0;
}

/** Rows of one colour and width that follow one another, as few lists of addresses as Excel takes. */
function groupsOf(flags: readonly RowFlag[]): FlagGroup[] {
  const groups: FlagGroup[] = [];
  for (const colour of Object.keys(FLAG_FILLS) as FlagColour[]) {
    let addresses: string[] = [];
    let length = 0;
    let cells = 0;
    let rows = 0;
    const close = () => {
      if (rows > 0) groups.push({ colour, addresses: addresses.join(","), cells, flags: rows });
      addresses = [];
      length = 0;
      cells = 0;
      rows = 0;
    };
    for (const run of runsOf(flags.filter((flag) => flag.colour === colour))) {
      const address = `${addressAt(run.row, run.firstColumn)}:${addressAt(run.lastRow, run.lastColumn)}`;
      const size = (run.lastRow - run.row + 1) * (run.lastColumn - run.firstColumn + 1);
      if (
        length + address.length + 1 > LONGEST_ADDRESSES ||
        (cells > 0 && cells + size > CELLS_PER_REQUEST)
      ) {
        close();
      }
      addresses.push(address);
      length += address.length + 1;
      cells += size;
      rows += run.lastRow - run.row + 1;
    }
    close();
  }
  return groups;
}

interface FlagRun {
  readonly row: number;
  lastRow: number;
  readonly firstColumn: number;
  readonly lastColumn: number;
}

function runsOf(flags: readonly RowFlag[]): FlagRun[] {
  const runs: FlagRun[] = [];
  for (const flag of [...flags].sort((one, other) => one.row - other.row)) {
    const last = runs.at(-1);
    const isNext =
      last !== undefined &&
      last.lastRow + 1 === flag.row &&
      last.firstColumn === flag.firstColumn &&
      last.lastColumn === flag.lastColumn;
    if (isNext) last.lastRow = flag.row;
    else {
      const { row, firstColumn, lastColumn } = flag;
      runs.push({ row, lastRow: row, firstColumn, lastColumn });
    }
  }
  return runs;
}

function suspendUntilSync(context: Excel.RequestContext): void {
  context.application.suspendApiCalculationUntilNextSync();
  context.application.suspendScreenUpdatingUntilNextSync();
}
