import type { Standard } from "../standards/port";
import { isRefusal } from "../units/refusal";
import type { Shop, ShopStock } from "./shop";

/** Stock lines of the Shop sheet for this size and for every size; null where the sheet has none. */
export function stockOfSize(size: string, shop: Shop | null, standard: Standard): ShopStock[] | null {
  const lines = (shop?.stock ?? []).filter(
    (line) => line.size === null || isSameSize(line.size, size, standard),
  );
  return lines.length === 0 ? null : lines;
}

/** True where a size as the Shop sheet writes it is the wanted one: "16" on the Shop sheet serves H16; R16 does not. */
export function isSameSize(held: string, wanted: string, standard: Standard): boolean {
  const [one, other] = [standard.readSize(held), standard.readSize(wanted)];
  if (isRefusal(one) || isRefusal(other)) return held.trim().toLowerCase() === wanted.toLowerCase();
  const isSameLetter = one.prefix === "" || one.prefix.toUpperCase() === other.prefix.toUpperCase();
  return one.diameter === other.diameter && isSameLetter;
}
