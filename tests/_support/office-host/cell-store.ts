import { type Area, contains, MAX_COLUMNS } from "./area";
import { HostError } from "./host-error";
import { type CellValue, typedText } from "./typed-text";

/** One cell as the fake host keeps it. */
export interface StoredCell {
  readonly value: CellValue;
  /** with its equals sign; empty where the cell holds no formula */
  readonly formula: string;
  readonly format: string;
  readonly fill: string;
  readonly bold: boolean;
  readonly strikethrough: boolean;
  readonly locked: boolean;
}

const BLANK: StoredCell = {
  value: "",
  formula: "",
  format: "General",
  fill: "",
  bold: false,
  strikethrough: false,
  locked: true,
};

/** The cells of one sheet. Every change is told to `journal`, which can take it back. */
export class CellStore {
  private readonly cells = new Map<number, StoredCell>();

  constructor(private readonly journal: (takeBack: () => void) => void) {}

  at(row: number, column: number): StoredCell {
    return this.cells.get(row * MAX_COLUMNS + column) ?? BLANK;
  }

  change(row: number, column: number, change: Partial<StoredCell>): void {
    const key = row * MAX_COLUMNS + column;
    const before = this.cells.get(key);
    this.journal(() => (before === undefined ? this.cells.delete(key) : this.cells.set(key, before)));
    this.cells.set(key, { ...(before ?? BLANK), ...change });
  }

  /** Writes as the API does: a text goes through Excel's reading of typed text unless the cell is text. */
  write(row: number, column: number, value: unknown, calculate: (formula: string) => CellValue): void {
    const isText = this.at(row, column).format === "@";
    if (typeof value !== "string" || value === "") {
      if (!["string", "number", "boolean"].includes(typeof value)) {
        throw new HostError("InvalidArgument", `fake host: a cell cannot hold ${JSON.stringify(value)}`);
      }
      this.change(row, column, { value: isText ? String(value) : (value as CellValue), formula: "" });
    } else if (isText) {
      this.change(row, column, { value, formula: "" });
    } else if (/^[=+@-]/.test(value) && !/^[+-][\d.,]+$/.test(value)) {
      const formula = value.startsWith("=") ? value : `=${value}`;
      this.change(row, column, { value: calculate(formula), formula });
    } else {
      this.change(row, column, { formula: "", ...typedText(value) });
    }
  }

  clear(area: Area): void {
    for (const key of [...this.cells.keys()]) {
      const [row, column] = [Math.floor(key / MAX_COLUMNS), key % MAX_COLUMNS];
      if (contains(area, row, column)) {
        const before = this.cells.get(key) as StoredCell;
        this.journal(() => this.cells.set(key, before));
        this.cells.delete(key);
      }
    }
  }

  /** The block round every kept cell; `valuesOnly` leaves out cells that are only formatted. */
  used(valuesOnly: boolean): Area | null {
    let [top, left, bottom, right] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, -1, -1];
    for (const [key, cell] of this.cells) {
      if (valuesOnly && cell.value === "" && cell.formula === "") continue;
      const [row, column] = [Math.floor(key / MAX_COLUMNS), key % MAX_COLUMNS];
      top = Math.min(top, row);
      left = Math.min(left, column);
      bottom = Math.max(bottom, row);
      right = Math.max(right, column);
    }
    return bottom < 0 ? null : { row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 };
  }

  entries(): [number, StoredCell][] {
    return [...this.cells.entries()];
  }

  restore(entries: readonly [number, StoredCell][]): void {
    for (const [key, cell] of entries) this.cells.set(key, cell);
  }
}

/** A cell's text as its number format shows it; only the formats that the tests write are known. */
export function shownText(cell: StoredCell): string {
  if (typeof cell.value === "boolean") return cell.value ? "TRUE" : "FALSE";
  if (typeof cell.value === "string" || cell.format === "General" || cell.format === "@") {
    return String(cell.value);
  }
  if (isDateFormat(cell.format)) return dateText(cell.value, cell.format);
  const brackets = /^\((0+)\)$/.exec(cell.format);
  if (brackets !== null) return `(${cell.value})`;
  const zeros = /^(0+)$/.exec(cell.format);
  if (zeros !== null) return String(Math.round(cell.value)).padStart(cell.format.length, "0");
  if (cell.format === "#,##0") return Math.round(cell.value).toLocaleString("en-US");
  if (cell.format === "0.00E+00") return cell.value.toExponential(2).replace(/e([+-])(\d)$/, "E$10$2");
  if (cell.format === "0%") return `${Math.round(cell.value * 100)}%`;
  return `${cell.value}`;
}

function isDateFormat(format: string): boolean {
  return /[dy]/i.test(format.replace(/"[^"]*"|\[[^\]]*\]/g, ""));
}

function dateText(serial: number, format: string): string {
  const date = new Date((serial - 25_569) * 86_400_000);
  const month = date.toLocaleString("en-US", { month: "short", timeZone: "UTC" });
  if (format === "d-mmm") return `${date.getUTCDate()}-${month}`;
  return `${date.getUTCMonth() + 1}/${date.getUTCDate()}/${date.getUTCFullYear()}`;
}
