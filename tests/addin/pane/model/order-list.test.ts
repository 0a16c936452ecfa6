import { expect, test } from "vitest";
import { tableCsv, tableText } from "../../../../addin/pane/model/local-table";
import { orderLines } from "../../../../addin/pane/model/order-list";

const LINES = orderLines([
  { size: "H16", stock: "12000 mm", bars: "14", tonnes: "0.265", kilograms: "265", provenLeast: true },
  { size: "H20; coil", stock: "9000 mm", bars: "2", tonnes: "?", kilograms: "?", provenLeast: false },
]);

test("should part the order by the sign of the place, and tell a spreadsheet its letters", () => {
  expect(tableCsv(LINES, "en-GB")).toBe(
    "\ufeffSize,Stock length,Bars,kg\r\nH16,12000 mm,14,265\r\nH20; coil,9000 mm,2,?\r\n",
  );
  // where the comma is the decimal sign
  expect(tableCsv(LINES, "de-DE")).toBe(
    '\ufeffSize;Stock length;Bars;kg\r\nH16;12000 mm;14;265\r\n"H20; coil";9000 mm;2;?\r\n',
  );
});

test("should be a table with tabs for the clipboard", () => {
  expect(tableText(LINES, "\t").split("\r\n")[1]).toBe("H16\t12000 mm\t14\t265");
});

test("should round tonnes to the kilogram by the sign of the place, and make no formula of a name", () => {
  const tonnes = [
    ["pour", "total, t"],
    ["=P1", 1146.27135035],
  ];
  expect(tableCsv(tonnes, "fr-FR")).toBe("\ufeffpour;total, t\r\n'=P1;1146,271\r\n");
  expect(tableCsv(tonnes, "en-GB")).toBe('\ufeffpour,"total, t"\r\n\'=P1,1146.271\r\n');
});
