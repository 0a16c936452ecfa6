import { plainGrade } from "../bars/plain-grade";
import type { Citation, Cited } from "../standards/citation";
import type { OwnLap } from "../standards/own-standard";
import type { Standard } from "../standards/port";
import { parseLength } from "../units/parse-length";
import { defineRefusal, isRefusal, type Refusal } from "../units/refusal";

const lapsNone = defineRefusal(
  "laps-none",
  "not-held",
  "this workbook holds no table of laps: write one on the sheet Standard or Shop (size, grade, case, lap); design lengths are the designer's",
);
const lapNotHeld = defineRefusal(
  "lap-not-held",
  "not-held",
  "the table of laps holds none for {bar}: it has {held}; ask the designer",
);
const lapOpen = defineRefusal(
  "lap-open",
  "value",
  "the table of laps has several for {bar}: say which, {held}",
);

export interface LapQuestion {
  /** as typed */
  readonly size: string | number;
  readonly grade?: string | undefined;
  readonly case?: string | undefined;
}

const OWN_LAPS: Citation = { document: "the project's own table of laps", provenance: "own" };

/**
 * The lap of the project's own table, mm: lines of this bar, those that name its grade and case before
 * those that serve any. Refuses a book without a table, a bar that it does not hold, and a question that
 * fits several lines of different laps.
 */
export function findLap(question: LapQuestion, standard: Standard): Cited<number> | Refusal {
  const { laps } = standard.own;
  if (laps.length === 0) return lapsNone({});
  const bar = [String(question.size), question.grade, question.case].filter(Boolean).join(", ");
  const asked = standard.readSize(question.size);
  if (isRefusal(asked)) return asked;
  const ofSize = laps.filter(({ size }) => {
    const held = standard.readSize(size);
    return !isRefusal(held) && held.diameter === asked.diameter && isSameLetter(held.prefix, asked.prefix);
  });
  const ofGrade = narrowed(ofSize, (lap) => lap.grade, question.grade, plainGrade);
  const fitting = narrowed(
    ofGrade,
    (lap) => lap.case,
    question.case,
    (text) => text.trim().toLowerCase(),
  );
  const lengths = new Set(fitting.map((lap) => parseLength(lap.lap, standard.unit)));
  const [length] = lengths;
  if (length === undefined) {
    const held = [...new Set((ofSize.length === 0 ? laps : ofSize).map(lineName))].join("; ");
    return lapNotHeld({ bar, held });
  }
  if (lengths.size > 1) return lapOpen({ bar, held: fitting.map(lineName).join("; ") });
  return isRefusal(length) ? length : { value: length, cite: OWN_LAPS };
}

/** Lines that name what is asked, else those that serve any; all of them where nothing is asked. */
function narrowed(
  laps: readonly OwnLap[],
  of: (lap: OwnLap) => string,
  asked: string | undefined,
  plain: (text: string) => string,
): readonly OwnLap[] {
  if (asked === undefined || asked.trim() === "") return laps;
  const named = laps.filter((lap) => of(lap) !== "" && plain(of(lap)) === plain(asked));
  return named.length > 0 ? named : laps.filter((lap) => of(lap) === "");
}

/** A line for "16" serves H16. */
function isSameLetter(held: string, asked: string): boolean {
  return held === "" || asked === "" || held.toUpperCase() === asked.toUpperCase();
}

function lineName({ size, grade, case: situation }: OwnLap): string {
  return [size, grade, situation].filter((part) => part !== "").join(", ");
}
