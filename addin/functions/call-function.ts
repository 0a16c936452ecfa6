import { type Block, WORKSHEET_FUNCTIONS } from "../../core/formulas";
import { isCellError } from "../../core/schedule/sheet";
import { blockOf, excelError, excelRows, type Given } from "./cells-of-excel";
import { contentKey } from "./content-key";
import { defaultStandard } from "./default-standard";

/** Results kept for calls of the same content; Excel calls again for every cell it opens. */
const KEPT_RESULTS = 500;
const results = new Map<string, Block>();

/**
 * Calls one function of namespace BAR with what Excel handed over. A single refusal is thrown, which
 * Excel shows with its words; in a spilled block each stands in its own cell.
 */
export async function callFunction(name: string, given: readonly Given[]): Promise<unknown[][]> {
  const blocks = given.map(blockOf);
  const result = calculate(name, await standardInForce(), blocks);
  const only = result.length === 1 && result[0]?.length === 1 ? result[0][0] : null;
  if (only !== null && only !== undefined && isCellError(only)) throw excelError(only);
  return excelRows(result);
}

function calculate(name: string, standard: string, blocks: readonly (Block | undefined)[]): Block {
  const key = contentKey(name, standard, blocks);
  const kept = results.get(key);
  if (kept !== undefined) return kept;
  const result = callCore(name, blocks, standard);
  if (results.size >= KEPT_RESULTS) results.delete(results.keys().next().value as string);
  results.set(key, result);
  return result;
}

/** Excel drops the words of any other error than its own. */
function callCore(name: string, blocks: readonly (Block | undefined)[], defaultStandard: string): Block {
  const definition = WORKSHEET_FUNCTIONS.get(name);
  if (definition === undefined) {
    throw excelError({ error: "#N/A", message: `BAR.${name} is not in this version: update the add-in` });
  }
  try {
    return definition.call(blocks, { defaultStandard });
  } catch (problem) {
    const message = `BAR.${name} failed, which is a fault of the add-in: report it with its arguments (${String(problem)})`;
    throw excelError({ error: "#VALUE!", message });
  }
}

async function standardInForce(): Promise<string> {
  try {
    return await defaultStandard();
  } catch (problem) {
    const message = problem instanceof Error ? problem.message : String(problem);
    throw excelError({ error: "#VALUE!", message });
  }
}
