import type { Shop } from "../shop/shop";
import { soleCutter } from "../shop/sole-cutter";
import type { Citation, Cited } from "../standards/citation";
import type { Standard } from "../standards/port";
import { greatest } from "../units/extremes";
import { isRefusal } from "../units/refusal";
import { type DecidedBy, decidedWords } from "./decided-words";
import { OF_SHOP_SHEET } from "./practice.data";

/** Figures a workbook may change. Null takes the standard's own, or leaves the question unasked. */
export interface Limits {
  /** kg of one bar above which it is not lifted by hand alone */
  readonly handLift: number | null;
  /** kg of one bar that crane or hoist may lift */
  readonly hoist: number | null;
  /** mm */
  readonly stockLength: number | null;
  /** mm, shorter side of the rectangle round a bent bar */
  readonly transportWidth: number | null;
  /** mm, the opening on site that a bent bar must pass */
  readonly accessWidth: number | null;
}

export const NO_CHANGED_LIMITS: Readonly<Record<keyof Limits, null>> = {
  handLift: null,
  hoist: null,
  stockLength: null,
  transportWidth: null,
  accessWidth: null,
};

/** A limit that somebody set for this workbook; see audit-settings.ts. */
export interface ChangedLimit extends DecidedBy {
  readonly value: number;
}

export type ChangedLimits = Readonly<Record<keyof Limits, ChangedLimit | null>>;

function citeOfChange(limit: ChangedLimit): Citation {
  return {
    document: `limit changed in this workbook (${decidedWords(limit)})`,
    provenance: "own",
  };
}

const HAND_LIFT: Cited<number> = {
  value: 25,
  cite: {
    document: "HSE manual handling guideline figure, a filter and no safe weight",
    provenance: "memory",
    conflict: "16 to 55 kg by country and person",
  },
};

/** The limits in force, each with where it comes from; null where nothing says one. */
export interface LimitsInForce {
  readonly handLift: Cited<number>;
  readonly hoist: Cited<number> | null;
  /** mm, the longest stock length for a bar of this diameter */
  stockLengthOf(diameter: number): Cited<number> | null;
  /** mm taken off each stock bar before the first piece */
  readonly endCrop: number;
  /** mm, the longest bar that the yard's own lorry takes; null where its Shop sheet names none */
  readonly lorryLength: Cited<number> | null;
  readonly transportWidth: Cited<number> | null;
  readonly accessWidth: Cited<number> | null;
}

/** The workbook's own setting first, then what its Shop sheet says, then the standard. */
export function limitsInForce(
  changed: ChangedLimits,
  standard: Standard,
  shop: Shop | null = null,
): LimitsInForce {
  const ofShop = shop?.limits ?? null;
  return {
    handLift: own(changed.handLift) ?? written(ofShop?.handLift) ?? HAND_LIFT,
    hoist: own(changed.hoist) ?? written(ofShop?.hoist),
    stockLengthOf: stockLengthOf(changed, standard, shop),
    // who sets a length for the workbook means that of the bar
    endCrop: changed.stockLength === null ? (soleCutter(shop)?.endCrop ?? 0) : 0,
    lorryLength: written(ofShop?.lorryLength),
    transportWidth:
      own(changed.transportWidth) ?? written(ofShop?.transportWidth) ?? standard.supply.transportWidth,
    accessWidth: own(changed.accessWidth),
  };
}

function own(limit: ChangedLimit | null): Cited<number> | null {
  return limit === null ? null : { value: limit.value, cite: citeOfChange(limit) };
}

function written(value: number | null | undefined): Cited<number> | null {
  return value === null || value === undefined ? null : { value, cite: OF_SHOP_SHEET };
}

/** By diameter; a row of the Shop sheet without a size serves every size, and remnants are no stock length. */
function stockLengthOf(
  changed: ChangedLimits,
  standard: Standard,
  shop: Shop | null,
): LimitsInForce["stockLengthOf"] {
  const set = own(changed.stockLength);
  if (set !== null) return () => set;
  const rows = (shop?.stock ?? []).filter(({ remnant }) => !remnant);
  if (rows.length === 0) return () => standard.supply.stockLength;
  const bySize = rows.map(({ size, length }) => {
    const reading = size === null ? null : standard.readSize(size);
    return { length, diameter: reading === null || isRefusal(reading) ? null : reading.diameter };
  });
  return (diameter) => {
    const serving = bySize.filter((row) => row.diameter === null || row.diameter === diameter);
    if (serving.length === 0) return standard.supply.stockLength;
    return written(greatest(serving.map(({ length }) => length)));
  };
}
