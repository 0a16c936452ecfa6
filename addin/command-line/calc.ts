import { createInterface } from "node:readline";
import type { Block } from "../../core/formulas";
import { type Cell, isCellError } from "../../core/schedule";
import type { Command } from "./command";
import { evaluate, parseFormula } from "./evaluate-formula";
import { InputRefused } from "./input-refused";
import { STANDARD_OPTIONS, standardInForce } from "./standard-for";
import type { Streams } from "./streams";

/** `calc FORMULA`: the value of a formula, or of every line of standard input. */
export const calc: Command = {
  name: "calc",
  usage: "calc '=BAR.NAME(...)' | - [--standard ID] [--own FILE] [--json]",
  summary: "value of a formula; - reads one formula a line",
  options: { json: { type: "boolean" }, ...STANDARD_OPTIONS },
  async run(given, streams) {
    const [formula, more] = given.positionals;
    if (formula === undefined || more !== undefined) {
      throw new InputRefused(
        "give one formula in quotes, such as '=BAR.MASS(\"H16\")', or - for standard input",
      );
    }
    const standard = standardInForce(given, null, streams);
    const place = { defaultStandard: standard.id, own: standard.own, cells: null };
    const answer = (text: string): void => {
      const block = evaluate(parseFormula(text), place);
      if (given.flag("json")) streams.result(JSON.stringify({ value: block }));
      else printBlock(block, streams);
    };
    if (formula !== "-") {
      answer(formula);
      return 0;
    }
    let unparsed = 0;
    for await (const line of createInterface({ input: process.stdin, crlfDelay: Number.POSITIVE_INFINITY })) {
      if (line.trim() === "") {
        streams.result(given.flag("json") ? '{"value":[[null]]}' : "");
        continue;
      }
      try {
        answer(line);
      } catch (error) {
        if (!(error instanceof InputRefused)) throw error;
        unparsed += 1;
        if (given.flag("json")) streams.result(JSON.stringify({ value: null, error: error.message }));
        else streams.result("");
        streams.note(`barwright calc: ${error.message}`);
      }
    }
    return unparsed === 0 ? 0 : 2;
  },
};

function printBlock(block: Block, streams: Streams): void {
  for (const row of block) streams.result(row.map(shownCell).join("\t"));
  for (const cell of block.flat()) {
    if (cell !== null && isCellError(cell) && cell.message !== undefined) {
      streams.note(`${cell.error} ${cell.message}`);
    }
  }
}

function shownCell(cell: Cell): string {
  if (cell === null) return "";
  if (typeof cell === "boolean") return cell ? "TRUE" : "FALSE";
  return isCellError(cell) ? cell.error : String(cell);
}
