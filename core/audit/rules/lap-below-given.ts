import { findLap } from "../../own/find-lap";
import type { Cited } from "../../standards/citation";
import type { Standard } from "../../standards/port";
import { isRefusal } from "../../units/refusal";
import { defineRule } from "../rule";

export default defineRule({
  code: "LEN105",
  name: "lap-below-given",
  severity: "unsafe",
  needs: "lap",
  docs: {
    summary: "The lap in the length is shorter than the lap the remark asks for.",
    why: "A lap that is too short pulls out. The lap is the designer's figure: ask the designer.",
    failing: [{ rows: [{ size: "H16", shape: "00", length: "12000+500 (lap)", remark: "lap 650" }] }],
    passing: [{ rows: [{ size: "H16", shape: "00", A: 11000, length: 11000, remark: "lap 650" }] }],
  },
  messages: {
    short: "the length holds a lap of {lap}, below the {given} of the remark: ask the designer",
    own: "the length holds a lap of {lap}, below the {given} of the project's own table: ask the designer",
  },
  checkRow(facts, { standard }, report) {
    const { lap } = facts.row;
    if (!lap) return;
    const said = facts.inWords(lapSaid);
    if (said === null) {
      const grade = facts.row.grade ?? undefined;
      const own = facts.row.sizeTyped === null ? null : ownLap(facts.sizeName, grade, standard);
      if (own === null || lap >= own.value) return;
      report({
        messageId: "own",
        at: "length",
        values: { lap: { mm: lap }, given: { mm: own.value } },
        cite: own.cite,
      });
      return;
    }
    const given = Number(said[1]) * (said[2] === undefined ? 1 : (facts.diameter ?? 0));
    if (lap < given)
      report({ messageId: "short", at: "length", values: { lap: { mm: lap }, given: { mm: given } } });
  },
});

/** Null also where the table leaves open which of its laps is meant. */
function ownLap(size: string, grade: string | undefined, standard: Standard): Cited<number> | null {
  const found = findLap({ size, grade }, standard);
  return isRefusal(found) ? null : found;
}

function lapSaid(words: string): RegExpExecArray | null {
  return /\blap(?:s|ped)?\s*(?:length)?\s*(?:=|:|of)?\s*(\d+)\s*(d\b)?/.exec(words);
}
