import { describe, expect, it } from "vitest";
import { generate } from "../../docs/generate/shape-table";

describe("the page of shapes", async () => {
  const page = (await generate()).get("shapes.md") ?? "";
  const rows = page.split("\n").filter((line) => /^\| \d/.test(line));

  it("shows 36 codes by 4 diameters, short and long", () => {
    // 34 codes of 2005 that have a length, 48 and 52 of 2020
    expect(rows).toHaveLength(36 * 4 * 2);
    expect(page).toContain("### 99 any other shape, drawn");
  });

  it("explains every difference above 5 mm in its row", () => {
    for (const row of rows) {
      const cells = row.split("|").map((cell) => cell.trim());
      const difference = Number(cells.at(-3));
      const why = cells.at(-2);
      expect(Number.isFinite(difference), row).toBe(true);
      expect(why === "", row).toBe(Math.abs(difference) <= 5.05 && why === "");
    }
  });

  it("states the angle equation of every sloped code, and both readings of code 14", () => {
    for (const code of ["14", "15", "24", "25", "26", "27", "28", "29", "34", "35", "36", "46", "56"]) {
      const section = page.split(`### ${code} `)[1]?.split("###")[0] ?? "";
      expect(section, code).toMatch(/- angle: `[A-E].* = .*(sin|cos) [tu]/);
    }
    const fourteen = page.split("### 14 ")[1]?.split("###")[0] ?? "";
    expect(fourteen).toContain("legs to the meeting of the outside tangents (doubtful)");
  });
});
