import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { beforeAll, describe, expect, it } from "vitest";

const root = fileURLToPath(new URL("../../..", import.meta.url));
const place = mkdtempSync(join(tmpdir(), "barwright-package-"));
const user = join(place, "user");

const npm = (cwd: string, ...args: string[]): string =>
  execFileSync("npm", args, {
    cwd,
    encoding: "utf8",
    env: { ...process.env, npm_config_cache: join(place, "npm"), npm_config_offline: "true" },
  });
const inUser = (file: string, ...args: string[]): string =>
  execFileSync(file, args, {
    cwd: user,
    encoding: "utf8",
    env: { ...process.env, XDG_CACHE_HOME: join(place, "c") },
  });

describe("the package", () => {
  beforeAll(() => {
    const folder = join(place, "package");
    execFileSync(process.execPath, [join(root, "addin/command-line/pack.mjs"), folder]);
    const [{ filename }] = JSON.parse(npm(folder, "pack", "--json", "--pack-destination", place));
    mkdirSync(user);
    writeFileSync(join(user, "package.json"), '{ "private": true, "type": "module" }\n');
    // without a network: it depends on nothing
    npm(user, "install", "--no-audit", "--no-fund", join(place, filename));
  }, 240_000);

  it("installs in an empty folder and runs", () => {
    expect(inUser("node_modules/.bin/barwright", "--version").trim()).toBe(
      JSON.parse(readFileSync(join(root, "package.json"), "utf8")).version,
    );
    inUser("node_modules/.bin/barwright", "demo");
    const { pours, total } = JSON.parse(
      inUser("node_modules/.bin/barwright", "tonnage", "new.xlsx", "--json"),
    );
    expect(pours.map(({ pour }: { pour: string }) => pour)).toEqual(["P8", "P9"]);
    expect(total).toBeGreaterThan(0);
  });

  it("gives its functions to a program, as the page of its API shows", () => {
    const program = readFileSync(join(root, "docs/api.md"), "utf8").match(/```ts\n(import [\s\S]*?)```/)![1]!;
    writeFileSync(join(user, "try.mjs"), program);
    expect(inUser(process.execPath, "try.mjs")).toContain("unsafe");
  });
});
