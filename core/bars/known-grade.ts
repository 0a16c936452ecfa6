import { KNOWN_GRADES } from "./known-grades.data";

/** letters that look alike in two alphabets */
const LATIN: Readonly<Record<string, string>> = {
  А: "A",
  В: "B",
  С: "C",
  Е: "E",
  І: "I",
  К: "K",
  Т: "T",
  Р: "P",
};

const KNOWN = new Set(KNOWN_GRADES.value);

/** A grade as KNOWN_GRADES has it: in Latin capitals, without spaces and hyphens. */
export function plainName(typed: string): string {
  return typed
    .toUpperCase()
    .replace(/[ -]/g, "")
    .replace(/./g, (letter) => LATIN[letter] ?? letter);
}

/** True of a grade that is known, by its plain name. */
export function isKnownName(name: string): boolean {
  return KNOWN.has(name);
}
