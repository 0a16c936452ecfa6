import { parseArgs } from "node:util";
import { InputRefused } from "./input-refused";
import { didYouMean } from "./nearest-word";

export interface OptionDefinition {
  readonly type: "string" | "boolean";
  /** may be given several times */
  readonly multiple?: boolean;
}

export interface GivenOptions {
  readonly positionals: readonly string[];
  flag(name: string): boolean;
  text(name: string): string | null;
  /** every value of an option that may be given several times; null where it is not given */
  texts(name: string): readonly string[] | null;
}

/** A command's arguments; an unknown option or one without its value is refused. */
export function readOptions(
  args: readonly string[],
  options: Readonly<Record<string, OptionDefinition>>,
): GivenOptions {
  try {
    const { values, positionals } = parseArgs({
      args: withNegatives(args, options),
      options,
      allowPositionals: true,
      strict: true,
    });
    const given = new Map(Object.entries(values));
    return {
      positionals,
      flag: (name) => given.get(name) === true,
      text: (name) => {
        const value = given.get(name);
        return typeof value === "string" ? value : null;
      },
      texts: (name) => {
        const value = given.get(name);
        return Array.isArray(value) ? value.map(String) : null;
      },
    };
  } catch (error) {
    const unknown = /^Unknown option '--?([^']+)'/.exec(error instanceof Error ? error.message : "")?.[1];
    const near =
      unknown === undefined ? "" : didYouMean(unknown, Object.keys(options)).replace("mean ", "mean --");
    const reason = error instanceof Error ? (error.message.split(/[.\n]/)[0] ?? "") : String(error);
    throw new InputRefused(reason.replace(/^U/, "u").replace(/^O/, "o") + near);
  }
}

const NEGATIVE = /^-[\d.,]/;

/** A number below nought is a value, not another option: who refuses it names the limit. */
function withNegatives(
  args: readonly string[],
  options: Readonly<Record<string, OptionDefinition>>,
): string[] {
  const joined: string[] = [];
  for (const arg of args) {
    const before = joined.at(-1) ?? "";
    const isValue = NEGATIVE.test(arg) && options[before.replace(/^--/, "")]?.type === "string";
    if (isValue && before.startsWith("--")) joined[joined.length - 1] = `${before}=${arg}`;
    else joined.push(arg);
  }
  return joined;
}
