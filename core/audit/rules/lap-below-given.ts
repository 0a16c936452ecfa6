import { lapSaid } from "../lap-said";
import { ownLap } from "../project-lap";
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
    const given = lapSaid(facts);
    const own = given === null ? ownLap(facts, standard) : null;
    const asked = given ?? own?.value ?? null;
    if (asked === null || lap >= asked) return;
    report({
      messageId: own === null ? "short" : "own",
      at: "length",
      values: { lap: { mm: lap }, given: { mm: asked } },
      ...(own === null ? {} : { cite: own.cite }),
    });
  },
});
