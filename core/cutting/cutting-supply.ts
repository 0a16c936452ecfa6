import type { Shop } from "../shop/shop";
import { soleCutter } from "../shop/sole-cutter";
import { stockOfSize } from "../shop/stock-of-size";
import type { LengthUnit, Standard } from "../standards/port";
import type { Stock } from "./cutting-question";
import { LEAST_REMNANT } from "./least-remnant.data";

/** What a yard cuts from, and what a cut takes. mm. */
export interface CuttingSupply {
  /**
   * Lines of stock for a size; null where none is named. The same line is the same object for every size
   * that it serves, so that its bars are shared.
   */
  linesOf(size: string): readonly Stock[] | null;
  readonly endCrop: number;
  readonly kerf: number;
  /** the shortest rest that goes back to the rack */
  readonly leastRemnant: number;
  /** unit that refusals name lengths in */
  readonly unit: LengthUnit;
  readonly notes: readonly string[];
}

/**
 * Stock as given, else the Shop sheet's for the size, else the standard's usual length. End crop and kerf
 * are the Shop sheet's where it names one cutter. A remnant without a size is of no known steel and is
 * left out; what is not known is said in a note.
 */
export function cuttingSupply(
  shop: Shop | null,
  standard: Standard,
  given: readonly Stock[] | null = null,
): CuttingSupply {
  const notes: string[] = [];
  const cutter = soleCutter(shop);
  if ((shop?.cutters.length ?? 0) > 1)
    notes.push("the Shop sheet names several cutters: no end crop or kerf is taken off");
  const held = given === null ? (shop?.stock ?? []) : [];
  const nameless = held.filter((line) => line.remnant && line.size === null);
  if (nameless.length > 0)
    notes.push(
      `remnants without a size are in no plan (${nameless.map(({ length }) => `${length} mm`).join(", ")}): write their size on the Shop sheet`,
    );
  if (held.some((line) => !line.remnant && line.size === null && line.count !== null))
    notes.push("stock with a count but no size on the Shop sheet is shared by all sizes");
  const usual = standard.supply.stockLength?.value ?? null;
  const usualLine = usual === null ? null : [{ length: usual, count: null, remnant: false }];
  return {
    linesOf(size) {
      if (given !== null) return given;
      const lines = stockOfSize(size, shop, standard)?.filter((line) => !nameless.includes(line)) ?? [];
      return lines.length > 0 ? lines : usualLine;
    },
    endCrop: cutter?.endCrop ?? 0,
    kerf: cutter?.kerf ?? 0,
    leastRemnant: shop?.limits.leastRemnant ?? LEAST_REMNANT.value,
    unit: standard.unit,
    notes,
  };
}
