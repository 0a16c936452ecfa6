import type { Sheet } from "../../schedule/sheet";
import type { Workshop } from "../../shop/workshop";
import { registerOf, type ScheduleRegister } from "./schedule-register";

/** Sizes that are held in stock, as a sheet says it. */
export interface SizesHeld {
  readonly book: string;
  readonly sheet: string;
  /** as written */
  readonly sizes: readonly string[];
}

/** What a book says of its job beside its schedules. */
export interface JobPapers {
  readonly registers: readonly ScheduleRegister[];
  readonly held: readonly SizesHeld[];
}

/** "Bar sizes held in stock for this job: H10, H12, H16 (12 m)." */
const HELD =
  /\bsizes?\b[^:;.]*\b(?:stock|stocked|held|kept)\b[^:;.]*:\s*([^.]+)|\bstock sizes?\s*:\s*([^.]+)/i;
const SIZE = /^#?[A-Z]{0,3}\s?\d{1,2}M?$/i;
const FEWEST_SIZES = 2;
const LONGEST_NOTE = 500;

/** Registers, and sizes in stock, on sheets of a book that are no schedules, and stock lines of its Shop sheet. */
export function jobPapers(
  book: string,
  sheets: readonly Sheet[],
  { sheet: shop, shop: yard }: Workshop,
): JobPapers {
  const others = sheets.filter((sheet) => sheet !== shop);
  const bought = yard.stock.filter(({ remnant }) => !remnant);
  const sizes = [...new Set(bought.flatMap(({ size }) => size ?? []))];
  const ofShop =
    shop === null || sizes.length === 0 || bought.some(({ size }) => size === null)
      ? []
      : [{ book, sheet: shop.name, sizes }];
  return {
    registers: others.flatMap((sheet) => registerOf(book, sheet) ?? []),
    held: [...ofShop, ...others.flatMap((sheet) => sizesNoted(book, sheet))],
  };
}

function sizesNoted(book: string, sheet: Sheet): SizesHeld[] {
  for (let row = 0; row < sheet.rowCount; row += 1) {
    for (let column = 0; column < sheet.columnCount; column += 1) {
      const text = sheet.cell(row, column);
      if (typeof text !== "string" || text.length > LONGEST_NOTE) continue;
      const said = HELD.exec(text.replace(/\([^)]*\)/g, ""));
      const words = (said?.[1] ?? said?.[2] ?? "").split(/,|\band\b/).map((word) => word.trim());
      const sizes = words.filter((word) => SIZE.test(word));
      if (sizes.length >= FEWEST_SIZES) return [{ book, sheet: sheet.name, sizes }];
    }
  }
  return [];
}

/** The papers of all books of a job as one. */
export function allPapers(books: readonly { readonly papers: JobPapers }[]): JobPapers {
  return {
    registers: books.flatMap(({ papers }) => papers.registers),
    held: books.flatMap(({ papers }) => papers.held),
  };
}
