import { describe, expect, it } from "vitest";
import { barwright } from "../../_support/command-line";

async function value(formula: string, ...options: string[]): Promise<unknown> {
  const run = await barwright(["calc", formula, "--json", ...options]);
  expect(run.exit, run.err).toBe(0);
  return (JSON.parse(run.out) as { value: unknown }).value;
}

describe("barwright calc", () => {
  it("prints the value of a formula", async () => {
    // BS 8666:2005 table 3, shape 21: A + B + C - r - 2d = 1000 + 400 + 500 - 32 - 32 = 1836, up to 1850
    const run = await barwright(["calc", '=BAR.CUTLENGTH("21","H16",{1000,400,500},"BS8666:2005")']);
    expect(run).toEqual({ exit: 0, out: "1850\n", err: "" });
  });

  it("prints an array a line a row, with tabs between", async () => {
    expect((await barwright(["calc", '={1,"a";TRUE,-2.5}'])).out).toBe("1\ta\nTRUE\t-2.5\n");
    expect(await value("={1,2;3,4}")).toEqual([
      [1, 2],
      [3, 4],
    ]);
  });

  it("takes quotes in texts, blanks, nested calls and arithmetic", async () => {
    expect(await value('="3\'-4 1/2"""')).toEqual([[`3'-4 1/2"`]]);
    expect(await value('=BAR.CUTLENGTH("21","H16",{1000,400,500},,)')).toEqual([[1850]]);
    // 2 bars of 16 mm, 1.579 kg/m in the UK three-decimal table
    expect(await value('=2*BAR.MASS(BAR.DIAMETER("H16"))')).toEqual([[3.158]]);
    expect(await value("=-(2+3)^2")).toEqual([[25]]);
    expect(await value("={5,,7}")).toEqual([[5, "", 7]]);
  });

  it("answers an error for arithmetic beyond the numbers that there are", async () => {
    const run = await barwright(["calc", "=2^1023*10", "--json"]);
    expect([run.exit, JSON.parse(run.out)]).toEqual([
      0,
      { value: [[{ error: "#NUM!", message: expect.stringContaining("is no number") }]] },
    ]);
  });

  it("spills a column and keeps an error in its own row", async () => {
    const rows = (await value('=BAR.MASS({"H16";"H17";"H20"})')) as [unknown][];
    expect(rows[0]).toEqual([1.579]);
    expect(rows[1]?.[0]).toMatchObject({
      error: expect.stringMatching(/^#(VALUE!|N\/A)$/),
      message: expect.any(String),
    });
    expect(rows[2]).toEqual([2.466]);
  });

  it("answers an error cell for a function there is none of, and exits 0", async () => {
    expect(await value("=BAR.NOSUCH(1)")).toEqual([
      [{ error: "#NAME?", message: expect.stringContaining("BAR.NOSUCH") }],
    ]);
    expect(await value("=SUM(1,2)")).toMatchObject([[{ error: "#NAME?" }]]);
    expect(await value("=A1")).toMatchObject([
      [{ error: "#NAME?", message: expect.stringContaining("no workbook") }],
    ]);
    expect(await value("=BAR.CUTLENGTH()")).toMatchObject([[{ error: "#VALUE!" }]]);
  });

  it("exits 2 with one line for what it cannot parse", async () => {
    for (const formula of ["=BAR.MASS(", "={1,2;3}", "=1+", '=BAR.MASS("H16"']) {
      const run = await barwright(["calc", formula]);
      expect([run.exit, run.out, run.err.trim().split("\n").length], formula).toEqual([2, "", 1]);
      expect(run.err).toContain("cannot be parsed");
    }
  });

  it("answers one JSON line for each line of standard input", async () => {
    const run = await barwright(["calc", "-", "--json"], '=1+1\n\n=BAR.MASS("H20")\r\n=BAR.MASS(\n="end"');
    const lines = run.out
      .trimEnd()
      .split("\n")
      .map((line) => JSON.parse(line) as unknown);
    expect(lines).toEqual([
      { value: [[2]] },
      { value: [[null]] },
      { value: [[2.466]] },
      { value: null, error: expect.stringContaining("cannot be parsed") },
      { value: [["end"]] },
    ]);
    expect(run.exit).toBe(2);
  });

  it("takes the standard of the option where the formula names none", async () => {
    expect(await value('=BAR.MASS("N16")', "--standard", "AS3600:2018")).not.toMatchObject([
      [{ error: "#VALUE!" }],
    ]);
    const run = await barwright(["calc", "=1", "--standard", "XX9999"]);
    expect([run.exit, run.err.trim().split("\n").length]).toEqual([2, 1]);
  });
});

describe("barwright", () => {
  it("exits 2 with one line for an unknown command or option", async () => {
    for (const args of [
      ["nosuch"],
      ["calc", "--nosuch", "=1"],
      ["check"],
      ["calc"],
      ["check", "a.csv", "--out"],
    ]) {
      const run = await barwright(args);
      expect([run.exit, run.out, run.err.trim().split("\n").length], args.join(" ")).toEqual([2, "", 1]);
    }
  });

  it("lists its commands", async () => {
    const run = await barwright(["--help"]);
    expect(run.exit).toBe(0);
    for (const name of ["calc", "check", "tonnage", "standards"]) expect(run.out).toContain(name);
  });

  it("lists the standards held", async () => {
    const run = await barwright(["standards", "--json"]);
    const ids = (JSON.parse(run.out) as { standards: { id: string }[] }).standards.map(({ id }) => id);
    expect(ids).toEqual(expect.arrayContaining(["BS8666:2005", "EC2:2004", "ACI318:2019", "INDIA-SITE"]));
  });

  it("counts the values of each standard by how far they may be trusted", async () => {
    const run = await barwright(["standards"]);
    expect(run.out).toMatch(
      /BS8666:2005 .*\n.*35 shape codes.*\n.*published (\d+) \(\1 checked\), memory \d+/,
    );
  });
});
