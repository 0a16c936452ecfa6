import type { OwnStandard } from "../../core/standards";

/** What the workbook's sheet Standard says; undefined where it has none. */
type Own = OwnStandard | undefined;

/** ms; one recalculation of any number of cells reads the sheet once */
const FRESH = 1_000;

let read: () => Promise<Own> = async () => undefined;
let known: { readonly own: Promise<Own>; readonly until: number } | null = null;

/** Tells the functions how the sheet Standard is read. */
export function readOwnBy(reader: () => Promise<Own>): void {
  read = reader;
  known = null;
}

/** The sheet says something else now; true where a function had asked what it says. */
export function forgetOwn(): boolean {
  const wasAsked = known !== null;
  known = null;
  return wasAsked;
}

/** What every function goes by. Rejects where the sheet cannot be read. */
export function ownKnown(now = Date.now()): Promise<Own> {
  if (known === null || now > known.until) known = { own: read(), until: now + FRESH };
  return known.own;
}
