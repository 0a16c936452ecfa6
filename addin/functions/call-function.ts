import { FUNCTIONS_AT_HAND } from "../../core/formulas/at-hand";
import type { Block, FunctionEnvironment, WorksheetFunction } from "../../core/formulas/worksheet-function";
import { isCellError } from "../../core/schedule/sheet";
import { blocksOf, excelError, excelRows, type Given } from "./cells-of-excel";
import { contentKey } from "./content-key";
import { defaultStandard as standardOfWorkbook } from "./default-standard";
import { ownSheet } from "./own-sheet";
import { shopSheet } from "./shop-sheet";

/** Results kept for calls of the same content; Excel calls again for every cell it opens. */
const KEPT_RESULTS = 500;
const results = new Map<string, Block>();

/**
 * Calls one function of namespace BAR with what Excel handed over. A single refusal is thrown, which
 * Excel shows with its words; in a spilled block each stands in its own cell.
 */
export async function callFunction(name: string, given: readonly Given[]): Promise<unknown[][]> {
  const blocks = blocksOf(given);
  const defaultStandard = await inWords(standardOfWorkbook);
  const definition = await functionNamed(name);
  const shop = needsShop(definition, blocks) ? await inWords(shopSheet.known) : {};
  const own = await inWords(ownSheet.known);
  const result = calculate(definition, blocks, {
    defaultStandard,
    ...(own === undefined ? {} : { own }),
    ...shop,
  });
  const only = result.length === 1 && result[0]?.length === 1 ? result[0][0] : null;
  if (only !== null && only !== undefined && isCellError(only)) throw excelError(only);
  return excelRows(result);
}

/** CHECK brings the reader and every rule, so it is fetched when a workbook first asks for it. */
async function functionNamed(name: string): Promise<WorksheetFunction> {
  const atHand = FUNCTIONS_AT_HAND.get(name);
  if (atHand !== undefined) return atHand;
  if (name === "CHECK") return fetchCheck();
  throw excelError({ error: "#N/A", message: `BAR.${name} is not in this version: update the add-in` });
}

async function fetchCheck(): Promise<WorksheetFunction> {
  try {
    return (await import(/* webpackChunkName: "later-check" */ "../../core/formulas/check")).CHECK;
  } catch {
    const message = "BAR.CHECK could not be loaded: look at the network, then enter the formula again";
    throw excelError({ error: "#N/A", message });
  }
}

/** Only these need the Shop sheet, so only they wait for it. */
function needsShop({ args }: WorksheetFunction, blocks: readonly (Block | undefined)[]): boolean {
  const isGiven = (at: number): boolean =>
    blocks[at]?.flat().some((cell) => cell !== null && cell !== "") === true;
  return args.some(
    ({ name }, at) => (name === "machine" && isGiven(at)) || (name === "rates" && !isGiven(at)),
  );
}

function calculate(
  definition: WorksheetFunction,
  blocks: readonly (Block | undefined)[],
  environment: FunctionEnvironment,
): Block {
  const key = contentKey(definition.name, JSON.stringify(environment), blocks);
  const kept = results.get(key);
  if (kept !== undefined) return kept;
  const result = callCore(definition, blocks, environment);
  if (results.size >= KEPT_RESULTS) results.delete(results.keys().next().value as string);
  results.set(key, result);
  return result;
}

/** Excel drops the words of any other error than its own. */
function callCore(
  definition: WorksheetFunction,
  blocks: readonly (Block | undefined)[],
  environment: FunctionEnvironment,
): Block {
  try {
    return definition.call(blocks, environment);
  } catch (problem) {
    const message = `BAR.${definition.name} failed, which is a fault of the add-in: report it with its arguments (${String(problem)})`;
    throw excelError({ error: "#VALUE!", message });
  }
}

/** What the workbook says; why it cannot be read is told in the cell. */
async function inWords<Answer>(ask: () => Promise<Answer>): Promise<Answer> {
  try {
    return await ask();
  } catch (problem) {
    const message = problem instanceof Error ? problem.message : String(problem);
    throw excelError({ error: "#VALUE!", message });
  }
}
