import { describe, expect, it } from "vitest";
import { bundleLabelsPage } from "../../../addin/print/bundle-labels";
import { cutListPage } from "../../../addin/print/cut-list-page";
import { type CuttingPlan, cutList, planCutting } from "../../../core/cutting";
import { makeBundles } from "../../../core/totals";

const head = { job: "Harbour sheds", schedule: "HS-04", revision: "B", standard: "BS8666:2005" };
const textOf = (page: string): string =>
  page
    .replace(/<style>[\s\S]*?<\/style>/, "")
    .replace(/<[^>]*>/g, " ")
    .replace(/\s+/g, " ");

describe("bundleLabelsPage", () => {
  const item = {
    pour: "P1",
    member: "<Pile & cap>",
    mark: "07",
    size: "H16",
    shape: "21",
    count: 60,
    length: 1850,
    massEach: 2.921,
  };
  const page = bundleLabelsPage(makeBundles([item], 100), head);

  it("should print mark, bundle of bundles, count, size, shape, length and mass", () => {
    // 34 bars of 2.921 kg stay under 100 kg, so two bundles of 30: 87.6 kg each, by hand
    expect(textOf(page)).toContain("07 bundle 1 of 2 30 bars");
    expect(textOf(page)).toContain("Size H16 Shape 21 Length 1850 mm Mass 87.6 kg");
    expect(textOf(page)).toContain("HS-04, rev. B");
  });

  it("should escape what the sheet says and fetch nothing", () => {
    expect(page).toContain("&lt;Pile &amp; cap&gt;");
    expect(page).not.toMatch(/<script|https?:|src=/);
  });

  it("should warn of a bar above the lifting limit", () => {
    expect(textOf(bundleLabelsPage(makeBundles([{ ...item, massEach: 140 }], 100), head))).toContain(
      "above the lifting limit",
    );
  });
});

describe("cutListPage", () => {
  it("should print stops with their marks, the bound and where the rest goes", () => {
    const pieces = [{ mark: "01", length: 5000, count: 4 }];
    const stock = [{ length: 12000, count: null, remnant: false }];
    const plan = planCutting({ pieces, stock, endCrop: 0, kerf: 0, timeLimit: 500 }) as CuttingPlan;
    const text = textOf(
      cutListPage([{ size: "H16", grade: null, plan, list: cutList(plan, pieces, 1000) }], head),
    );
    expect(text).toContain("2 bars to buy for 4 pieces, proven least; 16.7 % of the stock is left over");
    expect(text).toContain("2 12000 2 × 5000 01 (4) 2000 rack");
  });
});
