import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { MEASURED_CODES } from "../../core/audit/measured-codes";
import { RULES } from "../../core/audit/rules/index";
import { packagesNamed } from "../_support/packages-named";

const PAGES = fileURLToPath(new URL("../../.cache/pages", import.meta.url));

const texts = (page: string, kind: RegExp): string =>
  readdirSync(`${PAGES}/${page}`)
    .filter((name) => kind.test(name))
    .map((name) => readFileSync(`${PAGES}/${page}/${name}`, "utf8"))
    .join("\n");

describe("a built page", () => {
  // the workbench is built for development, whose files name their parts; the task pane has source maps
  test.each([
    ["workbench", /\.js$/],
    ["taskpane", /\.map$/],
  ])("%s should carry the licence and a notice of every package in it", (page, kind) => {
    expect(readFileSync(`${PAGES}/${page}/LICENSE.txt`, "utf8")).toContain("Apache License");
    const notices = readFileSync(`${PAGES}/${page}/third-party-notices.txt`, "utf8");
    const named = new Set([...notices.matchAll(/^(\S+) \S+ \([^)]+\)$/gm)].map(([, name]) => name));
    const paths = texts(page, kind).match(kind.source.includes("map") ? /"webpack:[^"]*"/g : /!\*\*\* .*/g);
    const bundled = packagesNamed((paths ?? []).join("\n"));
    expect(bundled.length).toBeGreaterThan(5);
    expect(bundled.filter((name) => !named.has(name))).toEqual([]);
  });

  test.each(["workbench", "taskpane"])("%s should have the page of every rule beside it", (page) => {
    const text = readFileSync(`${PAGES}/${page}/rules.html`, "utf8");
    const codes = [...text.matchAll(/<article id="?([A-Z]+\d+)"?>/g)].map(([, code]) => code);
    expect(codes).toEqual([...RULES.map(({ code }) => code), ...Object.values(MEASURED_CODES)].sort());
    const rule = RULES.find(({ code }) => code === "BEND101");
    expect(text).toContain(`BEND101, <code>unsafe</code>. ${rule?.docs.summary}`);
    // no sign of the Markdown that it is made of
    expect(text).not.toMatch(/^(\||#|> |- )/m);
  });
});
