import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { barwright } from "../../_support/command-line";

const folder = mkdtempSync(join(tmpdir(), "barwright-totals-"));
const HEADER = "Member,Bar mark,Size,No. of mbrs,No. in each,Total no.,Length (mm),Shape code,A,B,C,Pour";

function file(name: string, ...lines: string[]): string {
  const path = join(folder, name);
  writeFileSync(path, `${lines.join("\n")}\n`);
  return path;
}

describe("barwright tonnage", () => {
  it("sums tonnes by pour and size, exactly", async () => {
    const path = file(
      "pours.csv",
      HEADER,
      "B1,01,H16,2,6,12,1850,21,1000,400,500,P1",
      "B1,02,H20,1,10,10,3000,00,3000,,,P1",
      "B2,03,H16,1,4,4,3000,00,3000,,,P2",
    );
    const run = await barwright(["tonnage", path, "--json"]);
    // kg/m of the UK three-decimal table: 1.579 and 2.466. P1 H16: 12 x 1.85 m x 1.579 = 35.0538 kg;
    // P1 H20: 10 x 3 m x 2.466 = 73.98 kg; P2 H16: 4 x 3 m x 1.579 = 18.948 kg
    expect(JSON.parse(run.out)).toEqual({
      unit: "t",
      pours: [
        { pour: "P1", bySize: { H16: 0.0350538, H20: 0.07398 }, total: 0.1090338 },
        { pour: "P2", bySize: { H16: 0.018948 }, total: 0.018948 },
      ],
      bySize: { H16: 0.0540018, H20: 0.07398 },
      total: 0.1279818,
      rows: 3,
      groupedBy: "pour",
      held: null,
      notInTotal: [],
      notToMake: [],
      toAsk: [],
      ofSheets: [],
      notes: [],
    });
    expect(run.exit).toBe(0);
  });

  it("gives no total where the masses refute the lengths and no other reading agrees", async () => {
    // typed masses are of none of the bars under any unit
    const masses = [170, 3, 1210, 59, 9, 330, 77];
    const rows = masses.map((mass, at) => `B1,0${at + 1},H16,1,8,8,${1000 + 350 * at},00,,,,P1,${mass}`);
    const path = file("wild.csv", `${HEADER},Mass (kg)`, ...rows);
    const run = await barwright(["tonnage", path, "--json"]);
    const { total, pours, held } = JSON.parse(run.out);
    expect({ total, pours }).toEqual({ total: null, pours: [] });
    expect(held).toContain("rows disagree with the mass column, and no other reading agrees");
    expect((await barwright(["tonnage", path])).out).toMatch(/^no totals: sheet "wild": /);
    const checked = JSON.parse((await barwright(["check", path, "--json"])).out);
    expect(checked.reading).toMatchObject([{ sheet: "wild", held: expect.stringContaining("held back") }]);
    expect((await barwright(["check", path, "--explain"])).out).toContain(
      'column G "Length (mm)": cut length in mm',
    );
  });

  it("says which rows are in no total", async () => {
    const path = file(
      "odd.csv",
      HEADER,
      "B1,01,H17,1,2,2,3000,00,3000,,,P1",
      "B1,02,H16,1,2,2,3000,00,3000,,,P1",
    );
    const run = await barwright(["tonnage", path]);
    expect(run.err).toContain('not in the total: 1 row (C2): size "H17" is no bar of BS8666:2005');
    expect(run.out).toContain("0.009");
  });
});

describe("barwright compare", () => {
  const old = file(
    "old.csv",
    HEADER,
    "B1,01,H16,1,6,6,3000,00,3000,,,P1",
    "B1,02,H20,1,2,2,3000,00,3000,,,P1",
  );
  const young = file(
    "new.csv",
    HEADER,
    "B1,01,H16,1,8,8,3000,00,3000,,,P1",
    "B1,03,H12,1,2,2,2000,00,2000,,,P1",
  );

  it("tells bars added, removed and changed, with the cells", async () => {
    const run = await barwright(["compare", old, young, "--json"]);
    const { changes, unchanged } = JSON.parse(run.out) as {
      changes: { kind: string; mark: string; cells: { field: string; before: unknown; after: unknown }[] }[];
      unchanged: number;
    };
    const kinds = new Map(changes.map(({ mark, kind }) => [mark, kind]));
    expect([...kinds.values()].sort()).toEqual(["added", "changed", "removed"]);
    const changed = changes.find(({ kind }) => kind === "changed");
    expect(changed?.cells).toEqual(
      expect.arrayContaining([{ field: "total", cell: "F2", before: 6, after: 8 }]),
    );
    expect([unchanged, run.exit]).toEqual([0, 0]);
  });

  it("exits 1 where a changed bar was released", async () => {
    const run = await barwright(["compare", old, young, "--released", "01"]);
    expect([run.exit, run.out.split("\n")[0]]).toEqual([1, expect.stringContaining("RELEASED ALREADY")]);
  });
});
