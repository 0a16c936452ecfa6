import { expect, it } from "vitest";
import { readSchedule } from "../../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../../core/schedule/sheet";
import { heldStandard } from "../../../_support/held-standard";

const HEADS: Cell[] = ["Mc", "TIPO", "Ø", "No.", "a", "b", "c", "LONG. m"];
const kindOf = (types: readonly Cell[]) => {
  const rows = types.map((type, at): Cell[] => [100 + at, type, 12, 20 + at, 0.15, 1.2, 0.15, 1.5]);
  const { tables } = readSchedule(sheetFromRows("Hoja", [HEADS, ...rows]), heldStandard("BS8666:2005"));
  return [...(tables[0]?.columns ?? [])].find(([, { column }]) => column === 1)?.[0] ?? null;
};

// common practice: bars are called by the letters that they look like
it("takes letters that bars look like for shapes, whatever stands over them", () => {
  expect(kindOf(["C", "L", "I", "O", "C"])).toBe("shape");
});

it.each([
  ["other letters", ["A", "B", "C", "D", "A"]],
  ["one letter alone", ["C", "C", "C", "C", "C"]],
  ["numbers among them", ["C", "L", 1, "O", "C"]],
])("leaves %s alone", (_, types) => {
  expect(kindOf(types)).toBeNull();
});
