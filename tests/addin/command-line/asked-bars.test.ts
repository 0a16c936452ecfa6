import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { barwright } from "../../_support/command-line";

const folder = mkdtempSync(join(tmpdir(), "barwright-asked-"));
const path = join(folder, "pours.csv");
writeFileSync(
  path,
  [
    "Member,Bar mark,Size,No. of mbrs,No. in each,Total no.,Length (mm),Shape code,A,B,C,Pour",
    "B1,01,H16,1,10,10,3000,00,3000,,,P1",
    "B1,02,H20,1,10,10,3000,00,3000,,,P1",
    "B2,03,H16,1,4,4,3000,00,3000,,,P2",
    // too short an end leg for any bend
    "B2,04,H32,1,4,4,1200,11,20,1200,,P2",
  ].join("\n"),
);

describe("a pour or size that no bar has", () => {
  const COMMANDS = ["check", "tonnage", "cutplan", "loads", "inspect"];
  for (const command of COMMANDS)
    it(`ends ${command} with 2 and names those that are there`, async () => {
      const run = await barwright([command, path, "--pour", "P9"]);
      expect(run).toMatchObject({ exit: 2, out: "" });
      expect(run.err).toContain(`barwright ${command}: no pour P9; the pours are P1, P2`);
    });

  it("ends tickets before a page is written", async () => {
    const out = join(folder, "none.html");
    const run = await barwright(["tickets", path, "--out", out, "--size", "H61"]);
    expect(run).toMatchObject({ exit: 2, out: "" });
    expect(run.err).toContain("no size H61; the sizes are H16, H20, H32");
    expect(run.err).not.toContain("written");
  });

  it("takes a bare number for every size of that diameter, whatever letters stand before it", async () => {
    const bare = await barwright(["tonnage", path, "--size", "16"]);
    expect(bare.exit).not.toBe(2);
    expect(bare.out).toBe((await barwright(["tonnage", path, "--size", "H16"])).out);
    expect((await barwright(["tonnage", path, "--size", "1"])).err).toContain("no size 1;");
  });

  it("ends a job of many books likewise, and its lines", async () => {
    for (const args of [["check"], ["check", "--jsonl"], ["tonnage"], ["cutplan"]]) {
      const run = await barwright([...args, folder, "--pour", "P9", "--no-cache"]);
      expect(run).toMatchObject({ exit: 2, out: "" });
      expect(run.err).toContain("no pour P9; the pours are P1, P2");
    }
  });

  it("says what a pour holds where no bar is of pour and size together", async () => {
    const run = await barwright(["tonnage", path, "--pour", "P1", "--size", "H32"]);
    expect(run).toMatchObject({ exit: 2, out: "" });
    expect(run.err).toContain("no bar of P1 is of size H32; its sizes are H16, H20");
  });

  it("refuses a comparison only where neither revision has it", async () => {
    const old = join(folder, "old.csv");
    writeFileSync(
      old,
      "Bar mark,Size,Total no.,Length (mm),Shape code,A,Pour\n01,H16,10,3000,00,3000,P0\n02,H16,10,3000,00,3000,P0\n",
    );
    expect((await barwright(["compare", old, path, "--pour", "P0"])).exit).not.toBe(2);
    expect(await barwright(["compare", old, path, "--pour", "P9"])).toMatchObject({ exit: 2, out: "" });
  });
});

describe("a pour that is asked for", () => {
  // kg/m of the UK three-decimal table: H16 1.579, H20 2.466. P1: 10 x 3 m x (1.579 + 2.466) = 121.35 kg
  const SUM = /2 bar rows checked; .*; 0\.121 t$/m;

  it("is all that the summary counts", async () => {
    const run = await barwright(["check", path, "--pour", "P1", "--summary"]);
    expect(run.out).toMatch(SUM);
    expect((await barwright(["check", folder, "--pour", "P1", "--summary", "--no-cache"])).out).toMatch(SUM);
  });

  it("says what is broken elsewhere, as the exit code goes by it", async () => {
    const run = await barwright(["check", path, "--pour", "P1"]);
    expect(run.exit).toBe(1);
    expect(run.err).toMatch(/not shown, on bars that were not asked for: \d+ unsafe/);
    expect((await barwright(["check", path, "--pour", "P2"])).err).not.toContain("not shown");
  });
});

describe("a sum of the whole sheet beside one pour", () => {
  // 1.579 kg/m (UK three-decimal table): 10 x 3 m makes 47.37 kg, 4 x 3 m makes 18.948 kg, together 66.3 kg
  const summed = (name: string, total: number) => {
    const at = join(folder, name);
    writeFileSync(
      at,
      `Bar mark,Size,Total no.,Length (mm),Shape code,A,Mass kg,Pour
01,H16,10,3000,00,3000,47.37,P1
02,H16,4,3000,00,3000,18.95,P2
Total,,,,,,${total},
`,
    );
    return at;
  };
  const told = async (...args: readonly string[]) => {
    const { notes } = JSON.parse((await barwright(["tonnage", ...args, "--json"])).out) as {
      notes: string[];
    };
    return notes.filter((note) => note.includes("far above"));
  };

  it("is not held against it", async () => {
    const path = summed("fits.csv", 66.3);
    for (const asked of [["--pour", "P1"], ["--pour", "P2"], ["--size", "H16"], []])
      expect(await told(path, ...asked)).toEqual([]);
  });

  it("is told of the whole where it is far above all bars", async () => {
    const path = summed("far.csv", 265.2);
    const words = await told(path);
    expect(words).toEqual([expect.stringContaining("0.265 t (far!G4) is far above the 0.066 t of the bars")]);
    expect(await told(path, "--pour", "P2")).toEqual(words);
  });
});

describe("a comparison of one pour", () => {
  const revision = (name: string, ...pours: readonly string[]) => {
    const at = join(folder, name);
    const rows = pours.map((pour, place) => `B1,0${place + 1},H16,10,3000,00,3000,${pour}`);
    writeFileSync(at, `Member,Bar mark,Size,Total no.,Length (mm),Shape code,A,Pour\n${rows.join("\n")}\n`);
    return at;
  };

  it("has a bar that changes its pour as changed, of the one it leaves and of the one it comes to", async () => {
    const old = revision("rev-a.csv", "P1", "P1", "P2");
    const young = revision("rev-b.csv", "P1", "P2", "P2");
    for (const [pour, unchanged, line] of [
      ["P1", 1, "P1: 20 -> 10 bars"],
      ["P2", 1, "P2: 10 -> 20 bars"],
    ] as const) {
      const { out } = await barwright(["compare", old, young, "--pour", pour]);
      expect(out).toContain("changed: B1 / 02");
      expect(out).toContain("pour: P1 -> P2");
      expect(out).not.toMatch(/^(?:added|removed)/m);
      expect(out).toContain(line);
      expect(out).toContain(`1 bars differ, ${unchanged} do not`);
    }
  });
});
