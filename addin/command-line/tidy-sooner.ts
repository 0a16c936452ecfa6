import { setFlagsFromString } from "node:v8";

/** Bytes of a packed file from which memory counts for more than the time that tidying it takes. */
const LARGE = 4 * 1024 * 1024;
/** The engine that knows the option; another would say that it does not. */
const KNOWN_BY = /^v2[0-4]\./;

/** Has the engine tidy its memory whenever it grew by a fifth, where it would else wait until it is several times as large. */
export function tidySooner(fileSize: number): void {
  if (fileSize > LARGE) growBy(20);
}

/** While a large file is read hardly anything can be forgotten, and tidying would be in vain: until `tidySooner` again. */
export function tidyLater(fileSize: number): void {
  if (fileSize > LARGE) growBy(60);
}

function growBy(percent: number): void {
  if (KNOWN_BY.test(process.version)) setFlagsFromString(`--heap-growing-percent=${percent}`);
}
