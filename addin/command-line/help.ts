import type { Command } from "./command";
import { COMMAND_HELP, OPTION_HELP } from "./command-help.data";

const WIDTH = 80;

/** The commands, a line each, and what the exit codes mean; 80 columns. */
export function helpOfAll(commands: readonly Command[]): string[] {
  return [
    "barwright COMMAND [OPTIONS]: bar schedules checked and computed",
    "",
    ...twoColumns(commands.map(({ name, summary }) => [name, summary])),
    ...twoColumns([["completion", "completions of these words for bash, zsh or powershell"]]),
    "",
    ...wrapped(
      "barwright COMMAND --help tells more of one, with examples. barwright --version tells which this is.",
      0,
    ),
    "",
    ...wrapped(
      "Results go to standard output, notes to standard error. Exit code 0: fine. 1: something unsafe or unbendable was found. 2: the input could not be read.",
      0,
    ),
  ];
}

/** What one command does, its options and examples; 80 columns. */
export function helpOf({ name, usage, options }: Command): string[] {
  const help = COMMAND_HELP[name];
  const rows = Object.keys(options).map((option): [string, string] => {
    const known = OPTION_HELP[option];
    return [`--${option}${known?.takes == null ? "" : ` ${known.takes}`}`, known?.says ?? ""];
  });
  return [
    ...wrapped(`barwright ${usage}`, 4),
    "",
    ...wrapped(help?.says ?? "", 0),
    ...(rows.length === 0 ? [] : ["", "Options", ...twoColumns(rows)]),
    ...(help === undefined
      ? []
      : [
          "",
          "Examples",
          ...help.examples.flatMap(({ line, says }) => [`  npx barwright ${line}`, `      ${says}`]),
        ]),
  ];
}

function twoColumns(rows: readonly (readonly [string, string])[]): string[] {
  const left = Math.max(22, ...rows.map(([word]) => word.length + 4));
  return rows.flatMap(([word, says]) => {
    const lines = wrapped(says, 0, WIDTH - left);
    return lines.map((line, at) => `${at === 0 ? `  ${word}`.padEnd(left) : " ".repeat(left)}${line}`);
  });
}

/** Lines of at most `width`, the second and later ones indented. */
function wrapped(text: string, indent: number, width = WIDTH): string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(" ")) {
    const start = lines.length === 0 ? "" : " ".repeat(indent);
    const longer = line === "" ? `${start}${word}` : `${line} ${word}`;
    if (line !== "" && longer.length > width) {
      lines.push(line);
      line = " ".repeat(indent) + word;
    } else line = longer;
  }
  return [...lines, line];
}
