import type { Machine } from "../../core/bending/machine";

/** The benders of the workbook's Shop sheet; undefined where it has none, so that any name is taken. */
type Machines = readonly Machine[] | undefined;

/** ms; one recalculation of any number of cells reads the sheet once */
const FRESH = 1_000;

let read: () => Promise<Machines> = async () => undefined;
let known: { readonly machines: Promise<Machines>; readonly until: number } | null = null;

/** Tells the functions how the workbook's benders are read. */
export function readMachinesBy(reader: () => Promise<Machines>): void {
  read = reader;
  known = null;
}

/** The Shop sheet says something else now; true where a function had asked what it says. */
export function forgetMachines(): boolean {
  const wereAsked = known !== null;
  known = null;
  return wereAsked;
}

/** The benders that a function which names a machine goes by. Rejects where the Shop sheet cannot be read. */
export function machinesKnown(now = Date.now()): Promise<Machines> {
  if (known === null || now > known.until) known = { machines: read(), until: now + FRESH };
  return known.machines;
}
