import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { RULES } from "../../core/audit/rules/index";

const root = fileURLToPath(new URL("../..", import.meta.url));
const page = readFileSync(`${root}/DEVELOPERS.md`, "utf8");

function section(title: string): string {
  const from = page.indexOf(`## ${title}`);
  expect(from, title).toBeGreaterThan(-1);
  const to = page.indexOf("\n## ", from + 1);
  return page.slice(from, to === -1 ? undefined : to);
}

describe("DEVELOPERS.md", () => {
  it("should name the functions that a cell passes, each where it stands, once, and at most 15", () => {
    const steps = [...section("The way of one cell").matchAll(/^\| (\d+) \| `(\w+)` \(([\w/.-]+)\)/gm)];
    expect(steps.length).toBeGreaterThan(9);
    expect(steps.length).toBeLessThanOrEqual(15);
    expect(steps.map(([, number]) => Number(number))).toEqual(steps.map((_, at) => at + 1));
    const names = steps.map(([, , name = "", path = ""]) => `${path} ${name}`);
    expect(new Set(names).size).toBe(names.length);
    for (const [, , name = "", path = ""] of steps) {
      const declared = new RegExp(`(?:function|class) ${name}\\b|^  (?:private )?${name}\\(`, "m");
      expect(readFileSync(`${root}/${path}`, "utf8"), `${name} in ${path}`).toMatch(declared);
    }
  });

  it("should name no file that is not there", () => {
    const named = [...page.matchAll(/`((?:core|addin|tests|docs|manifest)\/[\w./-]+)`/g)].map(
      ([, path = ""]) => path,
    );
    expect(named.length).toBeGreaterThan(20);
    expect(named.filter((path) => !existsSync(`${root}/${path}`))).toEqual([]);
  });

  it("should say every step of a new rule by the names that the code has", () => {
    const text = section("Adding a rule");
    const told = readFileSync(`${root}/core/audit/rule.ts`, "utf8");
    for (const name of [
      "needs",
      "limits",
      "asksOnce",
      "tellsEach",
      "checkRow",
      "checkSheet",
      "checkShop",
      "checkOwn",
      "checkSettings",
    ]) {
      expect(text).toContain(`\`${name}\``);
      expect(told).toContain(name);
    }
  });
});

describe("docs/changelog.md", () => {
  const changelog = readFileSync(`${root}/docs/changelog.md`, "utf8");

  it("should name only rules and schedules that there are", () => {
    const codes = new Set(RULES.map(({ code }) => code));
    const named = [...changelog.matchAll(/\b[A-Z]+\d{3}\b/g)].map(([code]) => code);
    expect(named.length).toBeGreaterThan(20);
    expect(named.filter((code) => !codes.has(code))).toEqual([]);
    const schedules = [...changelog.matchAll(/`([a-z]{2,5}(?:-[a-z0-9]+)+)`/g)].map(([, name = ""]) => name);
    expect(schedules.length).toBeGreaterThan(20);
    expect(schedules.filter((name) => !existsSync(`${root}/tests/corpus/${name}.json`))).toEqual([]);
  });
});
