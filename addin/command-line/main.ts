import { isMainThread } from "node:worker_threads";
import { version } from "../../package.json";
import { UnreadableWorkbook } from "../xlsx/unreadable-workbook";
import { calc } from "./calc";
import { check } from "./check";
import type { Command, ExitCode } from "./command";
import { compare } from "./compare";
import { completion } from "./completion";
import { isCopyThread, serveCopy } from "./copy-thread";
import { cutplan } from "./cutplan";
import { demo } from "./demo";
import { heats } from "./heats";
import { helpOf, helpOfAll } from "./help";
import { InputRefused } from "./input-refused";
import { inspect } from "./inspect";
import { serveBooks } from "./job/book-worker";
import { loads } from "./loads";
import { didYouMean } from "./nearest-word";
import { readOptions } from "./read-options";
import { recalc } from "./recalc";
import { isRowsThread, serveRows } from "./rows-thread";
import { standards } from "./standards";
import { ProcessStreams } from "./streams";
import { refuseTargetsInOne } from "./targets-apart";
import { tickets } from "./tickets";
import { tonnage } from "./tonnage";

const COMMANDS: readonly Command[] = [
  calc,
  check,
  tonnage,
  cutplan,
  tickets,
  heats,
  loads,
  inspect,
  recalc,
  compare,
  standards,
  demo,
];

const streams = new ProcessStreams();
if (isMainThread) process.exitCode = ended(await run(process.argv.slice(2)));
else if (isRowsThread()) serveRows();
else if (isCopyThread()) serveCopy();
else serveBooks();

/** A reader that has left has what it wanted; any other result that could not be written is an error. */
function ended(code: ExitCode): ExitCode {
  streams.flush();
  if (streams.failure === null) return code;
  if (streams.failure === "EPIPE") return code === 2 ? 2 : 0;
  streams.note(`barwright: the results cannot be written (${streams.failure})`);
  return 2;
}

async function run([name, ...args]: readonly string[]): Promise<ExitCode> {
  if (name === undefined) return print(helpOfAll(COMMANDS), 2);
  if (name === "--help" || name === "-h") return print(helpOfAll(COMMANDS));
  if (name === "--version" || name === "-V") return print([version]);
  if (name === "help") {
    const asked = COMMANDS.find((one) => one.name === args[0]);
    return print(asked === undefined ? helpOfAll(COMMANDS) : helpOf(asked));
  }
  if (name === "completion") return completion(args[0], COMMANDS, streams);
  const command = COMMANDS.find((one) => one.name === name);
  if (command === undefined) {
    const names = COMMANDS.map((one) => one.name);
    streams.note(
      `barwright: no command "${name}"${didYouMean(name, names) || `: there are ${names.join(", ")}`}`,
    );
    return 2;
  }
  if (args.includes("--help") || args.includes("-h")) return print(helpOf(command));
  try {
    const given = readOptions(args, command.options);
    refuseTargetsInOne(given);
    return await command.run(given, streams);
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

function print(lines: readonly string[], code: ExitCode = 0): ExitCode {
  for (const line of lines) streams.result(line);
  return code;
}
