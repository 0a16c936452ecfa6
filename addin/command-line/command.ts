import type { GivenOptions, OptionDefinition } from "./read-options";
import type { Streams } from "./streams";

/** Exit codes that callers rely on: fine; something unsafe or unbendable found; input not read. */
export type ExitCode = 0 | 1 | 2;

export interface Command {
  readonly name: string;
  /** arguments and options, as the help shows them */
  readonly usage: string;
  readonly summary: string;
  readonly options: Readonly<Record<string, OptionDefinition>>;
  run(given: GivenOptions, streams: Streams): Promise<ExitCode>;
}
