import { describe, expect, it } from "vitest";
import { readSchedule } from "../../../../core/schedule/read-schedule";
import type { Standard } from "../../../../core/standards/port";
import { resolveStandard } from "../../../../core/standards/resolve-standard";
import { PATTERNS } from "./patterns";

describe("untidy schedules", () => {
  it("should be seventy, each once", () => {
    expect(PATTERNS.map(({ number }) => number)).toEqual(Array.from({ length: 70 }, (_, index) => index + 1));
  });

  it.each(PATTERNS.map((pattern) => [pattern.number, pattern.name, pattern] as const))(
    "should read %i: %s",
    (_number, _name, { cases }) => {
      expect(cases.length).toBeGreaterThan(0);
      for (const { sheet, standard = "BS8666:2005", options, pick, right } of cases) {
        const reading = readSchedule(sheet, resolveStandard(standard) as Standard, options);
        expect(pick(reading)).toEqual(right);
      }
    },
  );
});
