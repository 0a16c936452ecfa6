import type { Cell } from "../schedule/sheet";
import type { ShopColumn } from "../shop/find-sections";
import { SHOP_COLUMNS, SHOP_LIMITS, SHOP_TRIAL_COLUMNS } from "../shop/shop-words.data";

/** What an example's Shop sheet says otherwise than the usual bender. */
export interface ExampleShop {
  readonly bender?: Readonly<Partial<Record<ShopColumn, Cell>>>;
  readonly secondBender?: Readonly<Partial<Record<ShopColumn, Cell>>>;
  /** machine, work, size, grade, bars */
  readonly plates?: readonly (readonly Cell[])[];
  readonly limits?: Readonly<Partial<Record<keyof typeof SHOP_LIMITS, Cell>>>;
  /** date, machine, size, former, grade, form, heat, bent to, released */
  readonly trials?: readonly (readonly Cell[])[];
}

const BENDER: Readonly<Partial<Record<ShopColumn, Cell>>> = {
  machine: "Bench 2",
  largestAngle: 200,
  guardRadius: 4000,
  orbitRadius: 130,
  backRestDistance: 100,
  pins: 40,
  formers: "40, 48, 64, 140",
};
const PLATES: ExampleShop["plates"] = [["Bench 2", "bend", "H20", 500, 2]];
const BENDER_COLUMNS = Object.keys(BENDER) as ShopColumn[];
const PLATE_COLUMNS: readonly ShopColumn[] = ["machine", "work", "size", "yield", "bars"];

/** The rows of a small Shop sheet with one bender, its plate, and what is given besides. */
export function exampleShop(given: ExampleShop = {}): readonly (readonly Cell[])[] {
  const benders = [{ ...BENDER, ...given.bender }];
  if (given.secondBender !== undefined) benders.push({ ...BENDER, ...given.secondBender });
  const rows: (readonly Cell[])[] = [heads(BENDER_COLUMNS)];
  for (const bender of benders) rows.push(BENDER_COLUMNS.map((column) => bender[column] ?? null));
  rows.push([], heads(PLATE_COLUMNS), ...(given.plates ?? PLATES ?? []));
  if (given.limits !== undefined) {
    rows.push([], heads(["limit", "value"]));
    for (const [name, value] of Object.entries(given.limits)) {
      rows.push([SHOP_LIMITS[name as keyof typeof SHOP_LIMITS][0], value]);
    }
  }
  if (given.trials !== undefined) rows.push([], SHOP_TRIAL_COLUMNS, ...given.trials);
  return rows;
}

function heads(columns: readonly ShopColumn[]): readonly string[] {
  return columns.map((column) => SHOP_COLUMNS[column][0]);
}
