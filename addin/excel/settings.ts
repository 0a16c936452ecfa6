import { constantText, LONGEST_FORMULA, textConstant } from "../ooxml/defined-names";
import { WorkbookRefusal } from "../pane/workbook-port";
import { runBatch } from "./run-batch";

/** In small letters: Excel does not tell names apart by their case. */
const PREFIX = "barwright.";
/** ms for which the names that came with a sheet's cells answer without a request of their own */
const FRESH = 1_000;

/** What came with the last reading of a sheet. */
interface Seen {
  readonly at: number;
  readonly formulas: ReadonlyMap<string, string>;
}

/**
 * Settings kept in the workbook as defined names that stand for a text, such as `Barwright.Standard` =
 * `="BS8666:2020"`.
 */
export class Settings {
  private seen: Seen | null = null;

  /** Asks for every setting within a batch; once it has synced, the answer serves `read` for a second. */
  ask(context: Excel.RequestContext): () => void {
    const names = context.workbook.names.load("items/name,items/formula");
    return () => {
      const own = names.items.filter((item) => item.name.toLowerCase().startsWith(PREFIX));
      this.seen = {
        at: Date.now(),
        formulas: new Map(own.map((item) => [item.name.toLowerCase(), String(item.formula)])),
      };
    };
  }

  /** Null where there is none; a name that the user has pointed at something else is refused with it. */
  async read(name: string): Promise<string | null> {
    const formula = await this.formulaOf(name);
    if (formula === null) return null;
    const text = constantText(formula);
    if (text !== null) return text;
    throw new WorkbookRefusal(
      `the defined name ${name} stands for ${formula}, not for a text: change it to a text such as ="BS8666:2020" in Formulas, Name Manager`,
    );
  }

  /** Writes the name, or takes it out where the value is null. */
  async save(name: string, value: string | null): Promise<void> {
    const formula = value === null ? null : `=${textConstant(value)}`;
    if (formula !== null && formula.length > LONGEST_FORMULA) {
      throw new WorkbookRefusal(
        `${name} has ${formula.length} characters, more than the ${LONGEST_FORMULA} that a workbook's name holds: shorten it, then save again`,
      );
    }
    this.seen = null;
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

  private async formulaOf(name: string): Promise<string | null> {
    const { seen } = this;
    if (seen !== null && Date.now() - seen.at < FRESH) return seen.formulas.get(name.toLowerCase()) ?? null;
    return runBatch(async (context) => {
      const item = context.workbook.names.getItemOrNullObject(name).load("formula");
      await context.sync();
      return item.isNullObject ? null : String(item.formula);
    });
  }
}
