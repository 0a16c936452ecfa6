import type { TicketBend, TicketHeat } from "./ticket";

/** That the angles rest on bars of another heat than these, or may; null where none of them does. */
export function otherHeatWords(
  bends: readonly Pick<TicketBend, "compensated">[],
  heats: readonly TicketHeat[],
): string | null {
  const given = bends.filter(({ compensated }) => compensated.angle !== null);
  const tried = distinct(given.flatMap(({ compensated }) => compensated.trials.map(({ heat }) => heat)));
  if (tried.length === 0) return null;
  const own = distinct(heats.map(({ heat }) => heat));
  const others = own.filter((heat) => !tried.includes(heat));
  const from = `the angles rest on trials of heat ${tried.join(" and ")}`;
  if (own.length === 0)
    return `${from}, and the heat of these bars is not known: if it is another, bend one bar of it first`;
  return others.length === 0
    ? null
    : `${from}, and these bars are of heat ${others.join(" and ")}: bend one bar of this heat first, measure it and log it`;
}

function distinct(heats: readonly (string | null)[]): string[] {
  return [...new Set(heats.flatMap((heat) => heat?.trim() || []))];
}
