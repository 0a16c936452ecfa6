import { describe, expect, it } from "vitest";
import { remarkVoid } from "../../../../core/schedule/cells/says-void";

// how remarks of lists are worded: common practice
describe("what a remark takes out", () => {
  it.each([
    ...[
      "VOID",
      "(deleted)",
      "Deleted rev B",
      "superseded by 12",
      "Superseded by mark 12a, rev C",
      "omitted.",
    ],
    ...["not required", "omit - see rev B", "cancelled 12/3/24", "withdrawn, see RFI 12", "bar deleted"],
    ...["mark 05 superseded", "entfällt ab Index B", "entfällt, s. Index a", "annulé", "作废"],
    // by country, from memory
    ...[
      "отпада, рев. 1",
      "atcelts",
      "törölve",
      "poistettu, rev B",
      "zrušena",
      "hủy",
      "删除",
      "slettet 12.03.2024",
    ],
  ])("should be the bar where it says %j", (remark) => {
    expect(remarkVoid(remark)).toBe("bar");
  });

  it.each([
    ...["omit end hook at opening", "not required at lift shaft", "deleted lap", "withdrawn end"],
    ...[
      "void former under",
      "see also superseded dwg",
      "rev B supersedes this bar",
      "omit 2 no",
      "deleted 3 bars",
      "取消端钩",
    ],
  ])("should be asked where it says %j", (remark) => {
    expect(remarkVoid(remark)).toBe("perhaps");
  });

  it.each([
    ...["fix over void former", "around void", "T1", "bend on site", "spare", "no longer lapped"],
    ...["supersedes A", "Supersedes mark 05 of rev A", "superseding rev A"],
    ...["replaced by mesh", "B1", "lap omits cover"],
  ])("should be nothing where it says %j", (remark) => {
    expect(remarkVoid(remark)).toBeNull();
  });
});
