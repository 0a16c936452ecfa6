import { BEGINS, NOTE_PARTS, plainNote, saidOnce } from "./note-texts";
import type { SheetFacts } from "./sheet-facts";
import { STATED_FORMERS } from "./stated-formers.data";
import { namedInText } from "./stray-grades";

/** Diameters of the bar that formers have at least: of all bars, and of those that are thicker than a size. */
export interface StatedFormers {
  readonly all: number;
  readonly thick: number;
  /** mm: bars beyond it are thick ones; infinite where all bars are alike */
  readonly beyond: number;
}

const { words, least, most, thinnest, thickest, longest } = STATED_FORMERS.value;
const FORMERS = new RegExp(`${BEGINS}(?:${words.join("|")})`, "u");
const FIGURE = /(?<![\d.,\p{L}])(\d{1,2}(?:[.,]\d)?)(?:\s?(d[bs]?|\u00f8)(?![\p{L}\d]))?(?![.,]?\d)/gu;
const NUMBER_OF_SIZE = /[\u00f8dh<>=\u2264\u2265]\s?(\d{1,2})(?![\d.,]\d|\d)/gu;

/** What one part of one title or note says of formers, and its cell; null where none or several do. */
export function statedFormers(sheet: SheetFacts): (StatedFormers & { readonly cell: string }) | null {
  return saidOnce(sheet, formersIn);
}

/**
 * What the parts of a note say of formers: two multiples, the greater of which is that of bars beyond every size that
 * stands beside them, or one for all.
 *
 * @example formersIn("Formers: 4d up to 16, 7d above") // [{ all: 4, thick: 7, beyond: 16 }]
 */
export function formersIn(note: string): readonly StatedFormers[] {
  if (!/\p{Nd}/u.test(note)) return [];
  return note.split(NOTE_PARTS).flatMap((part): StatedFormers[] => {
    const plain = part.length > longest ? "" : plainNote(part);
    // what one steel is bent about is not that of all
    if (!FORMERS.test(plain) || namedInText(part).some(({ isKnown }) => isKnown)) return [];
    const figures = [...plain.matchAll(FIGURE)].map(([, typed = "", sign]) => ({
      number: Number(typed.replace(",", ".")),
      isMultiple: sign !== undefined,
    }));
    const multiples = figures.flatMap(({ number, isMultiple }) =>
      isMultiple && number >= least && number <= most ? number : [],
    );
    const sizes = [
      ...figures.flatMap(({ number, isMultiple }) => (isMultiple ? [] : number)),
      ...[...plain.matchAll(NUMBER_OF_SIZE)].map(([, typed]) => Number(typed)),
    ].filter((number) => number >= thinnest && number <= thickest);
    const [all, thick, another] = [...new Set(multiples)].sort((one, other) => one - other);
    if (all === undefined || another !== undefined) return [];
    if (thick === undefined) return sizes.length > 0 ? [] : [{ all, thick: all, beyond: Infinity }];
    return sizes.length === 0 ? [] : [{ all, thick, beyond: Math.max(...sizes) }];
  });
}
