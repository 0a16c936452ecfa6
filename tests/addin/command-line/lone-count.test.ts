import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, it } from "vitest";
import { barwright } from "../../_support/command-line";

const folder = mkdtempSync(join(tmpdir(), "barwright-count-"));

function list(name: string, count: string): string {
  const path = join(folder, name);
  const rows = [
    "1,H16,40,2000,00,2000",
    "2,H10,200,3000,00,3000",
    "3,H20,24,6000,00,6000",
    "4,H12,60,1000,00,1000",
  ];
  writeFileSync(path, ["Bar mark,Size,HEAD,Length mm,Shape,A".replace("HEAD", count), ...rows].join("\n"));
  return path;
}

it("takes a lone count column for the bars", async () => {
  const run = await barwright(["tonnage", list("of.csv", "No. of"), "--json"]);
  // kg/m of the UK three-decimal table: H10 0.616, H12 0.888, H16 1.579, H20 2.466; 40 x 2 x 1.579 = 126.32,
  // 200 x 3 x 0.616 = 369.6, 24 x 6 x 2.466 = 355.104, 60 x 1 x 0.888 = 53.28: 904.304 kg
  expect(JSON.parse(run.out)).toMatchObject({ total: 0.904304, notInTotal: [] });
  expect(run.exit).toBe(0);
});

it("ends neither tonnage nor check as clean where no row is in the total", async () => {
  const path = list("members.csv", "No. of members");
  for (const command of ["tonnage", "check"]) {
    const run = await barwright([command, path]);
    expect(run.exit).toBe(2);
    expect(run.err).toContain("no total: all 4 bar rows are left out of it");
  }
  expect((await barwright(["check", path])).out).toContain(
    '4 of 4 rows stand in no total, most for want of a number of bars: the sheet was not read as it is meant: column C "No. of members" was read as number of members; head the column that counts the bars "Total no.", or say what it holds  [READ107]',
  );
});
