import { lapSaid } from "../lap-said";
import { ownLap } from "../project-lap";
import { projectionSaid } from "../projection-said";
import { defineRule } from "../rule";

export default defineRule({
  code: "SITE105",
  name: "starter-projection-short",
  severity: "unsafe",
  needs: "remark",
  docs: {
    summary:
      "Starters project less than the lap of the bar above, as the row or the project's table names it.",
    why: "What projects is what the next bar laps with: too short, and the joint holds only a part of its steel. The lap is the designer's figure: ask the designer.",
    failing: [
      {
        rows: [
          {
            size: "H20",
            shape: "11",
            A: 1500,
            B: 300,
            length: 1750,
            remark: "starter, projects 600, lap 800, caps",
          },
        ],
      },
    ],
    passing: [
      {
        rows: [
          {
            size: "H20",
            shape: "11",
            A: 1500,
            B: 300,
            length: 1750,
            remark: "starter, projects 850, lap 800, caps",
          },
        ],
      },
    ],
  },
  messages: {
    short: "starters projecting {projection} are below the lap of {lap} of the row: ask the designer",
    own: "starters projecting {projection} are below the lap of {lap} of the project's own table: ask the designer",
  },
  ofWords: projectionSaid,
  checkRow(facts, { standard }, report) {
    const projection = facts.row.remark === null ? null : facts.inWords(projectionSaid);
    if (projection === null) return;
    const said = lapSaid(facts);
    const own = said === null ? ownLap(facts, standard) : null;
    const lap = said ?? own?.value ?? null;
    if (lap === null || projection >= lap) return;
    report({
      messageId: own === null ? "short" : "own",
      at: "remark",
      values: { projection: { mm: projection }, lap: { mm: lap } },
      ...(own === null ? {} : { cite: own.cite }),
    });
  },
});
