import type { Ticket } from "../../core/tickets";
import { counted } from "../../core/units/counted";
import type { PageHead } from "./print-page";

/** Schedules that a head has room to name. */
const MOST = 8;

/** The head of a page over these schedules, which names each with its revision; a job only where all say the same. */
export function headOfSchedules(heads: readonly Ticket["head"][], standard: string): PageHead {
  const [first] = heads;
  const jobs = new Set(heads.map(({ job }) => job));
  const job = jobs.size === 1 ? (first?.job ?? null) : null;
  const names = [...new Set(heads.map(nameOf))];
  if (names.length <= 1) {
    const { schedule = null, revision = null } = first ?? {};
    return { job, schedule, revision, standard };
  }
  const more = names.length > MOST ? ` and ${counted(names.length - MOST, "more schedule")}` : "";
  return { job, schedule: names.slice(0, MOST).join(", ") + more, revision: null, standard };
}

function nameOf({ schedule, drawing, revision }: Ticket["head"]): string {
  const name = schedule ?? drawing ?? "a schedule without a reference";
  return revision === null ? name : `${name} revision ${revision}`;
}
