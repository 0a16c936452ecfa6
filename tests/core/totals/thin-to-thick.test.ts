import { describe, expect, it } from "vitest";
import { thinToThick } from "../../../core/totals/thin-to-thick";

describe("names of sizes in order", () => {
  it("go by the bar and not by its letters", () => {
    expect(["H25", "T16", "R10", "H8", "H16", "H10"].sort(thinToThick)).toEqual([
      "H8",
      "H10",
      "R10",
      "H16",
      "T16",
      "H25",
    ]);
    expect(["#11", "#4", "#5"].sort(thinToThick)).toEqual(["#4", "#5", "#11"]);
    expect(["HRB400 25", "HRB500 8"].sort(thinToThick)).toEqual(["HRB500 8", "HRB400 25"]);
  });

  it("have those without a number last", () => {
    expect(["(no size)", "H50", "mesh"].sort(thinToThick)).toEqual(["H50", "(no size)", "mesh"]);
  });
});
