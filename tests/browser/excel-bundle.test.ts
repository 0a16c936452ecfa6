import { readdir, readFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { beforeAll, describe, expect, test } from "vitest";

/** The page of the add-in as `browser-setup` built it for production. */
const FOLDER = fileURLToPath(new URL("../../.cache/pages/taskpane/", import.meta.url));
const KILOBYTE = 1024;

let scripts: readonly { readonly name: string; readonly zipped: number }[];
let atOpening: ReadonlySet<string>;

beforeAll(async () => {
  const names = (await readdir(FOLDER)).filter((name) => name.endsWith(".js"));
  scripts = await Promise.all(
    names.map(async (name) => ({
      name,
      zipped: gzipSync(await readFile(`${FOLDER}${name}`), { level: 9 }).length,
    })),
  );
  const page = await readFile(`${FOLDER}taskpane.html`, "utf8");
  atOpening = new Set([...page.matchAll(/<script[^>]* src="?([^"\s/:>]+\.js)"?/g)].map((match) => match[1]!));
});

const sum = (isWanted: (name: string) => boolean) =>
  scripts.filter(({ name }) => isWanted(name)).reduce((total, { zipped }) => total + zipped, 0) / KILOBYTE;
const isLibrary = (name: string) => name.startsWith("libraries-");
const isOwn = (name: string) => !isLibrary(name);

describe("what pane and functions load when the page opens", () => {
  test("names scripts that are there", () => {
    expect(atOpening.size).toBeGreaterThan(2);
    expect(scripts.map(({ name }) => name)).toEqual(expect.arrayContaining([...atOpening]));
  });

  test("is at most 150 KB gzipped of our own code", () => {
    expect(sum((name) => isOwn(name) && atOpening.has(name))).toBeLessThanOrEqual(150);
  });

  test("leaves reader and rules until somebody checks", async () => {
    const words = await Promise.all([...atOpening].map((name) => readFile(`${FOLDER}${name}`, "utf8")));
    expect(words.some((text) => text.includes("former-too-small"))).toBe(false);
  });
});

describe("what pane, functions and workers load in all", () => {
  test("is at most 510 KB gzipped of our own code", () => {
    expect(sum(isOwn)).toBeLessThanOrEqual(510);
  });

  test("is at most 105 KB gzipped of other people's libraries", () => {
    expect(sum(isLibrary)).toBeGreaterThan(20);
    expect(sum(isLibrary)).toBeLessThanOrEqual(105);
  });

  test("holds every library once", async () => {
    const mark = "[DecimalError] ";
    const texts = await Promise.all(scripts.map(({ name }) => readFile(`${FOLDER}${name}`, "utf8")));
    expect(texts.filter((text) => text.includes(mark)).length).toBe(1);
  });
});

test("the page's policy allows nothing inline and no code from texts", async () => {
  const page = await readFile(`${FOLDER}taskpane.html`, "utf8");
  const policy = /http-equiv=.?Content-Security-Policy.? content="([^"]*)"/.exec(page)?.[1] ?? "";
  expect(policy).toContain("script-src 'self' https://appsforoffice.microsoft.com;");
  expect(policy).toContain("style-src 'self';");
  expect(policy).toContain("connect-src 'self';");
  expect(policy).not.toMatch(/unsafe-|\*/);
  expect(page).not.toMatch(/<script(?![^>]*\bsrc=)|<style|\sstyle=|\son\w+=/);
});
