import { describe, expect, it } from "vitest";
import { contradicts, documentsNamed } from "../../../core/standards";

const ids = (text: string) =>
  documentsNamed(text).map(({ id, isNamed }) => (isNamed ? id : `words of ${id}`));

// the numbers and years of the documents are their own
describe("documents named in words", () => {
  const CASES: [string, string[]][] = [
    ["Bar bending schedule to BS 8666:2020", ["BS8666:2020"]],
    ["BS8666-2005", ["BS8666:2005"]],
    ["B.S. 8666", ["BS8666:2005"]],
    ["BS 8666 : 2000", []],
    ["BAR BENDING SCHEDULE  IS 2502", ["IS2502:1963"]],
    ["IS:2502-1963", ["IS2502:1963"]],
    ["REINFORCING SCHEDULE   ACI 318-19   ASTM A615 GR 60", ["ACI318:2019"]],
    ["nach DIN EN 1992-1-1", ["DIN-EC2:2013"]],
    ["BS EN 1992-1-1:2004", ["EC2:2004"]],
    ["to Eurocode 2", ["EC2:2004"]],
    ["Stahlliste Decke über EG", ["words of DIN-EC2:2013"]],
    ["AS 3600:2018", ["AS3600:2018"]],
    ["this 2502 kg is in total", []],
    ["total mass is 2502 kg, pour 8666", []],
    ["BS 86660", []],
  ];
  it.each(CASES)("%s", (text, named) => expect(ids(text)).toEqual(named));

  it("stand beside a document of bars where they are of the design", () => {
    expect(contradicts("EC2:2004", "BS8666:2005")).toBe(false);
    expect(contradicts("BS8666:2020", "BS8666:2005")).toBe(true);
    expect(contradicts("AS3600:2018", "BS8666:2005+AS3600:2018")).toBe(false);
    expect(contradicts("IS2502:1963", "INDIA-SITE")).toBe(false);
  });
});
