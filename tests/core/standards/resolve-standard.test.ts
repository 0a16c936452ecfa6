import { describe, expect, it } from "vitest";
import { resolveStandard, STANDARD_IDS } from "../../../core/standards/index";
import { answered, heldStandard, refused } from "../../_support/held-standard";

describe("resolveStandard", () => {
  it("holds every document of the contract", () => {
    expect([...STANDARD_IDS].sort()).toEqual(
      [
        "BS8666:2005",
        "BS8666:2020",
        "EC2:2004",
        "DIN-EC2:2013",
        "AS3600:2018",
        "NZS3109:1997",
        "ACI318:2019",
        "CSA-A23.1:2019",
        "IS2502:1963",
        "INDIA-SITE",
        "SANS282:2011",
        "ISO3766:2003",
        "JASS5:2018",
        "GB50204:2015",
        "BS4466:1989",
      ].sort(),
    );
  });

  it.each([
    ["BS8666:2005", "BS8666:2005"],
    ["bs 8666", "BS8666:2005"],
    ["BS8666", "BS8666:2005"],
    [" Bs 8666 : 2020 ", "BS8666:2020"],
    ["BS 8666-2020", "BS8666:2020"],
    ["BS 8666:2005+A1:2008", "BS8666:2005"],
    ["", "BS8666:2005"],
    ["  ", "BS8666:2005"],
    ["ec2", "EC2:2004"],
    ["EN 1992-1-1:2004", "EC2:2004"],
    ["din-ec2", "DIN-EC2:2013"],
    ["ACI 318-19", "ACI318:2019"],
    ["aci318", "ACI318:2019"],
    ["CSA A23.1", "CSA-A23.1:2019"],
    ["CSA A23.1-19", "CSA-A23.1:2019"],
    ["as 3600", "AS3600:2018"],
    ["NZS 3109", "NZS3109:1997"],
    ["IS 2502", "IS2502:1963"],
    ["india site", "INDIA-SITE"],
    ["sans 282", "SANS282:2011"],
    ["iso 3766", "ISO3766:2003"],
    ["jass 5", "JASS5:2018"],
    ["GB 50204-2015", "GB50204:2015"],
    ["BS 4466", "BS4466:1989"],
    // as lists name the documents that they follow
    ["EN 13670 / Eurocode 2", "EC2:2004"],
    ["ACI 315 / CRSI", "ACI318:2019"],
    ["CSA A23 / RSIC", "CSA-A23.1:2019"],
    ["AS 3600 / AS/NZS 4671", "AS3600:2018"],
    ["JIS G 3112", "JASS5:2018"],
    ["DIN EN 1992 / DIN 488", "DIN-EC2:2013"],
    ["BS 8666 / BS 4449", "BS8666:2005"],
    ["GB 50010 / 22G101", "GB50204:2015"],
    ["bs 4466:89", "BS4466:1989"],
  ])("reads %s as %s", (typed, id) => {
    expect(answered(resolveStandard(typed)).id).toBe(id);
  });

  it("takes the default for nothing at all", () => {
    expect(answered(resolveStandard()).id).toBe("BS8666:2005");
    expect(answered(resolveStandard(null)).id).toBe("BS8666:2005");
  });

  it.each([
    ["BS8666:2000", "BS8666:2005"],
    ["BS 8666:2024", "BS8666:2020"],
    ["bs8666:98", "BS8666:2005"],
    ["ACI318:2014", "ACI318:2019"],
    ["AS 3600:2009", "AS3600:2018"],
    ["IS2502:1999", "IS2502:1963"],
    ["EC2:2023", "EC2:2004"],
    ["BS 4466:1981", "BS4466:1989"],
  ])("refuses the edition %s and names %s", (typed, nearest) => {
    const { kind, text } = refused(resolveStandard(typed));
    expect(kind).toBe("not-held");
    expect(text).toContain(`"${typed}"`);
    expect(text).toContain(nearest);
  });

  it("takes neither of two documents that are named beside each other", () => {
    expect(refused(resolveStandard("AS 3600 / NZS 3109")).kind).toBe("not-held");
    expect(refused(resolveStandard("BS 8666 / ACI 318")).kind).toBe("not-held");
  });

  it("lists what is held for a name that it does not know", () => {
    const { kind, text } = refused(resolveStandard("eurocode nine"));
    expect(kind).toBe("not-held");
    for (const id of STANDARD_IDS) expect(text).toContain(id);
  });

  it("gives one object for one resolved id", () => {
    expect(resolveStandard("bs 8666")).toBe(resolveStandard("BS8666:2005"));
    expect(resolveStandard("bs8666 + as3600")).toBe(resolveStandard("BS8666:2005+AS3600:2018"));
    for (const id of STANDARD_IDS) expect(heldStandard(id).id).toBe(id);
  });
});

describe("shapes by one document and bars by another", () => {
  const joined = heldStandard("BS8666:2005+AS3600:2018");
  const [bs, as] = [heldStandard("BS8666:2005"), heldStandard("AS3600:2018")];

  it("takes shapes, rounding and scheduling from the first", () => {
    expect(joined.id).toBe("BS8666:2005+AS3600:2018");
    expect(joined.shapes).toBe(bs.shapes);
    expect(joined.lengthRounding).toEqual(bs.lengthRounding);
    expect(joined.unit).toBe("mm");
    expect(joined.dimensionStep).toEqual(bs.dimensionStep);
  });

  it("takes bars, formers, hooks and end legs from the second", () => {
    expect(joined.bars).toBe(as.bars);
    expect(answered(joined.readSize("N16")).bar?.size).toBe("N16");
    expect(refused(joined.readSize("H16")).kind).toBe("not-held");
    expect(answered(joined.former({ diameter: 20, use: "main" })).value).toBe(100);
    // the r that stands in the printed formulas is that of the pin in use
    expect(answered(joined.formulaRadius(20, "main")).value).toBe(50);
    expect(joined.hook(180, 20, "main")).toBe(as.hook(180, 20, "main"));
    expect(joined.endLeg(20, "main")).toBe(as.endLeg(20, "main"));
  });

  it("is the document itself where both are one", () => {
    expect(resolveStandard("BS8666:2005+bs8666")).toBe(bs);
  });

  it("keeps the unit of the schedule", () => {
    expect(heldStandard("BS8666:2005+ACI318:2019").unit).toBe("mm");
    expect(heldStandard("ACI318:2019+EC2:2004").unit).toBe("in");
  });

  it("gives ISO 3766 the bending of another document", () => {
    const former = heldStandard("ISO3766:2003+EC2:2004").former({ diameter: 16, use: "main" });
    expect(answered(former).value).toBe(64);
  });

  it.each([
    ["BS8666:2005+nothing", "not-held", `"nothing"`],
    ["BS8666:2000+AS3600:2018", "not-held", "BS8666:2005"],
    ["BS8666+EC2+AS3600", "value", "more than two"],
  ])("refuses %s", (typed, kind, words) => {
    const answer = refused(resolveStandard(typed));
    expect(answer.kind).toBe(kind);
    expect(answer.text).toContain(words);
  });
});
