import type { Area } from "./area";
import type { SheetHome } from "./homes";
import { Range } from "./range";

/** A table, as far as reading one goes; it does not grow by itself. */
export class Table {
  readonly Id: string;
  Name: string;

  constructor(
    private readonly sheet: SheetHome,
    readonly area: Area,
    readonly ShowHeaders: boolean,
  ) {
    const number = sheet.book.nextId();
    this.Id = `{TABLE-${number}}`;
    this.Name = `Table${number}`;
  }

  get Worksheet(): SheetHome {
    return this.sheet;
  }

  GetRange(): Range {
    return new Range(this.sheet, this.area);
  }

  GetHeaderRowRange(): Range {
    return this.GetRange().GetRow(0);
  }

  GetDataBodyRange(): Range {
    return new Range(this.sheet, {
      ...this.area,
      row: this.area.row + 1,
      rows: Math.max(1, this.area.rows - 1),
    });
  }
}
