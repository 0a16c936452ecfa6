import { describe, expect, test } from "vitest";
import { inOrderOfPours } from "../../../core/totals/in-order-of-pours";

const names = (list: readonly string[], groupedBy: string) =>
  inOrderOfPours(
    list.map((pour) => ({ pour })),
    groupedBy,
  ).map(({ pour }) => pour);

describe("inOrderOfPours", () => {
  test("should count numbers in names, and put bars without a pour last", () => {
    expect(names(["Pour 3", "", "Pour 10", "Pour 4"], "pour")).toEqual(["Pour 3", "Pour 4", "Pour 10", ""]);
  });

  test("should leave members as the sheet has them", () => {
    expect(names(["Wall", "Base", ""], "member")).toEqual(["Wall", "Base", ""]);
  });
});
