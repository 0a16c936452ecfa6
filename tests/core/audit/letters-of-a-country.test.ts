import { describe, expect, it } from "vitest";
import { runAudit } from "../../../core/audit/run-audit";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { heldStandard } from "../../_support/held-standard";

const HEAD: Cell[] = ["Bar mark", "Bar size", "Total no.", "Length mm", "Shape code", "A", "B", "C"];

/** What is told above a note, and notes of grades and of another standard. */
function told(title: string, sizes: readonly string[]) {
  // BS 8666:2005 shape 21 of 12 mm (from memory): 300 + 1200 + 300 - 24 - 48 = 1728, cut as 1750; 11 has 300 + 1200 - 24 = 1476, cut as 1500
  const bars: Cell[][] = sizes.map((size, at) => [`0${at + 1}`, size, 10, 1750, "21", 300, 1200, 300]);
  const wrong: Cell[] = ["09", sizes[0] as string, 10, 2500, "11", 300, 1200];
  const { findings } = runAudit({
    sheets: [sheetFromRows("BBS", [[title], HEAD, ...bars, wrong])],
    standard: heldStandard("BS8666:2005"),
  });
  const isAsked = ({ severity, code }: (typeof findings)[number]) =>
    severity !== "note" || /^(?:GRADE101|SIZE105)$/.test(code);
  return findings
    .filter(isAsked)
    .map(({ code, severity, cell }) => `${code} ${severity} ${cell ?? ""}`.trim())
    .sort();
}

// D before deformed bars: common practice in East Africa and South Asia
describe("a letter of a country before all sizes of a list that names the document in force", () => {
  it("should be asked once, as a note, and the bars be judged by the document", () => {
    const sizes = ["D12", "D12", "D12", "D12"];
    expect(told("Shape codes to BS 8666:2005", sizes)).toEqual(["GRADE101 note", "LEN102 off-standard D7"]);
  });

  it("should speak for another document where the list names none", () => {
    expect(told("Bar bending schedule", ["D12", "D12", "D12", "D12"])).toEqual(["SIZE105 off-standard B3"]);
  });
});
