import { describe, expect, it } from "vitest";
import { resolveStandard, type Standard } from "../../../core/standards";
import { mutatedList, mutatedSchedule } from "../../_support/mutate-schedule";
import { scheduleFaults } from "../../_support/schedule-faults";
import { seeded } from "../../corpus/seeded";

const STANDARDS = [
  "BS8666:2005",
  "BS8666:2020",
  "AS3600:2018",
  "ACI318:2019",
  "INDIA-SITE",
  "ISO3766:2003",
].map((id) => resolveStandard(id) as Standard);

describe("schedules with spoiled cells", () => {
  it.each([
    ["5,000 of one form", 5_000, mutatedSchedule],
    ["1,000 lists of offices of the world", 1_000, mutatedList],
  ])(
    "%s are read without a throw, a row lost, a hole in the words, or anything below nought",
    (_, count, spoil) => {
      const random = seeded(7);
      const found = new Map<string, number>();
      const slow: number[] = [];
      for (let at = 0; at < count; at += 1) {
        const begun = process.cpuUsage();
        for (const fault of scheduleFaults(spoil(random), random.pick(STANDARDS)))
          found.set(fault, (found.get(fault) ?? 0) + 1);
        if (process.cpuUsage(begun).user > 1_000_000) slow.push(at);
      }
      expect([...found]).toEqual([]);
      expect(slow).toEqual([]);
    },
    300_000,
  );
});
