import { expect, test } from "vitest";
import { createLocalEngine } from "../../../../addin/pane/engine/local-engine";
import { NO_OTHER_SHEETS } from "../../../../addin/pane/engine/other-sheets";
import { sheetFromRows } from "../../../../core/schedule";

// BS 8666:2005 shape 21, H16: A + B + (C) - r - 2d = 700 + 1450 + 700 - 32 - 32 = 2786, up to 2800;
// 1.579 kg/m by the UK three-decimal table, so that ten are 44.212 kg
const ROWS = [
  ["Bar mark", "Type and size", "Total no.", "Length mm", "Shape code", "A mm", "B mm", "C mm", "Mass kg"],
  ["01", "H16", 10, 2800, "21", 700, 1450, 700, 44.21],
  ["02", "H16", 10, 2800, "21", 700, 1450, 700, 44.21],
];

async function checked() {
  const engine = createLocalEngine();
  const sheet = sheetFromRows("Bars", ROWS);
  const standard = "BS8666:2005";
  await engine.check({ sheet, shop: null, otherSheets: NO_OTHER_SHEETS, standard, settings: null });
  return engine;
}

test("should give the length and the mass that follow a longer leg, and what it comes to", async () => {
  const engine = await checked();
  // 700 + 1450 + 900 - 64 = 2986, up to 3000; ten of 3.0 m are 47.37 kg
  const { edits, effect } = await engine.follows("Bars", [{ cell: "H2", to: 900 }]);
  expect(edits.find(({ cell }) => cell === "D2")).toMatchObject({ before: 2800, to: 3000 });
  expect(edits.find(({ cell }) => cell === "I2")?.to).toBeCloseTo(47.37, 1);
  expect(edits.every(({ cell }) => cell.endsWith("2"))).toBe(true);
  expect(effect).toBe("Steel of these rows: 44.2 kg, then 47.4 kg. In all: 0.088 t, then 0.092 t.");
});

test("should try it on a copy: the sheet's own judgement stays", async () => {
  const engine = await checked();
  const before = await engine.totals("Bars");
  await engine.follows("Bars", [{ cell: "H2", to: 900 }]);
  expect((await engine.totals("Bars")).total).toBe(before.total);
});

test("should say what is cut where a length changes that the tonnes do not go by", async () => {
  const rows = ROWS.map((row, at) => (at === 1 ? row.map((cell) => (cell === 2800 ? 3300 : cell)) : row));
  const engine = createLocalEngine();
  const sheet = sheetFromRows("Bars", rows);
  await engine.check({
    sheet,
    shop: null,
    otherSheets: NO_OTHER_SHEETS,
    standard: "BS8666:2005",
    settings: null,
  });
  // ten of 3.3 m are 52.107 kg, where the tonnes hold ten of 2.8 m
  expect((await engine.totals("Bars")).asTyped).toBe("0.096");
  const { effect } = await engine.follows("Bars", [{ cell: "D2", to: 2800 }]);
  expect(effect).toBe(
    "What is cut, ticketed and loaded changes: 52.1 kg of these rows, then 44.2 kg. The tonnes stay, as they go by the dimensions: 0.088 t in all.",
  );
});

test("should say where nothing follows", async () => {
  const engine = await checked();
  const { edits, effect } = await engine.follows("Bars", [{ cell: "A2", to: "09" }]);
  expect(edits).toEqual([]);
  expect(effect).toBe("The steel stays: 0.088 t in all.");
});
