import { isAsked, isHold, type Ticket } from "./ticket";

/** What keeps the bars of a row from being passed on without a word, each in a sentence. */
export interface TicketHolds {
  /** not to be made until somebody clears it */
  readonly held: readonly string[];
  /** perhaps unsafe or unbendable: to be asked about first */
  readonly asked: readonly string[];
  /** unsafe or unbendable, and not told because somebody said so */
  readonly waived: readonly string[];
}

/** Holds, questions and waivers of a row, for every list that names its bars. */
export function holdsOfTicket({ warnings, waived }: Pick<Ticket, "warnings" | "waived">): TicketHolds {
  return {
    held: warnings.filter(isHold).map(({ text }) => text),
    asked: warnings.filter(isAsked).map(({ severity, text }) => `perhaps ${severity}: ${text}`),
    waived: waived
      .filter(({ severity }) => severity === "unsafe" || severity === "unbendable")
      .map(({ text }) => text),
  };
}

/** " HOLD" behind the name of a bar that is not to be made, " (ask first)", " (waived)", or nothing. */
export function holdMark({ held, asked, waived }: TicketHolds): string {
  if (held.length > 0) return " HOLD";
  if (asked.length > 0) return " (ask first)";
  return waived.length > 0 ? " (waived)" : "";
}
