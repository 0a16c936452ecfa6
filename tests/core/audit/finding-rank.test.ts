import { describe, expect, it } from "vitest";
import type { Finding } from "../../../core/audit/finding";
import { findingRank } from "../../../core/audit/finding-rank";

type Ranked = Pick<Finding, "severity" | "outcome">;

describe("findingRank", () => {
  it("should list by severity, and of one severity what is certain before what is perhaps so", () => {
    const inOrder: Ranked[] = [
      { severity: "unsafe", outcome: "broken" },
      { severity: "unsafe", outcome: "unsure" },
      { severity: "unbendable", outcome: "broken" },
      { severity: "doubtful", outcome: "broken" },
      { severity: "doubtful", outcome: "unsure" },
      { severity: "note", outcome: "broken" },
    ];
    const mixed = [4, 1, 3, 5, 0, 2].map((at) => inOrder[at] as Ranked);
    expect(mixed.sort((a, b) => findingRank(a) - findingRank(b))).toEqual(inOrder);
  });
});
