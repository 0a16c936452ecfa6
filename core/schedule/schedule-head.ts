import type { ScheduleReading } from "./bar-row";
import { TITLE_WORDS } from "./cells/title-words.data";

/** What a schedule calls itself, as far as its sheet says. */
export interface ScheduleHead {
  readonly job: string | null;
  readonly schedule: string | null;
  readonly drawing: string | null;
  readonly revision: string | null;
  /** as the sheet writes it */
  readonly date: string | null;
}

/** Job, schedule, drawing, revision and date out of the title block; null for what is not there. */
export function scheduleHead(reading: ScheduleReading): ScheduleHead {
  const fact = (of: keyof ScheduleHead): string | null => {
    const { own, besideOthers } = TITLE_WORDS[of];
    for (const word of [...own, ...besideOthers]) {
      const value = reading.titleFacts?.get(word)?.trim();
      if (value !== undefined && value !== "") return value;
    }
    return null;
  };
  return {
    job: fact("job"),
    schedule: fact("schedule"),
    drawing: fact("drawing"),
    revision: fact("revision"),
    date: fact("date"),
  };
}
