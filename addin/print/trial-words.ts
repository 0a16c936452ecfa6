import type { TicketAngle } from "../../core/tickets";

/**
 * What a compensated angle rests on, in words: trials, machine, heats and dates.
 *
 * @example // "3 trials on Bench 2, heats A7 and B1, 2031-02-03 to 2031-02-05"
 */
export function trialWords({ trials, otherTrials, angle, doubtedTrials }: TicketAngle): string {
  if (trials.length === 0) {
    return angle === null
      ? "no trial of this bar"
      : `no trial of this bar, ${otherTrials} of other sizes and formers: check one bar`;
  }
  const distinct = (pick: (trial: (typeof trials)[number]) => string | null): string[] =>
    [...new Set(trials.map(pick))].filter((text) => text !== null);
  const machines = distinct(({ machine }) => machine);
  const heats = distinct(({ heat }) => heat);
  const dates = distinct(({ date }) => date);
  const when = dates.length > 1 ? `${dates[0]} to ${dates.at(-1)}` : (dates[0] ?? "no date");
  return [
    `${trials.length} ${trials.length === 1 ? "trial" : "trials"}${machines.length > 0 ? ` on ${machines.join(", ")}` : ""}`,
    heats.length === 0
      ? "heat not written down"
      : `${heats.length === 1 ? "heat" : "heats"} ${heats.join(" and ")}`,
    when,
    ...(doubtedTrials === 0 ? [] : [doubtedWords(doubtedTrials, trials.length)]),
  ].join(", ");
}

function doubtedWords(doubted: number, all: number): string {
  const one = doubted === 1 ? "does" : "do";
  const which = doubted === all ? `which ${one}` : `of which ${doubted} ${one}`;
  return `${which} not fit: measure again, and bend one bar first`;
}
