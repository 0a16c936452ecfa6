import type { ColumnKind } from "../../schedule/bar-row";
import { defineRule } from "../rule";

/** What is not checked on a sheet without the column. */
const NEEDED: readonly (readonly [ColumnKind, string])[] = [
  ["shape", "shapes"],
  ["length", "typed lengths"],
  ["mass", "masses"],
  ["former", "the formers that will be used"],
  ["revision", "superseded revisions"],
];

export default defineRule({
  code: "READ104",
  name: "facts-not-held",
  severity: "note",
  docs: {
    summary: "The sheet does not hold facts that some checks need; one note names them all.",
    why: "Silence must not be taken for a pass: what the sheet does not hold was not checked.",
    failing: [{ rows: [{ size: "H16", shape: "00", A: 1000, length: 1000 }] }],
    passing: [
      { rows: [{ size: "H16", shape: "00", A: 1000, length: 1000, mass: 3.16, former: 64, revision: "A" }] },
    ],
  },
  messages: { missing: "the sheet does not hold {facts}, so they were not checked" },
  checkSheet(sheet, _context, report) {
    if (sheet.bars.length === 0) return;
    const missing = NEEDED.filter(([field]) => !sheet.has(field)).map(([, words]) => words);
    if (missing.length === 0) return;
    report({ messageId: "missing", outcome: "unsure", values: { facts: missing.join(", ") } });
  },
});
