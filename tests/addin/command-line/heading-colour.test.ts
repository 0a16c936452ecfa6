import { describe, expect, it } from "vitest";
import { coloured, isColoured } from "../../../addin/command-line/heading-colour";
import { barwright } from "../../_support/command-line";

const ESCAPE = "\u001b[";
const terminal = { isTTY: true };

describe("colour", () => {
  it("goes to a terminal alone, and never against NO_COLOR", () => {
    // no-color.org: a variable that is there and not empty, whatever it says
    expect(isColoured(terminal, {})).toBe(true);
    expect(isColoured(terminal, { NO_COLOR: "" })).toBe(true);
    for (const environment of [{ NO_COLOR: "1" }, { NO_COLOR: "0", FORCE_COLOR: "1" }, { TERM: "dumb" }])
      expect(isColoured(terminal, environment)).toBe(false);
    for (const stream of [{ isTTY: false }, {}]) expect(isColoured(stream, { FORCE_COLOR: "1" })).toBe(false);
  });

  it("leaves the words as they are", () => {
    // ECMA-48, 8.3.117: 31 is red
    expect(coloured("UNSAFE (1)", "grave")).toContain(`${ESCAPE}31m`);
    expect(coloured("UNSAFE (1)", "grave").split("UNSAFE (1)")).toHaveLength(2);
  });

  it("is in no result that goes to a pipe, whatever the environment asks for", async () => {
    process.env.FORCE_COLOR = "1";
    const csv =
      "Bar mark,Size,Total no.,Length (mm),Shape code,A\n01,H16,4,99000,00,99000\n02,H50,2,1000,11,300\n";
    const { mkdtempSync, writeFileSync } = await import("node:fs");
    const { join } = await import("node:path");
    const path = join(mkdtempSync(join((await import("node:os")).tmpdir(), "barwright-colour-")), "a.csv");
    writeFileSync(path, csv);
    const run = await barwright(["check", path]);
    delete process.env.FORCE_COLOR;
    expect(run.out).toMatch(/^[A-Z -]+ \(\d+\)$/m);
    expect(run.out + run.err).not.toContain(ESCAPE);
  });
});
