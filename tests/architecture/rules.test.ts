import { existsSync, readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { RULES } from "../../core/audit/rules/index";
import { MEASURED_NAMES } from "../../docs/generate/measured-pages";
import { ruleFiles } from "../../docs/generate/rule-index";

const root = fileURLToPath(new URL("../..", import.meta.url));
const files = await ruleFiles();

describe("the folder of audit rules", () => {
  it("should hold rules", () => {
    expect(files.length).toBeGreaterThan(60);
  });

  it.each(files)("should give $file a test, a page and an entry in the index", ({ file, rule }) => {
    expect(rule.name).toBe(file);
    expect(existsSync(`${root}/tests/core/audit/rules/${file}.test.ts`)).toBe(true);
    expect(existsSync(`${root}/docs/rules/${file}.md`)).toBe(true);
    expect(RULES).toContain(rule);
  });

  it("should index every file and nothing else", () => {
    expect(RULES.map(({ name }) => name)).toEqual(files.map(({ file }) => file));
  });

  it("should have no test or page of a rule that is gone", () => {
    const names = new Set(files.map(({ file }) => file));
    const tests = readdirSync(`${root}/tests/core/audit/rules`).map((name) => name.replace(".test.ts", ""));
    const pages = readdirSync(`${root}/docs/rules`).map((name) => name.replace(".md", ""));
    expect([...tests, ...pages].filter((name) => name !== "README" && !names.has(name)).sort()).toEqual(
      [...MEASURED_NAMES].sort(),
    );
  });

  it("should never use a code twice", () => {
    const codes = files.map(({ rule }) => rule.code);
    expect(codes.filter((code, index) => codes.indexOf(code) !== index)).toEqual([]);
  });

  it.each(files)("should word $file in lower case without a full stop", ({ rule }) => {
    for (const message of Object.values(rule.messages)) {
      expect(message).toMatch(/^[a-z{"']/);
      expect(message).not.toMatch(/\.$/);
    }
  });

  it.each(files)("should show $file silent, and speaking where a table can show it", ({ file, rule }) => {
    expect(rule.docs.passing.length).toBeGreaterThan(0);
    if (rule.docs.failing.length === 0) expect(rule.docs.why).toMatch(/no small table can show it/);
    expect(readFileSync(`${root}/tests/core/audit/rules/${file}.test.ts`, "utf8")).toContain("silent");
  });

  it.each(files)("should use every message and fix of $file", ({ file, rule }) => {
    const source = readFileSync(`${root}/core/audit/rules/${file}.ts`, "utf8");
    for (const id of [...Object.keys(rule.messages), ...Object.keys(rule.fixes ?? {})]) {
      const uses = source.match(new RegExp(`"${id}"`, "g")) ?? [];
      const shared = /slipReport\(/.test(source);
      expect(shared || uses.length > 0, `${file}: ${id}`).toBe(true);
    }
  });
});
