import { expect, test } from "vitest";
import { WORKSHEET_FUNCTIONS } from "../../../core/formulas";
import { massPlaces } from "../../../core/units/mass-places";
import { printMass, tonnesOf } from "../../../core/units/print-mass";

const places = (printed: string): number => (printed.split(" ")[0]?.split(".")[1] ?? "").length;

test("should be the decimals that masses are printed with elsewhere", () => {
  expect(massPlaces("kg")).toBe(places(printMass(84.774, "mm")));
  expect(massPlaces("lb")).toBe(places(printMass(84.774, "in")));
  expect(massPlaces("t")).toBe(places(tonnesOf(84.774)));
  expect(massPlaces("TON")).toBe(massPlaces("t"));
});

test("should go by the unit that a function of masses was asked for", () => {
  const unit = (name: string, ...args: (string | undefined)[]) =>
    WORKSHEET_FUNCTIONS.get(name)?.massUnit?.(args.map((arg) => (arg === undefined ? arg : [[arg]])));
  expect(unit("ROWMASS")).toBe("kg");
  expect(unit("ROWMASS", "21", "H16", undefined, "4", undefined, "t")).toBe("t");
  expect(unit("TONNAGE", "P1", "H16", "100")).toBe("t");
  expect(unit("TONNAGE", "P1", "H16", "100", "lb")).toBe("lb");
  expect(unit("CUTLENGTH", "21", "H16")).toBeUndefined();
});
