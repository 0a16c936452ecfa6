import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { measureAuditQuality } from "./audit-quality";
import { MISTAKES } from "./mistakes";
import { UNHELD_MISTAKES } from "./unheld-mistakes";

const quality = measureAuditQuality();

describe("planted mistakes", () => {
  it("should be all 62 of the trade, each once, planted or named with what a sheet lacks", () => {
    const numbers = [...MISTAKES, ...UNHELD_MISTAKES].map(({ number }) => number).sort((a, b) => a - b);
    expect(numbers).toEqual(Array.from({ length: 62 }, (_, index) => index + 1));
  });

  it("should be found in at least 48 kinds", () => {
    expect(quality.kinds.filter(({ found }) => found > 0).length).toBeGreaterThanOrEqual(48);
  });

  it.each(quality.kinds.map((kind) => [`${kind.mistake.number} ${kind.mistake.name}`, kind] as const))(
    "%s: every planting is found by its rule and place",
    (_, { planted, missed }) => {
      expect(planted).toBeGreaterThanOrEqual(10);
      expect(missed).toEqual([]);
    },
  );

  it("should raise nothing above a note on clean schedules", () => {
    expect(quality.cleanRows).toBeGreaterThanOrEqual(600);
    expect(quality.cleanAlarms).toEqual([]);
  });

  it("should raise nothing broken on the rows beside a mistake", () => {
    expect(quality.besideRows).toBeGreaterThan(5000);
    expect(quality.besideAlarms).toEqual([]);
  });
});

it("should come from code that imports nothing of the audit", () => {
  const folder = fileURLToPath(new URL(".", import.meta.url));
  const recipes = fileURLToPath(new URL("../recipes/", import.meta.url));
  const sources = [folder, recipes].flatMap((path) => readdirSync(path).map((name) => path + name));
  const generators = sources.filter((path) => path.endsWith(".ts") && !path.includes("audit-quality"));
  expect(generators.length).toBeGreaterThan(10);
  for (const path of generators) expect(readFileSync(path, "utf8"), path).not.toContain("core/audit");
});
