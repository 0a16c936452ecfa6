import { describe, expect, it } from "vitest";
import { recogniseHeader } from "../../../../core/schedule/header/recognise-header";
import { readSchedule } from "../../../../core/schedule/read-schedule";
import { sheetFromRows } from "../../../../core/schedule/sheet";
import { resolveStandard, type Standard } from "../../../../core/standards";

describe("what stands behind and within the words of a head", () => {
  it.each([
    ["Cutting length:", "length"],
    ["Bar mark *)", "mark"],
    ["No. of members 1)", "members"],
    ["No. in each (2)", "each"],
    ["Total no.\u00b9", "total"],
    ["Schnitt-\nlänge", "length"],
    ["COMPR-\nIMENTO (cm)", "length"],
    ["Liczba\nw\n1\nelem.", "each"],
  ])("should leave %j what it is", (head, kind) => {
    expect(recogniseHeader(head)?.kind).toBe(kind);
  });

  it("should take no count from the first of two lines that say one thing", () => {
    expect(recogniseHeader("N°\nPILAS")).toEqual(recogniseHeader("N° PILAS"));
  });

  it("should leave the square of a unit and a lone sign alone", () => {
    expect(recogniseHeader("kg/m²")).toBeNull();
    expect(recogniseHeader("*")).toBeNull();
  });

  it("should read a list all of whose heads end in a colon, one with a soft hyphen within", () => {
    const heads = ["Mark:", "Ty\u00adpe:", "Size:", "No.:", "Length mm:", "A:", "B:"];
    const bars = [
      ["01", 11, "H12", 4, 1500, 900, 620],
      ["02", 11, "H16", 6, 1740, 1100, 680],
    ];
    const { bars: read } = readSchedule(
      sheetFromRows("List", [heads, ...bars]),
      resolveStandard("BS8666:2005") as Standard,
    );
    expect(read.map(({ shape, total, length }) => [shape, total, length])).toEqual([
      ["11", 4, 1500],
      ["11", 6, 1740],
    ]);
  });
});
