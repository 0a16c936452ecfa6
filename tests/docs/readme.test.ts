import { execFile } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { barwrightBundle } from "../_support/command-line";

const readme = readFileSync(new URL("../../README.md", import.meta.url), "utf8");
const lines = [...readme.matchAll(/^npx barwright .*$/gm)].map(([line]) => line.replace(/\s+# .*$/, ""));
const folder = mkdtempSync(join(tmpdir(), "barwright-readme-"));

/** A line as a shell runs it, with the program just built in the place of the installed one. */
function run(line: string): Promise<{ exit: number; out: string; err: string }> {
  const shell = `npx() { shift; "${process.execPath}" "${barwrightBundle()}" "$@"; }\n${line}`;
  return new Promise((resolve) => {
    const env = { ...process.env, XDG_CACHE_HOME: join(folder, ".cache") };
    execFile("bash", ["-c", shell], { cwd: folder, env }, (error, out, err) =>
      resolve({ exit: typeof error?.code === "number" ? error.code : 0, out, err }),
    );
  });
}

describe("the README's command lines", () => {
  beforeAll(async () => {
    expect((await run("npx barwright demo")).exit).toBe(0);
  });

  it("begin with the example files, and are all of the commands that take a book", () => {
    expect(lines[0]).toBe("npx barwright demo");
    const commands = new Set(lines.map((line) => line.split(" ")[2]));
    for (const name of ["check", "tonnage", "cutplan", "compare", "tickets", "standards", "calc"])
      expect([...commands]).toContain(name);
  });

  // one after another, as a reader types them: some use what others wrote
  it("run as printed", async () => {
    for (const line of lines.slice(1)) {
      const { exit, out, err } = await run(line);
      expect([line, exit <= 1, err.includes("error of ours")]).toEqual([line, true, false]);
      expect([line, out.length > 0]).toEqual([line, true]);
      const written = /--out (\S+)/.exec(line)?.[1];
      if (written !== undefined) expect([line, existsSync(join(folder, written))]).toEqual([line, true]);
    }
  });

  it("never write over what stands there", async () => {
    const again = await run("npx barwright demo");
    expect(again).toMatchObject({ exit: 2, err: expect.stringContaining("schedule.xlsx") });
  });

  it("print the example's mass of a metre, 1.579 kg of the table, as BAR.MASS says", async () => {
    const line = lines.find((one) => one.includes("BAR.MASS"))!;
    expect((await run(line)).out.trim()).toBe("1.579");
  });
});
