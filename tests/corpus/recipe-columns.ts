import type { Cell } from "../../core/schedule/sheet";
import type { CorpusBar } from "./corpus-bar";
import type { RecipeColumn } from "./corpus-schedule";

/** Writes a length of mm into a cell as the practice does. */
export type WrittenLength = (mm: number) => Cell;

/** A column that holds one field of the bar as it is. */
export function field(key: keyof CorpusBar, head: RecipeColumn["head"]): RecipeColumn {
  return { key, head, value: (bar) => bar[key] as Cell };
}

/** The columns of the dims, the first under the first head. */
export function dimColumns(
  heads: readonly RecipeColumn["head"][],
  written: WrittenLength = (mm) => mm,
): RecipeColumn[] {
  return heads.map((head, place) => ({
    key: `dims.${place}`,
    head,
    value: ({ dims }) => {
      const dim = dims[place] ?? null;
      return typeof dim === "number" ? written(dim) : dim;
    },
  }));
}

/** The length of one bar. */
export function lengthColumn(head: RecipeColumn["head"], written: WrittenLength = (mm) => mm): RecipeColumn {
  return {
    key: "length",
    head,
    value: ({ length }) => (typeof length === "number" ? written(length) : length),
  };
}

export function serialColumn(head: RecipeColumn["head"]): RecipeColumn {
  return { key: "serial", head, value: (_, index) => index + 1 };
}

/** The member in the first of its rows only. */
export function memberOnce(head: RecipeColumn["head"], bars: readonly CorpusBar[]): RecipeColumn {
  return {
    key: "member",
    head,
    value: ({ member }, index) => (bars[index - 1]?.member === member ? null : member),
  };
}

/** Mass in another unit: kg divided by `per`, rounded to so many decimals. */
export function massColumn(head: RecipeColumn["head"], decimals = 2, per = 1): RecipeColumn {
  return {
    key: "mass",
    head,
    value: ({ mass }) => (mass === null ? null : Number((mass / per).toFixed(decimals))),
  };
}
