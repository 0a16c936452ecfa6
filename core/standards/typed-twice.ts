import type { HeldTable } from "./held-tables";
import { TYPED_TWICE } from "./typed-twice.data";

const NAMES = new Set(TYPED_TWICE);

/** The name under which a published table was typed twice; null where it was not. */
export function nameTypedTwice(standard: string, { what, cite }: HeldTable): string | null {
  const plain = `${standard}, ${what}`;
  return [`${plain}, ${cite.clause ?? cite.document}`, plain].find((name) => NAMES.has(name)) ?? null;
}
