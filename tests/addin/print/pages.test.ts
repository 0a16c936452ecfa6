import { describe, expect, it } from "vitest";
import { bundleLabelsPage } from "../../../addin/print/bundle-labels";
import { cutListPage } from "../../../addin/print/cut-list-page";
import type { CuttingPlan } from "../../../core/cutting";
import { cutList } from "../../../core/cutting/cut-list";
import { planCutting } from "../../../core/cutting/plan-cutting";
import { makeBundles } from "../../../core/totals/bundles";
import { defineRefusal } from "../../../core/units/refusal";

const isTooLong = defineRefusal("too-long", "value", "too long");
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

  it("should number its pages, as every printed page", () => {
    expect(page).toContain('content: counter(page) " of " counter(pages)');
  });

  it("should print mark, bundle of bundles, count, size, shape, length and mass", () => {
    // 34 bars of 2.921 kg stay under 100 kg, so two bundles of 30: 87.6 kg each, by hand
    expect(textOf(page)).toContain("07 bundle 1 of 2 30 bars");
    expect(textOf(page)).toContain("Size H16 Shape 21 Length 1850 mm Mass 87.6 kg");
    expect(textOf(page)).toContain("HS-04, rev. B");
  });

  it("should print inches and pounds where the standard is in inches", () => {
    // 1851.025 mm are 72.875 in; 30 x 2.921 kg / 0.45359237 are 193.2 lb
    const inches = bundleLabelsPage(makeBundles([{ ...item, length: 1851.025 }], 100), head, "in");
    expect(textOf(inches)).toContain("Length 6&#39;-0 7/8&quot; Mass 193.2 lb");
    expect(textOf(inches)).not.toMatch(/ (mm|kg)\b/);
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
  const pieces = [{ mark: "01", length: 5000, count: 4 }];
  const stock = [{ length: 12000, count: null, remnant: false }];
  const plan = planCutting({ pieces, stock, endCrop: 10, kerf: 3, timeLimit: 500 }) as CuttingPlan;
  const groups = [{ size: "H16", grade: null, plan, list: cutList(plan, pieces, 1000) }];
  const facts = {
    refused: [],
    notToMake: [],
    toAsk: [],
    toBuy: [],
    endCrop: 10,
    kerf: 3,
    unit: "mm",
  } as const;

  it("should print stops with their marks, the bound, what is lost and where the rest goes", () => {
    const text = textOf(cutListPage(groups, head, facts));
    expect(text).toContain(
      "2 bars to buy for 4 pieces, proven least; 16.7 % of the stock is left over. Crop 10 mm off each bar first. Each cut takes 3 mm.",
    );
    // 12000 less the crop, two pieces and two cuts: 12000 - 10 - 10000 - 6
    expect(text).toContain("2 12000 2 × 5000 01 (4) 1984 rack");
  });

  it("should name bars in no plan before all else, and what is to be bought", () => {
    const refused = {
      ...{ size: "H16", grade: null, mark: "<02>", sheet: null, cell: "G12", length: 13000, count: 2 },
      ...{ longestStock: 12000, reason: isTooLong({}) },
    };
    const toBuy = [
      { size: "H16", grade: null, length: 12000, bars: 2, kilograms: 37.896, provenLeast: true },
    ];
    const page = cutListPage(groups, head, { ...facts, refused: [refused], toBuy });
    expect(textOf(page)).toMatch(
      /In no plan: 1 row H16, mark &lt;02&gt;, 2 bars, G12: too long Stock to buy .*H16 12000 2 0\.038 Together 0\.038 Size H16/,
    );
  });

  it("should set stops in feet and inches where the standard does", () => {
    const inches = [{ mark: "A1", length: 60 * 25.4, count: 4 }];
    const bars = [{ length: 240 * 25.4, count: null, remnant: false }];
    const cut = planCutting({
      pieces: inches,
      stock: bars,
      endCrop: 0,
      kerf: 0,
      timeLimit: 500,
    }) as CuttingPlan;
    const group = { size: "#5", grade: null, plan: cut, list: cutList(cut, inches, 1000) };
    const page = cutListPage([group], head, { ...facts, endCrop: 0, kerf: 0, unit: "in" });
    expect(textOf(page)).toContain("1 20&#39;-0&quot; 4 × 5&#39;-0&quot; A1 (4)");
  });
});
