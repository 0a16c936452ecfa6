import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";

const root = fileURLToPath(new URL("../..", import.meta.url));
const tracked = execFileSync("git", ["ls-files"], { cwd: root, encoding: "utf8" })
  .split("\n")
  .filter(Boolean);

const TOP_LEVEL = [
  "DEVELOPERS.md",
  "README.md",
  "addin",
  "core",
  "docs",
  "manifest",
  "package-lock.json",
  "package.json",
  "tests",
  "tsconfig.json",
];

describe("the tree", () => {
  it("should hold nothing visible at the top level beyond the agreed names", () => {
    const names = new Set(tracked.map((path) => path.split("/")[0] ?? ""));
    expect(
      [...names].filter((name) => !name.startsWith(".")).filter((name) => !TOP_LEVEL.includes(name)),
    ).toEqual([]);
  });

  it("should have no file named for what it is not about", () => {
    const vague = tracked.filter((path) => /(^|\/)(utils?|helpers?|common|types)\.[cm]?[jt]s$/.test(path));
    expect(vague).toEqual([]);
  });

  it("should record no download address in the lock file", () => {
    expect(readFileSync(`${root}/package-lock.json`, "utf8")).not.toMatch(/"resolved": *"https?:/);
  });

  it("should install no package that carries a commercial licence", () => {
    const lock = JSON.parse(readFileSync(`${root}/package-lock.json`, "utf8")) as {
      packages: Record<string, unknown>;
    };
    expect(Object.keys(lock.packages).filter((name) => name.includes("-pro/"))).toEqual([]);
  });
});
