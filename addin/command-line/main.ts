import { UnreadableWorkbook } from "../xlsx/unreadable-workbook";
import { calc } from "./calc";
import { check } from "./check";
import type { Command, ExitCode } from "./command";
import { compare } from "./compare";
import { cutplan } from "./cutplan";
import { InputRefused } from "./input-refused";
import { readOptions } from "./read-options";
import { recalc } from "./recalc";
import { standards } from "./standards";
import { ProcessStreams } from "./streams";
import { tickets } from "./tickets";
import { tonnage } from "./tonnage";

const COMMANDS: readonly Command[] = [calc, check, tonnage, cutplan, tickets, recalc, compare, standards];

const streams = new ProcessStreams();
process.exitCode = ended(await run(process.argv.slice(2)));

/** A reader that has left has what it wanted; any other result that could not be written is an error. */
function ended(code: ExitCode): ExitCode {
  streams.flush();
  if (streams.failure === null) return code;
  if (streams.failure === "EPIPE") return code === 2 ? 2 : 0;
  streams.note(`barwright: the results cannot be written (${streams.failure})`);
  return 2;
}

async function run([name, ...args]: readonly string[]): Promise<ExitCode> {
  if (name === undefined || name === "help" || name === "--help" || name === "-h") {
    for (const line of help()) streams.result(line);
    return name === undefined ? 2 : 0;
  }
  const command = COMMANDS.find((one) => one.name === name);
  if (command === undefined) {
    streams.note(`barwright: no command "${name}": there are ${COMMANDS.map((one) => one.name).join(", ")}`);
    return 2;
  }
  try {
    return await command.run(readOptions(args, command.options), streams);
  } catch (error) {
    if (error instanceof InputRefused || error instanceof UnreadableWorkbook) {
      streams.note(`barwright ${name}: ${error.message.replace(/\s+/g, " ")}`);
      return 2;
    }
    // not the input's fault, but exit code 1 would say that something unsafe was found
    const reason = error instanceof Error ? (error.stack ?? error.message) : String(error);
    streams.note(`barwright ${name}: an error of ours, please report it: ${reason}`);
    return 2;
  }
}

function help(): string[] {
  const width = Math.max(...COMMANDS.map((command) => command.usage.length));
  return [
    "barwright COMMAND: bar schedules checked and computed",
    "",
    ...COMMANDS.map((command) => `  ${command.usage.padEnd(width)}  ${command.summary}`),
    "",
    "Results go to standard output, notes to standard error.",
    "Exit code 0: fine. 1: something unsafe or unbendable was found. 2: the input could not be read.",
  ];
}
