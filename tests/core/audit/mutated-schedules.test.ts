import { describe, expect, it } from "vitest";
import { resolveStandard, type Standard } from "../../../core/standards";
import { mutatedSchedule } from "../../_support/mutate-schedule";
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

describe("5,000 schedules with spoiled cells", () => {
  it("are read without a throw, a row lost, or anything below nought", () => {
    const random = seeded(7);
    const found = new Map<string, number>();
    const slow: number[] = [];
    for (let at = 0; at < 5_000; at += 1) {
      const begun = process.cpuUsage();
      for (const fault of scheduleFaults(mutatedSchedule(random), random.pick(STANDARDS)))
        found.set(fault, (found.get(fault) ?? 0) + 1);
      if (process.cpuUsage(begun).user > 1_000_000) slow.push(at);
    }
    expect([...found]).toEqual([]);
    expect(slow).toEqual([]);
  }, 300_000);
});
