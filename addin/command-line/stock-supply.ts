import type { Stock } from "../../core/cutting";
import { type Shop, stockOfSize } from "../../core/shop";
import type { Standard } from "../../core/standards";
import { parseLength } from "../../core/units/parse-length";
import { isRefusal, refusalText } from "../../core/units/refusal";
import { InputRefused } from "./input-refused";
import type { Streams } from "./streams";

/** What is cut from, and what a cut takes. mm. */
export interface StockSupply {
  stockOf(size: string): Stock[];
  readonly endCrop: number;
  readonly kerf: number;
}

/**
 * Stock by the option, else by the Shop sheet for the size, else the standard's usual length. End crop and
 * kerf are the Shop sheet's where it names one cutter; a note says what is taken otherwise.
 */
export function stockSupply(
  option: string | null,
  shop: Shop | null,
  standard: Standard,
  streams: Streams,
): StockSupply {
  const given = option === null ? null : readLengths(option, standard);
  const cutter = shop?.cutters.length === 1 ? shop.cutters[0] : undefined;
  if ((shop?.cutters.length ?? 0) > 1)
    streams.note("the Shop sheet names several cutters: no end crop or kerf is taken off");
  return {
    stockOf: (size) => given ?? shopStock(size, shop, standard) ?? usualStock(standard),
    endCrop: cutter?.endCrop ?? 0,
    kerf: cutter?.kerf ?? 0,
  };
}

function readLengths(option: string, standard: Standard): Stock[] {
  return option.split(",").map((text) => {
    const length = parseLength(text.trim(), standard.unit);
    if (isRefusal(length)) throw new InputRefused(`--stock: ${refusalText(length)}`);
    return { length, count: null, remnant: false };
  });
}

function shopStock(size: string, shop: Shop | null, standard: Standard): Stock[] | null {
  return (
    stockOfSize(size, shop, standard)?.map(({ length, count, remnant }) => ({ length, count, remnant })) ??
    null
  );
}

function usualStock(standard: Standard): Stock[] {
  const held = standard.supply.stockLength;
  if (held === null) throw new InputRefused(`${standard.id} names no stock length: give --stock 12000,9000`);
  return [{ length: held.value, count: null, remnant: false }];
}
