/** ms; one recalculation of any number of cells reads the workbook once */
const FRESH = 1_000;

/** What functions ask of the workbook: read when it is asked for, and not again in the same recalculation. */
export interface ReadOnce<T> {
  /** Tells how it is read. */
  readBy(reader: () => Promise<T>): void;
  /** The workbook says something else now; true where a function had asked. */
  forget(): boolean;
  /** Rejects where it cannot be read. */
  known(now?: number): Promise<T>;
}

/** @param reader what is read until somebody tells how */
export function readOnce<T>(reader: () => Promise<T>): ReadOnce<T> {
  let read = reader;
  let kept: { readonly value: Promise<T>; readonly until: number } | null = null;
  const forget = (): boolean => {
    const wasAsked = kept !== null;
    kept = null;
    return wasAsked;
  };
  return {
    readBy(by) {
      read = by;
      forget();
    },
    forget,
    known(now = Date.now()) {
      if (kept === null || now > kept.until) kept = { value: read(), until: now + FRESH };
      return kept.value;
    },
  };
}
