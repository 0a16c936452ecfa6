import { describe, expect, it } from "vitest";
import { conflictsOf } from "../../../core/standards/coverage";
import { heldTables } from "../../../core/standards/held-tables";
import { coverage, STANDARD_IDS } from "../../../core/standards/index";
import { REGISTRY } from "../../../core/standards/registry";
import { heldStandard } from "../../_support/held-standard";

describe("coverage", () => {
  it("counts the figures, formulas and limits of BS 8666:2005", () => {
    const bars = 10 * 3;
    const table2 = 10 * 2 + 10 * 2 + 20 * 3; // d and M; d and r; d, P and its straight for two uses
    const formulas = 34 + 3 + 1; // all codes but 99, three minimised forms, the helix's second
    const limits = 46;
    const notes = 4; // 4d, five bends, 12 m, 400 mm
    const table6 = 9 * 2;
    const cold = 1;
    const links = 2; // a quarter of the main bar and 6 mm
    const { values, bars: barCount, shapes } = coverage(heldStandard("BS8666:2005"));
    expect(values.published.held).toBe(bars + table2 + formulas + limits + notes + table6 + cold + links);
    expect([barCount, shapes]).toEqual([10, 35]);
  });

  it("counts areas and masses of recalled tables as checked against geometry", () => {
    // SANS 282: nine bars, area and mass each; read on yards' sheets: width, stock, one former rule, seven radii
    // with their sizes, and four tolerances of two figures with two bounds
    const { values } = coverage(heldStandard("SANS282:2011"));
    expect(values.memory.checked).toBe(18);
    expect(values.published).toEqual({ held: 2 + 1 + 14 + 10, checked: 27 });
  });

  it("adds both documents up where two are joined", () => {
    const [bs, as] = [coverage(heldStandard("BS8666:2005")), coverage(heldStandard("AS3600:2018"))];
    const joined = coverage(heldStandard("BS8666:2005+AS3600:2018"));
    expect(joined.values.memory.held).toBe(bs.values.memory.held + as.values.memory.held);
    expect(joined.tables).toBe(bs.tables + as.tables);
  });

  it.each(STANDARD_IDS)("%s says what it does not hold", (id) => {
    expect(coverage(heldStandard(id)).notHeld.length).toBeGreaterThan(0);
  });
});

describe("every table held", () => {
  const held = REGISTRY.flatMap((tables) => heldTables(tables).map((table) => ({ id: tables.id, ...table })));

  it("names its document, and where it was read if it is published", () => {
    for (const { id, what, cite } of held) {
      expect([id, what, cite.document.length > 0]).toEqual([id, what, true]);
      if (cite.provenance === "published") expect([id, what, cite.seen?.length ?? 0]).not.toContain(0);
    }
  });

  it("has rows", () => {
    expect(held.filter(({ rows }) => rows.length === 0)).toEqual([]);
  });

  it("never calls a recalled value read", () => {
    const both = held.filter(({ cite }) => cite.provenance === "memory" && cite.seen !== undefined);
    expect(both.map(({ id, what }) => `${id} ${what}`)).toEqual([]);
  });

  it.each([
    ["BS8666:2005", /0\.617/],
    ["BS8666:2005", /25: r is printed 87 beside M 175/],
    ["BS8666:2020", /2020 text was not read/],
    ["DIN-EC2:2013", /18 mm only/],
    ["ACI318:2019", /finished diameters of 9\.5/],
    ["ACI318:2019", /finished diameters of 18\.25/],
    ["CSA-A23.1:2019", /55M: a web table prints 49\.5 mm, 2000 mm2 and 15\.70/],
    ["IS2502:1963", /prints 3\.88/],
    ["IS2502:1963", /10d and 75 mm before/],
    ["INDIA-SITE", /not in IS 2502/],
    ["ISO3766:2003", /4\.83/],
    ["GB50204:2015", /earlier edition/],
  ])("%s tells where sources differ: %s", (id, reason) => {
    const tables = held.filter((table) => table.id === id);
    expect(tables.flatMap(conflictsOf).some((conflict) => reason.test(conflict))).toBe(true);
  });
});
