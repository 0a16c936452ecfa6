import { lapColumn } from "../../schedule/columns/lap-column";
import { defineRule } from "../rule";

export default defineRule({
  code: "LEN104",
  name: "lap-inside-length",
  severity: "doubtful",
  needs: "lap",
  docs: {
    summary: "A lap is written into the length of one bar.",
    why: "Two bars and a lap are not one bar: the cutting list must know both pieces.",
    failing: [{ rows: [{ size: "H16", shape: "00", length: "12000+2350 (lap)" }] }],
    passing: [{ rows: [{ size: "H16", shape: "00", A: 11000, length: 11000 }] }],
  },
  messages: { lap: "the length holds a lap of {lap}: split it into the bars that are cut" },
  checkRow(facts, _context, report) {
    const { lap, table } = facts.row;
    // a list with a column for laps says of every bar what it is
    if (lap && lapColumn(table) === null)
      report({ messageId: "lap", at: "length", values: { lap: { mm: lap } } });
  },
});
