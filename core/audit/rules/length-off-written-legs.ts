import { offLegs } from "../../bar/legs-in-words";
import { offLengthHabit } from "../../bar/length-habits";
import { defineRule } from "../rule";

export default defineRule({
  code: "LEN112",
  name: "length-off-written-legs",
  severity: "doubtful",
  docs: {
    summary:
      "A length is not the sum of the legs that the row writes in one cell, as it is in the other rows.",
    why: "Where legs stand in words (20+140+20) nothing else holds the length: a leg left out or two figures exchanged cut the bar too short. It takes a list whose rows write their legs so: no small table can show it.",
    failing: [],
    passing: [{ rows: [{ size: "H16", shape: "00", A: 2000, length: 2000, remark: "150+1850" }] }],
  },
  messages: {
    differs: "length {length} is not the {sum} that {legs} make, as in {kept} of {tested} rows",
    deducted:
      "length {length} is not the {sum} that {legs} make less {less} d a bend, as in {kept} of {tested} rows",
  },
  checkSheet(sheet, _context, report) {
    const off = offLegs(sheet);
    if (off.length === 0) return;
    const told = new Set(offLengthHabit(sheet).map(({ facts }) => facts));
    for (const { facts, legs, sum, less, kept, tested } of off) {
      if (told.has(facts)) continue;
      report({
        messageId: less === 0 ? "differs" : "deducted",
        outcome: "unsure",
        row: facts,
        at: "length",
        values: {
          length: { mm: facts.row.length ?? 0, typed: true },
          sum: { mm: sum },
          legs,
          less,
          kept,
          tested,
        },
      });
    }
  },
});
