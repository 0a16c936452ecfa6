import type { Cell } from "../../core/schedule/sheet";
import type { CorpusBar } from "./corpus-bar";
import type { CorpusSchedule } from "./corpus-schedule";

type Untidy = NonNullable<CorpusSchedule["untidy"]>;

/** One habit after another. */
export function allOf(...habits: readonly Untidy[]): Untidy {
  return (rows, headerRows) => habits.reduce((cells, habit) => habit(cells, headerRows), rows);
}

/** The header again, as at the top of each printed page. */
export function headerEvery(count: number, depth = 1): Untidy {
  return (rows, headerRows) =>
    rows.flatMap((row, at) => {
      const bar = at - headerRows;
      const again = bar > 0 && bar % count === 0 && bar < rows.length - headerRows;
      return again ? [...rows.slice(headerRows - depth, headerRows).map((head) => [...head]), row] : [row];
    });
}

export function blankRowEvery(count: number): Untidy {
  return (rows, headerRows) =>
    rows.flatMap((row, at) => (at > headerRows && (at - headerRows) % count === 0 ? [[], row] : [row]));
}

/** Numbers of one column kept as texts, some with an apostrophe's blank or a no-break space. */
export function textsIn(column: number, every = 1): Untidy {
  return changed(column, every, (cell) => (typeof cell === "number" ? ` ${cell}\u00A0` : cell));
}

/** The same cell as above written as a ditto mark. */
export function dittoIn(column: number, mark = "do"): Untidy {
  return (rows, headerRows) =>
    rows.map((row, at) =>
      at > headerRows && row[column] !== null && row[column] === rows[at - 1]?.[column]
        ? row.map((cell, place) => (place === column ? mark : cell))
        : row,
    );
}

/** A word behind the number of one column: "8 Nos". */
export function worded(column: number, word: string, every = 1): Untidy {
  return changed(column, every, (cell) => (typeof cell === "number" ? `${cell}${word}` : cell));
}

/** A remark in a row of its own under every so many bars. */
export function remarkRowEvery(count: number, column: number, remark: string): Untidy {
  return (rows, headerRows) =>
    rows.flatMap((row, at) => {
      const blank: Cell[] = row.map(() => null);
      blank[column] = remark;
      return at >= headerRows && (at - headerRows) % count === count - 1 ? [row, blank] : [row];
    });
}

/** The member as a heading row, and its own column empty. */
export function membersAsHeadings(column: number): Untidy {
  return (rows, headerRows) => {
    let last: Cell = null;
    return rows.flatMap((row, at) => {
      if (at < headerRows || row[column] === null) return [row];
      const bare = row.map((cell, place) => (place === column ? null : cell));
      if (row[column] === last) return [bare];
      last = row[column] ?? null;
      return [[last], bare];
    });
  };
}

/** Bars with some of their fields changed, by place. */
export function withMistakes(
  bars: readonly CorpusBar[],
  mistakes: Readonly<Record<number, Partial<CorpusBar>>>,
): CorpusBar[] {
  return bars.map((bar, place) => ({ ...bar, ...mistakes[place] }));
}

function changed(column: number, every: number, change: (cell: Cell) => Cell): Untidy {
  return (rows, headerRows) =>
    rows.map((row, at) =>
      at >= headerRows && (at - headerRows) % every === 0
        ? row.map((cell, place) => (place === column ? change(cell) : cell))
        : row,
    );
}
