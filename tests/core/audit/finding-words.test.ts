import { describe, expect, it } from "vitest";
import { exampleSheets } from "../../../core/audit/example-sheet";
import { doubtLead, doubtWords, severityWords } from "../../../core/audit/finding-words";
import { defineRule } from "../../../core/audit/rule";
import { runAudit } from "../../../core/audit/run-audit";
import { severityCounts, severityCountWords } from "../../../core/audit/severity-counts";
import type { Citation } from "../../../core/standards/citation";
import { standardNamed } from "./rule-cases";

/** What a rule of severity unsafe that rests on a source finds, said to be certain. */
function findingsFrom(...cites: readonly (Citation | null)[]) {
  const rules = cites.map((cite, index) =>
    defineRule({
      code: `TEST10${index}`,
      name: `test-${index}`,
      severity: "unsafe",
      docs: { summary: "", why: "", failing: [], passing: [] },
      messages: { said: "said" },
      checkRow(_facts, _context, report) {
        report({ outcome: "broken", messageId: "said", at: "size", ...(cite === null ? {} : { cite }) });
      },
    }),
  );
  const sheets = exampleSheets({ rows: [{ size: "H16", shape: "00", A: 1000, length: 1000 }] });
  return runAudit({ sheets, standard: standardNamed("BS8666:2005"), rules }).findings;
}

const document = "a document";

describe("a finding", () => {
  it("should be certain only where its source is published, confirmed, the yard's own or geometry", () => {
    const provenances = [
      "published",
      "confirmed",
      "own",
      "geometry",
      "memory",
      "common practice",
      "derived",
    ] as const;
    const found = findingsFrom(...provenances.map((provenance) => ({ document, provenance })));
    expect(found.map(({ outcome }) => outcome)).toEqual([
      "broken",
      "broken",
      "broken",
      "broken",
      "unsure",
      "unsure",
      "unsure",
    ]);
  });

  it("should be certain of what the sheet itself shows, and not where sources differ", () => {
    const conflict = "another page prints 5d";
    const found = findingsFrom(null, { document, provenance: "published", conflict });
    expect(found.map(({ outcome }) => outcome)).toEqual(["broken", "unsure"]);
    expect(found.map(doubtWords)).toEqual(["", " (perhaps: sources differ)"]);
  });

  it("should be called perhaps, with the reason, and counted so", () => {
    const found = findingsFrom({ document, provenance: "memory" });
    const [finding] = found;
    expect(severityWords(finding!)).toBe("perhaps unsafe");
    expect(doubtWords(finding!)).toBe(" (perhaps: the limit is from memory)");
    expect(doubtLead(finding!)).toBe("perhaps: ");
    expect(severityCountWords(severityCounts(found))).toBe(
      "0 unsafe, 1 perhaps unsafe, 0 unbendable, 0 off-standard, 0 doubtful",
    );
  });

  it("should be called not judged where it could not be, whatever it rests on", () => {
    const finding = { severity: "unsafe", outcome: "unsure", cite: null } as const;
    expect([doubtLead(finding), doubtWords(finding)]).toEqual(["not judged: ", " (could not be judged)"]);
    const note = { ...finding, severity: "note" } as const;
    expect([severityWords(note), doubtWords(note)]).toEqual(["note", ""]);
  });
});
