import { InputRefused } from "./input-refused";
import type { GivenOptions } from "./read-options";
import { isSameFile, spelling } from "./write-copy";

/** Options that name a file to be written. */
const WRITTEN = ["out", "labels", "chart"];
/** Options that name a file to be read, besides the books, which each command looks at itself. */
const READ = ["own"];

/** Refuses two results that would be one file, and one that would take the place of a file that is read. */
export function refuseTargetsInOne(given: GivenOptions): void {
  const named = (options: readonly string[]) =>
    options.flatMap((option) => {
      const path = given.text(option);
      return path === null ? [] : [{ option, path }];
    });
  const before = named(READ);
  for (const target of named(WRITTEN)) {
    const other = before.find(({ path }) => isOneFile(path, target.path));
    if (other !== undefined)
      throw new InputRefused(
        `--${target.option} ${target.path} is the file that --${other.option} names: name another file`,
      );
    before.push(target);
  }
}

const isOneFile = (one: string, other: string): boolean =>
  isSameFile(one, other) || spelling(one) === spelling(other);
