import { constantText, textConstant } from "../ooxml/defined-names";
import { WorkbookRefusal } from "../pane/workbook-port";
import { runBatch } from "./run-batch";

/** Excel's longest formula. */
const LONGEST_FORMULA = 8_192;

const PREFIX = "Barwright.";
/** ms for which the names that came with a sheet's cells answer without a request of their own */
const FRESH = 1_000;

let seen: { readonly at: number; readonly formulas: ReadonlyMap<string, string> } | null = null;

/** Asks for every setting within a batch; once it has synced, the answer serves `readSetting` for a second. */
export function askSettings(context: Excel.RequestContext): () => void {
  const names = context.workbook.names.load("items/name,items/formula");
  return () => {
    const own = names.items.filter((item) => item.name.startsWith(PREFIX));
    seen = { at: Date.now(), formulas: new Map(own.map((item) => [item.name, String(item.formula)])) };
  };
}

/**
 * A setting kept in the workbook as a defined name that stands for a text, such as
 * `Barwright.Standard` = `="BS8666:2020"`. Null where there is none; a name the user has pointed at
 * something else is refused with its content.
 */
export async function readSetting(name: string): Promise<string | null> {
  const formula = await formulaOf(name);
  if (formula === null) return null;
  const text = constantText(formula);
  if (text !== null) return text;
  throw new WorkbookRefusal(
    `the defined name ${name} stands for ${formula}, not for a text: change it to a text such as ="BS8666:2020" in Formulas, Name Manager`,
  );
}

async function formulaOf(name: string): Promise<string | null> {
  if (seen !== null && Date.now() - seen.at < FRESH) return seen.formulas.get(name) ?? null;
  return runBatch(async (context) => {
    const item = context.workbook.names.getItemOrNullObject(name).load("formula");
    await context.sync();
    return item.isNullObject ? null : String(item.formula);
  });
}

/** Writes the name, or takes it out where the value is null. */
export async function saveSetting(name: string, value: string | null): Promise<void> {
  const formula = value === null ? null : `=${textConstant(value)}`;
  if (formula !== null && formula.length > LONGEST_FORMULA) {
    throw new WorkbookRefusal(
      `${name} has ${formula.length} characters, more than the ${LONGEST_FORMULA} that a workbook's name holds: shorten it, then save again`,
    );
  }
  seen = null;
  await runBatch(async (context) => {
    const item = context.workbook.names.getItemOrNullObject(name).load("name");
    await context.sync();
    if (formula === null) {
      if (item.isNullObject) return;
      item.delete();
    } else if (item.isNullObject) context.workbook.names.add(name, formula);
    else item.formula = formula;
    await context.sync();
  });
}
