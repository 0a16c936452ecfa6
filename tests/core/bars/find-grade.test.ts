import { describe, expect, it } from "vitest";
import { findGrade } from "../../../core/bars/find-grade";
import { plainGrade } from "../../../core/bars/plain-grade";
import { heldStandard } from "../../_support/held-standard";

const found = (standard: string, text: string): string | null =>
  findGrade(heldStandard(standard).grades, text)?.name ?? null;

describe("findGrade", () => {
  // how the trade writes the grades that each document names: common practice
  it.each([
    ["BS8666:2005", "B500B", "B500B or C"],
    ["BS8666:2005", "b 500 b", "B500B or C"],
    ["BS8666:2005", "B500C", "B500C"],
    ["BS8666:2005", "h", "B500A, B or C"],
    ["BS8666:2005", "500", "B500A, B or C"],
    ["BS8666:2005", "Grade 460", "high yield 460"],
    ["BS8666:2005", "R250", "plain 250"],
    ["EC2:2004", "B-500-B", "B500B"],
    ["DIN-EC2:2013", "BSt 500 S", "B500A"],
    ["DIN-EC2:2013", "BSt 500 S (B)", "B500B"],
    ["DIN-EC2:2013", "BSt 500 M (A)", "B500A"],
    ["AS3600:2018", "500N", "D500N"],
    ["AS3600:2018", "Grade 500L", "D500L"],
    ["NZS3109:1997", "Grade 500E", "500E"],
    ["NZS3109:1997", "gr.300E", "300E"],
    ["ACI318:2019", "Gr 60", "Grade 60"],
    ["ACI318:2019", "ASTM A615 Gr. 80", "Grade 80"],
    ["ACI318:2019", "60", "Grade 60"],
    ["IS2502:1963", "Fe500D", "Fe 500D"],
    ["IS2502:1963", "FE-500", "Fe 500"],
    ["IS2502:1963", "HYSD 415", "Fe 415"],
    ["GB50204:2015", "HRB 400 E", "HRB400E"],
    ["JASS5:2018", "SD 345", "SD345"],
  ])("%s reads %s as %s", (standard, typed, name) => {
    expect(found(standard, typed)).toBe(name);
  });

  it.each([
    ["BS8666:2005", "Grade 500E"],
    ["BS8666:2005", "Fe500D"],
    ["BS8666:2005", "HRB500"],
    ["BS8666:2005", "B600B"],
    ["EC2:2004", "B500E"],
    ["AS3600:2018", "BSt 500 S"],
    ["IS2502:1963", "B500B"],
    ["ACI318:2019", "Gr 65"],
    ["GB50204:2015", "HRB500D"],
    ["BS8666:2005", "三级"],
    ["BS8666:2005", ""],
  ])("%s holds no %s", (standard, typed) => {
    expect(found(standard, typed)).toBeNull();
  });

  it("finds every grade of every standard by its own name and letters", () => {
    for (const id of ["BS8666:2005", "AS3600:2018", "NZS3109:1997", "IS2502:1963", "JASS5:2018"]) {
      for (const grade of heldStandard(id).grades) {
        expect(found(id, grade.name)).toBe(grade.name);
        for (const letter of grade.prefixes) expect(found(id, letter.toLowerCase())).toBe(grade.name);
      }
    }
  });
});

describe("plainGrade", () => {
  it("comes out alike where the same grade is written differently", () => {
    for (const written of ["Gr 60", "GRADE 60", "A706/Grade-60", "60"])
      expect(plainGrade(written)).toBe("60");
    expect(plainGrade("b 500 b")).toBe(plainGrade("B500B"));
    expect(plainGrade("三级")).not.toBe(plainGrade(""));
  });
});
