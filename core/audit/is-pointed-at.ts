import type { AuditSettings } from "./audit-settings";

const LETTERS = /^[A-Z]{1,3}$/i;

/** Columns called by their letters stand as they are: such a sheet is not turned to have its bars in rows. */
export function isPointedAt({ readings }: Pick<AuditSettings, "readings">, sheet: string): boolean {
  const own = readings.find((reading) => reading.sheet === sheet);
  return own?.columns?.some(({ column }) => LETTERS.test(column)) === true;
}
