import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { COMMAND_HELP, OPTION_HELP } from "../../../addin/command-line/command-help.data";
import { barwright } from "../../_support/command-line";

const COMMANDS = Object.keys(COMMAND_HELP);

describe("the help", () => {
  it("names every command, in 80 columns", async () => {
    const run = await barwright(["--help"]);
    expect(run.exit).toBe(0);
    for (const name of COMMANDS) expect(run.out).toContain(`\n  ${name} `);
    for (const line of run.out.split("\n")) expect(line.length).toBeLessThanOrEqual(80);
    const bare = await barwright([]);
    expect([bare.exit, bare.out]).toEqual([2, run.out]);
  });

  it.each(COMMANDS)("of %s words each of its options and shows an example, in 80 columns", async (name) => {
    const run = await barwright([name, "--help"]);
    expect(run.exit).toBe(0);
    const options = [...run.out.matchAll(/^ {2}--([a-z-]+)/gm)].map(([, option]) => option!);
    expect(options.length > 0).toBe(name !== "demo");
    for (const option of options) expect(OPTION_HELP[option]?.says ?? "", option).not.toBe("");
    expect(run.out).toContain(`npx barwright ${name}`);
    for (const line of run.out.split("\n")) expect(line.length, line).toBeLessThanOrEqual(80);
    expect((await barwright(["help", name])).out).toBe(run.out);
  });

  it("tells the version of the package", async () => {
    const { version } = JSON.parse(readFileSync(new URL("../../../package.json", import.meta.url), "utf8"));
    expect((await barwright(["--version"])).out.trim()).toBe(version);
  });
});

describe("a slip of the keys", () => {
  it.each([
    [["chek", "a.xlsx"], "did you mean check?"],
    [["tonage"], "did you mean tonnage?"],
    [["check", "a.xlsx", "--jsn"], "did you mean --json?"],
    [["completion", "bsh"], "did you mean bash?"],
  ])("%j is answered with what was probably meant", async (args, words) => {
    const run = await barwright(args);
    expect([run.exit, run.out]).toEqual([2, ""]);
    expect(run.err).toContain(words);
  });

  it("far from every word lists them", async () => {
    expect((await barwright(["zebra"])).err).toContain("there are calc, check");
  });
});

describe("completions", () => {
  it("complete commands and their options in bash", async () => {
    const script = (await barwright(["completion", "bash"])).out;
    const asked = (words: string[]): string[] => {
      const ask = `${script}\nCOMP_WORDS=(${words.map((word) => `'${word}'`).join(" ")}); COMP_CWORD=${words.length - 1}; _barwright; printf '%s\\n' "\${COMPREPLY[@]}"`;
      const run = spawnSync("bash", ["-c", ask], { encoding: "utf8" });
      expect(run.stderr).toBe("");
      return run.stdout.trim().split("\n");
    };
    expect(asked(["barwright", "c"])).toEqual(["calc", "check", "cutplan", "compare"]);
    expect(asked(["barwright", "check", "--s"])).toEqual(["--summary", "--size", "--sheet", "--standard"]);
  });

  it.each(["zsh", "powershell"])("for %s name every command", async (shell) => {
    const script = (await barwright(["completion", shell])).out;
    for (const name of COMMANDS) expect(script).toContain(name);
  });
});

describe("a page", () => {
  it("is not written under a name that says another kind of file", async () => {
    const folder = mkdtempSync(join(tmpdir(), "barwright-kind-"));
    const book = join(folder, "a.csv");
    writeFileSync(book, "Bar mark,Size,No.,Length\n01,H16,2,1000\n");
    for (const args of [
      ["tickets", book, "--out", join(folder, "t.pdf")],
      ["cutplan", book, "--out", join(folder, "c.csv")],
    ]) {
      const run = await barwright(args);
      expect(run.exit, args[0]).toBe(2);
      expect(run.err).toContain("ends in .html");
    }
  });
});
