import { constantText, textConstant } from "../workbook/defined-name";
import { isSparePiece, settingOfPieces, settingPieces } from "../workbook/setting-pieces";
import { WorkbookRefusal } from "../workbook/workbook-port";
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
 * `="BS8666:2020"`; a long one goes on under `Barwright.Audit.2` and so on.
 */
export class Settings {
  private seen: Seen | null = null;

  /** Asks for every setting within a batch; once it has synced, the answer serves `read` for a second. */
  ask(context: Excel.RequestContext): () => void {
    const names = context.workbook.names.load("items/name,items/formula");
    return () => {
      this.seen = { at: Date.now(), formulas: ownFormulas(names) };
    };
  }

  /** Null where there is none; a name that the user has pointed at something else is refused with it. */
  async read(name: string): Promise<string | null> {
    const formulas = await this.formulas();
    return settingOfPieces(name, (piece) => {
      const formula = formulas.get(piece.toLowerCase());
      if (formula === undefined) return null;
      const text = constantText(formula);
      if (text !== null) return text;
      throw new WorkbookRefusal(
        `the defined name ${piece} stands for ${formula}, not for a text: change it to a text such as ="BS8666:2020" in Formulas, Name Manager`,
      );
    });
  }

  /** Writes the name, and further ones where the text needs them; takes out what is not needed any longer. */
  async save(name: string, value: string | null): Promise<void> {
    const pieces = value === null ? new Map<string, string>() : settingPieces(name, value);
    this.seen = null;
    await runBatch(async (context) => {
      const { names } = context.workbook;
      names.load("items/name");
      await context.sync();
      const known = new Map(names.items.map((item) => [item.name.toLowerCase(), item]));
      for (const [piece, text] of pieces) {
        const formula = `=${textConstant(text)}`;
        const item = known.get(piece.toLowerCase());
        if (item === undefined) names.add(piece, formula);
        else item.formula = formula;
      }
      for (const item of names.items) {
        const isGone = value === null && item.name.toLowerCase() === name.toLowerCase();
        if (isGone || isSparePiece(name, item.name, pieces)) item.delete();
      }
      await context.sync();
    });
  }

  /** Every setting of ours, by its name in small letters. */
  private async formulas(): Promise<ReadonlyMap<string, string>> {
    const { seen } = this;
    if (seen !== null && Date.now() - seen.at < FRESH) return seen.formulas;
    return runBatch(async (context) => {
      const items = context.workbook.names.load("items/name,items/formula");
      await context.sync();
      return ownFormulas(items);
    });
  }
}

function ownFormulas({ items }: Excel.NamedItemCollection): ReadonlyMap<string, string> {
  const own = items.filter((item) => item.name.toLowerCase().startsWith(PREFIX));
  return new Map(own.map((item) => [item.name.toLowerCase(), String(item.formula)]));
}
