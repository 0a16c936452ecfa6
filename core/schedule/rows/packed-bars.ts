import type { BarRow, TableReading } from "../bar-row";
import { Block, StoredBar } from "./stored-bar";
import { type PackedColumn, ValueColumn } from "./value-column";

/** The columns of a block, whose values few bars do not share. */
const COLUMNS = [
  ...[
    "mark",
    "member",
    "sizeTyped",
    "size",
    "grade",
    "shape",
    "pour",
    "revision",
    "remark",
    "remarks",
    "rare",
  ],
] as const satisfies readonly (keyof Block)[];

interface PackedBlock {
  readonly table: TableReading;
  readonly room: number;
  readonly figures: Block["figures"];
  readonly firstDim: Block["firstDim"];
  readonly dims: Block["dims"];
  readonly columns: readonly PackedColumn<unknown>[];
}

/** Bars as plain data that another thread can be given; their numbers stand in memory of both. */
export interface PackedBars {
  readonly blocks: readonly PackedBlock[];
  /** of each bar its block, and its place there */
  readonly places: Uint32Array;
}

/** no block has as many bars */
const IN_BLOCK = 32_768;

/** Null where a bar does not stand in a block. */
export function packBars(bars: readonly BarRow[]): PackedBars | null {
  const numbers = new Map<Block, number>();
  const places = new Uint32Array(bars.length);
  let last: Block | undefined;
  let first = 0;
  for (let at = 0; at < bars.length; at += 1) {
    const bar = bars[at];
    if (!(bar instanceof StoredBar)) return null;
    const { block } = bar;
    // the bars of a block mostly follow one another
    if (block !== last) {
      const number = numbers.get(block) ?? numbers.size;
      numbers.set(block, number);
      [last, first] = [block, number * IN_BLOCK];
    }
    places[at] = first + bar.place;
  }
  return { blocks: [...numbers.keys()].map(packBlock), places };
}

function packBlock(block: Block): PackedBlock {
  const { table, room, figures, firstDim, dims } = block;
  return { table, room, figures, firstDim, dims, columns: COLUMNS.map((name) => block[name].packed()) };
}

/** The bar of a place. */
export function unpackBars({ blocks, places }: PackedBars): (at: number) => BarRow {
  const unpacked = blocks.map(unpackBlock);
  return (at) => {
    const place = places[at] as number;
    return new StoredBar(unpacked[Math.floor(place / IN_BLOCK)] as Block, place % IN_BLOCK);
  };
}

function unpackBlock({ table, columns, room, ...numbers }: PackedBlock): Block {
  const block = new Block(table, 0);
  const named = COLUMNS.map((name, at) => [name, ValueColumn.of(columns[at] as PackedColumn<unknown>)]);
  return Object.assign(block, Object.fromEntries(named), numbers, { room });
}
