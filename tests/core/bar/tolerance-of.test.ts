import { describe, expect, it } from "vitest";
import { toleranceOf } from "../../../core/bar/tolerance-of";
import { resolveStandard, type Standard } from "../../../core/standards";

const aci = resolveStandard("ACI318:2019") as Standard;
const australian = resolveStandard("AS3600:2018") as Standard;
const bar = (size: string, use = "main", isPlain = false) => ({ size, use, isPlain });
const INCH = 25.4;

// ACI 117 and AS 3600, 17.2.2: values from memory, as the tables held say themselves
describe("toleranceOf", () => {
  it("should take a line for named sizes before the general one", () => {
    expect(toleranceOf(aci, "cut length", 3000, bar("#8"))).toEqual({ plus: INCH, minus: INCH });
    expect(toleranceOf(aci, "cut length", 3000, bar("#14"))).toEqual({ plus: 2 * INCH, minus: 2 * INCH });
  });

  it("should take the line for links, and from a size on that line", () => {
    const link = (size: string) => toleranceOf(aci, "bent dimension", 300, bar(size, "link"));
    expect(link("#4")).toEqual({ plus: INCH / 2, minus: INCH / 2 });
    expect(link("#6")).toEqual({ plus: INCH, minus: INCH });
    const plain = toleranceOf(australian, "bent dimension", 300, bar("R10", "link", true));
    expect(plain).toEqual({ plus: 0, minus: 10 });
  });

  it("should hold a line up to its length, that length included", () => {
    expect(toleranceOf(australian, "bent dimension", 600, bar("N16"))).toEqual({ plus: 0, minus: 25 });
    expect(toleranceOf(australian, "bent dimension", 600.1, bar("N16"))).toEqual({ plus: 0, minus: 40 });
  });

  it("should give none where the standard holds none", () => {
    expect(toleranceOf(australian, "cut length", 600, bar("N16"))).toBeNull();
    const none = resolveStandard("EC2:2004") as Standard;
    expect(toleranceOf(none, "bent dimension", 600, bar("16"))).toBeNull();
  });
});
