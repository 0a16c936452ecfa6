import { existsSync, writeFileSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { InputRefused } from "./input-refused";

/** Refuses a copy that would take its original's place, or has no folder to lie in. */
export function refuseTarget(path: string, out: string): void {
  if (resolve(path) === resolve(out))
    throw new InputRefused("--out names the book itself: name another file");
  if (!existsSync(dirname(resolve(out))))
    throw new InputRefused(`there is no folder ${dirname(out)} to write to`);
}

export function writeCopy(path: string, bytes: Uint8Array): void {
  try {
    writeFileSync(path, bytes);
  } catch (error) {
    throw new InputRefused(`${path} cannot be written (${(error as NodeJS.ErrnoException).code})`);
  }
}
