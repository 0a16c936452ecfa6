import { describe, expect, it } from "vitest";
import { WORKSHEET_FUNCTIONS } from "../../core/formulas";
import { FUNCTION_EXAMPLES } from "../../docs/generate/function-examples.data";
import { generate } from "../../docs/generate/function-pages";

describe("pages of worksheet functions", () => {
  it("has a page for each function and its examples' answers", async () => {
    const pages = await generate();
    for (const name of WORKSHEET_FUNCTIONS.keys()) expect(pages.has(`functions/${name}.md`)).toBe(true);
    // 1000 + 400 + 500 - 32 - 32, then up to 25
    expect(pages.get("functions/CUTLENGTH.md")).toContain(
      '=BAR.CUTLENGTH("21","H16",{1000,400,500},"BS8666:2005")\n  1850\n',
    );
  });

  it("names only functions that exist", () => {
    for (const { name } of FUNCTION_EXAMPLES) expect(WORKSHEET_FUNCTIONS.has(name), name).toBe(true);
  });
});
