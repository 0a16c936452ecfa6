import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { barwright } from "../../_support/command-line";

const folder = mkdtempSync(join(tmpdir(), "barwright-demo-"));

test("the example holds its results, so that a slip is told at one cell and as the workbench tells it", async () => {
  const written = await barwright(["demo", folder]);
  expect(written.exit, written.err).toBe(0);
  const run = await barwright(["check", join(folder, "schedule.xlsx"), "--json"]);
  const { findings } = JSON.parse(run.out) as { findings: { code: string; row: number; cell: string }[] };
  // 84 bars by hand, 1 x 86 by members and bars in each, and a mass of 84: D, E and F are in doubt together
  const ofRow23 = findings.filter(({ row, code }) => row === 23 && /^(SUM|MASS)/.test(code));
  expect(ofRow23.map(({ code, cell }) => `${code} ${cell}`)).toEqual(["SUM109 F23"]);
  const legs = findings.filter(({ code, cell }) => code === "MACHINE103" && cell === "K65");
  expect(legs).toHaveLength(1);
  // no cell is told the same twice
  const told = findings.map((finding) => JSON.stringify(finding));
  expect(new Set(told).size).toBe(told.length);
});

test("no line of the yard's trials is taken for a rate or a limit", async () => {
  await barwright(["demo", folder]);
  const { err } = await barwright(["tonnage", join(folder, "bridge")]);
  expect(err).not.toContain("rates:");
  expect(err).not.toContain("have no rate");
});
