import { expect, it } from "vitest";
import { unitInTitle } from "../../../../core/schedule/columns/unit-in-title";

// the words stand for "dimensions and lengths in cm", "dimensions in m" and "lengths in mm": from memory
it.each([
  ['\u05de\u05d9\u05d3\u05d5\u05ea \u05d5\u05d0\u05d5\u05e8\u05db\u05d9\u05dd \u05d1\u05e1"\u05de', "cm"],
  ['\u05de\u05d9\u05d3\u05d5\u05ea \u05d1\u05de"\u05de', "mm"],
  ["\u0627\u0644\u0623\u0628\u0639\u0627\u062f \u0628\u0627\u0644\u0633\u0645", "cm"],
  [
    "\u0627\u0644\u0623\u0628\u0639\u0627\u062f \u062e\u0627\u0631\u062c\u064a\u0629 \u0628\u0627\u0644\u0645\u062a\u0631",
    "m",
  ],
  ["\u0645\u0642\u0627\u0633\u0627\u062a", null],
  ["hossz m", "m"],
])("reads the unit of lengths out of %j", (title, unit) => {
  expect(unitInTitle(() => [title], 1)).toBe(unit);
});
