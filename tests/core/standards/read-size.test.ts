import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { STANDARD_IDS } from "../../../core/standards/index";
import { isRefusal } from "../../../core/units/refusal";
import { answered, heldStandard, refused } from "../../_support/held-standard";

describe("sizes as their users write them", () => {
  it.each<[string, string | number, string, number, string]>([
    ["BS8666:2005", "H16", "16", 16, "H"],
    ["BS8666:2005", 16, "16", 16, ""],
    ["BS8666:2005", "16", "16", 16, ""],
    ["BS8666:2005", "T16", "16", 16, "T"],
    ["BS8666:2005", "r10", "10", 10, "R"],
    ["BS8666:2005", "Ø16", "16", 16, ""],
    ["BS8666:2005", "16 mm", "16", 16, ""],
    ["BS8666:2005", "dia 16", "16", 16, ""],
    ["AS3600:2018", "N16", "N16", 16, "N"],
    ["AS3600:2018", "16", "N16", 16, ""],
    ["AS3600:2018", "R10", "N10", 10, "R"],
    ["NZS3109:1997", "HD16", "16", 16, "HD"],
    ["NZS3109:1997", "D12", "12", 12, "D"],
    ["ACI318:2019", "#5", "#5", 15.875, ""],
    ["ACI318:2019", "No.5", "#5", 15.875, ""],
    ["ACI318:2019", 5, "#5", 15.875, ""],
    ["ACI318:2019", 0.625, "#5", 15.875, ""],
    ["CSA-A23.1:2019", "15M", "15M", 16, ""],
    ["CSA-A23.1:2019", 20, "20M", 19.5, ""],
    ["IS2502:1963", "Fe 500 16", "16", 16, "FE500"],
    ["IS2502:1963", "TMT 12", "12", 12, "TMT"],
    ["SANS282:2011", "Y25", "25", 25, "Y"],
    ["JASS5:2018", "D16", "D16", 15.9, "D"],
    ["JASS5:2018", "16", "D16", 15.9, ""],
    ["GB50204:2015", "C18", "18", 18, "C"],
    ["GB50204:2015", "HRB400E 22", "22", 22, "HRB400E"],
    ["EC2:2004", "B500B 14", "14", 14, "B500B"],
  ])("%s reads %s as %s", (id, typed, size, diameter, prefix) => {
    const reading = answered(heldStandard(id).readSize(typed));
    expect(reading).toMatchObject({ typed: String(typed), diameter, prefix });
    expect(reading.bar?.size).toBe(size);
  });

  it("takes any diameter as a plain number, without a bar", () => {
    expect(answered(heldStandard("BS8666:2005").readSize(14))).toMatchObject({ diameter: 14, bar: null });
    expect(answered(heldStandard("ACI318:2019").readSize("16mm"))).toMatchObject({ diameter: 16, bar: null });
    expect(answered(heldStandard("ACI318:2019").readSize(0.7)).diameter).toBeCloseTo(17.78, 9);
    expect(answered(heldStandard("CSA-A23.1:2019").readSize("15 mm"))).toMatchObject({
      diameter: 15,
      bar: null,
    });
  });

  it.each<[string, string | number, string, string]>([
    ["BS8666:2005", "N16", "not-held", "BS8666:2005 does not hold"],
    ["BS8666:2005", "#5", "not-held", "the nearest that it holds is 16"],
    ["BS8666:2005", "15M", "not-held", "the nearest that it holds is 16"],
    ["BS8666:2005", "H14", "not-held", "the nearest that it holds is 12 or 16"],
    ["BS8666:2005", "HD16", "not-held", "the nearest bar that it holds is 16"],
    ["AS3600:2018", "H16", "not-held", "the nearest bar that it holds is N16"],
    ["ACI318:2019", "H16", "not-held", "the nearest bar that it holds is #5"],
    ["ACI318:2019", 16, "value", "the nearest bar that it holds is #5"],
    ["ACI318:2019", "15M", "not-held", "the nearest that it holds is #5"],
    ["CSA-A23.1:2019", "#5", "not-held", "the nearest that it holds is 15M"],
    ["JASS5:2018", "D17", "not-held", "the nearest that it holds is D16"],
    ["BS8666:2005", 500, "value", "the nearest bar that it holds is 50"],
    ["BS8666:2005", "", "value", "is no bar size"],
    ["BS8666:2005", "abc", "value", "is no bar size"],
    ["BS8666:2005", -16, "value", "is no bar size"],
    ["BS8666:2005", 0, "value", "is no bar size"],
    ["BS8666:2005", Number.NaN, "value", "is no bar size"],
    ["BS8666:2005", Number.POSITIVE_INFINITY, "value", "is no bar size"],
  ])("%s refuses %s (%s)", (id, typed, kind, words) => {
    const answer = refused(heldStandard(id).readSize(typed));
    expect(answer.kind).toBe(kind);
    expect(answer.text).toContain(`"${typed}"`);
    expect(answer.text).toContain(words);
  });

  it.each(STANDARD_IDS)("%s reads every bar of its own table by name, number and letters", (id) => {
    const standard = heldStandard(id);
    for (const bar of standard.bars) {
      expect(answered(standard.readSize(bar.size)).bar).toBe(bar);
      expect(answered(standard.readSize(bar.size.toLowerCase())).bar).toBe(bar);
      expect(answered(standard.readSize(Number(bar.size.replace(/\D/g, "")))).bar).toBe(bar);
      for (const prefix of standard.grades.flatMap((grade) => grade.prefixes)) {
        const number = bar.size.replace(/\D/g, "");
        expect(answered(standard.readSize(prefix + number)).bar?.diameter).toBe(bar.diameter);
      }
    }
  });

  // ISO 3766 codes shapes and leaves the letters of the steel to the country: Danish Y, Finnish T, Norwegian K
  it.each(["Y12", "T16", "K20"])("ISO3766 reads %s with the letter of a country", (typed) => {
    const reading = answered(heldStandard("ISO3766:2003").readSize(typed));
    expect([reading.bar?.size, reading.prefix]).toEqual([typed.slice(1), typed.slice(0, 1)]);
  });

  it("remembers a text, so that a long column costs little", () => {
    const standard = heldStandard("BS8666:2005");
    expect(standard.readSize("H16")).toBe(standard.readSize("H16"));
    for (let number = 0; number < 10_000; number++) standard.readSize(`junk ${number}`);
    expect(answered(standard.readSize("H16")).bar?.size).toBe("16");
  });

  it("should read a diameter above zero or refuse, whatever is typed", () => {
    const standards = STANDARD_IDS.map(heldStandard);
    fc.assert(
      fc.property(fc.constantFrom(...standards), fc.oneof(fc.string(), fc.double()), (standard, typed) => {
        const reading = standard.readSize(typed);
        expect(isRefusal(reading) || reading.diameter > 0).toBe(true);
      }),
    );
  });
});
