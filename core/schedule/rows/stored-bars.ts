import type { BarRow, TableReading } from "../bar-row";
import type { DraftRow } from "./row-draft";
import { Block, FIGURES, Figure, isRare, rareOf, roomForDims, StoredBar } from "./stored-bar";

/** bars of the first block */
const FEWEST = 16;
const MOST = 16_384;

/**
 * Keeps the bars of one table field by field: a fraction of what an object with all fields takes, and
 * nothing that the memory's tidying has to move.
 */
export class StoredBars {
  #block: Block | null = null;
  #next = FEWEST;

  constructor(private readonly table: TableReading) {}

  /** The bar, of which nothing but `table` is kept. */
  keep(bar: Omit<BarRow, "table">): DraftRow {
    const block = this.#blockWithRoom();
    const place = block.count;
    block.count += 1;
    block.member.set(place, bar.member);
    block.mark.set(place, bar.mark);
    block.sizeTyped.set(place, bar.sizeTyped);
    block.size.set(place, bar.size);
    block.grade.set(place, bar.grade);
    block.shape.set(place, bar.shape);
    block.pour.set(place, bar.pour);
    block.revision.set(place, bar.revision);
    block.remark.set(place, bar.remark);
    block.remarks.set(place, bar.remarks ?? null);
    const first = place * FIGURES;
    block.figures[first + Figure.Row] = bar.row;
    block.figures[first + Figure.Members] = bar.members ?? Number.NaN;
    block.figures[first + Figure.Each] = bar.each ?? Number.NaN;
    block.figures[first + Figure.Total] = bar.total ?? Number.NaN;
    block.figures[first + Figure.Length] = bar.length ?? Number.NaN;
    block.figures[first + Figure.Mass] = bar.mass ?? Number.NaN;
    block.figures[first + Figure.Former] = bar.former ?? Number.NaN;
    block.figures[first + Figure.Radius] = bar.radius ?? Number.NaN;
    block.figures[first + Figure.TotalLength] = bar.totalLength ?? Number.NaN;
    keepDims(block, place, bar.dims);
    if (isRare(bar)) block.rare.set(place, rareOf(bar));
    return new StoredBar(block, place);
  }

  #blockWithRoom(): Block {
    if (this.#block === null || this.#block.count === this.#block.room) {
      this.#block = new Block(this.table, this.#next);
      this.#next = Math.min(MOST, this.#next * 2);
    }
    return this.#block;
  }
}

function keepDims(block: Block, place: number, dims: readonly (number | null)[]): void {
  const from = block.firstDim[place] as number;
  const until = from + dims.length;
  if (until > block.dims.length) {
    const more = roomForDims(Math.max(until, block.dims.length * 2));
    more.set(block.dims);
    block.dims = more;
  }
  for (let at = 0; at < dims.length; at += 1) block.dims[from + at] = dims[at] ?? Number.NaN;
  block.firstDim[place + 1] = until;
}
