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

  it("gives its functions to a program, with their types", () => {
    const program = readFileSync(join(root, "docs/api.md"), "utf8").match(/```ts\n(import [\s\S]*?)```/)![1]!;
    writeFileSync(join(user, "try.ts"), program);
    // the page's own example, held by the compiler as a user's would hold it, then run
    const types = join(root, "node_modules/@types");
    const tsc = join(root, "node_modules/typescript/bin/tsc");
    const flags = [
      "--module",
      "NodeNext",
      "--target",
      "ES2022",
      "--strict",
      "--skipLibCheck",
      "--types",
      "node",
      "--typeRoots",
      types,
    ];
    inUser(process.execPath, tsc, ...flags, "try.ts");
    expect(inUser(process.execPath, "try.js")).toContain("unsafe");
    const wrong = program.replace("{ sheet: null, standard: null }", "{ sheet: 3 }");
    writeFileSync(join(user, "wrong.ts"), wrong);
    expect(() => inUser(process.execPath, tsc, ...flags, "--noEmit", "wrong.ts")).toThrow();
  });
});
