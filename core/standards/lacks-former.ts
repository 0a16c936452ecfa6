import type { Refusal } from "../units/refusal";

/** True of the refusal that a document holds no former at all, or none for the bar. */
export function lacksFormer({ code }: Refusal): boolean {
  return code === "formers-none" || code === "former-not-held";
}
