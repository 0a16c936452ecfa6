import { setFlagsFromString } from "node:v8";

/** Bytes of a packed file from which a run is long enough for all that the engine can do for it. */
const LARGE = 16 * 1024 * 1024;
/** The engine that knows the option; another would say that it does not. */
const KNOWN_BY = /^v2[0-4]\./;

/**
 * Has the engine fold fewer functions into one another where one book of moderate size is read: it would compile for
 * a third of the run, and be through before half of that pays.
 */
export function foldLess(fileSize: number): void {
  if (fileSize < LARGE && KNOWN_BY.test(process.version))
    setFlagsFromString("--max-inlined-bytecode-size-cumulative=200");
}
