import type { ScheduleReading } from "./bar-row";

/** What a schedule calls itself, as far as its sheet says. */
export interface ScheduleHead {
  readonly job: string | null;
  readonly schedule: string | null;
  readonly drawing: string | null;
  readonly revision: string | null;
  /** as the sheet writes it */
  readonly date: string | null;
}

const WORDS: Readonly<Record<keyof ScheduleHead, readonly string[]>> = {
  job: ["job", "project", "contract", "job no", "job number", "contract no", "site ref", "site reference"],
  schedule: [
    "schedule ref",
    "schedule no",
    "schedule reference",
    "schedule number",
    "bar schedule no",
    "bar schedule ref",
    "bar bending schedule no",
    "bending schedule no",
    "bbs no",
    "bar schedule",
    "bbs",
    "schedule",
  ],
  drawing: [
    ...["drawing no", "drawing number", "drawing", "dwg no", "dwg", "plan nr", "plan no", "no plan"],
    ...[
      "plan",
      "plano no",
      "plano",
      "tavola",
      "disegno",
      "tegning",
      "ritning",
      "rysunek",
      "desenho",
      "tekening",
    ],
  ],
  revision: [
    ...["revision", "rev", "rev letter", "revision no", "rev no"],
    ...["index", "indice", "revisione", "revisao", "revisie", "rewizja"],
  ],
  date: ["date", "date prepared", "date of revision", "revision date", "rev date"],
};

/** Job, schedule, drawing, revision and date out of the title block; null for what is not there. */
export function scheduleHead(reading: ScheduleReading): ScheduleHead {
  const fact = (words: readonly string[]): string | null => {
    for (const word of words) {
      const value = reading.titleFacts?.get(word)?.trim();
      if (value !== undefined && value !== "") return value;
    }
    return null;
  };
  return {
    job: fact(WORDS.job),
    schedule: fact(WORDS.schedule),
    drawing: fact(WORDS.drawing),
    revision: fact(WORDS.revision),
    date: fact(WORDS.date),
  };
}
