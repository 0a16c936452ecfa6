import { describe, expect, it } from "vitest";
import { readSchedule } from "../../../../core/schedule/read-schedule";
import { sheetFromRows } from "../../../../core/schedule/sheet";
import { standardNamed } from "../../shapes/resolved";
import { HEADS } from "../plain-list";

const EC2 = standardNamed("EC2:2004");

// marks and words of repetition by country: common practice
const SAID = [
  '-"-',
  "„",
  "//",
  "-//-",
  ">>",
  "-II-",
  '--"--',
  "Ídem",
  "id.",
  "c.s.",
  "j.w.",
  "dtto",
  "-nt-",
  "như trên",
  "те саме",
  "ομοίως",
];

describe("a size and a length that are those of the row above", () => {
  it.each(SAID)("are read where %s stands for them", (said) => {
    const rows = [
      HEADS,
      ["1", 12, 10, 2000, 17.76],
      ["2", said, 20, said, 35.52],
      ["3", 16, 10, 4000, 63.16],
    ];
    const { bars } = readSchedule(sheetFromRows("S", rows), EC2);
    expect(bars[1]).toMatchObject({ size: { diameter: 12 }, length: 2000, problems: null });
  });

  it.each(["'", ",", "-", "ii", "n"])("are not read where %s stands", (said) => {
    const rows = [HEADS, ["1", 12, 10, 2000, 17.76], ["2", 12, 20, said, 35.52], ["3", 16, 10, 4000, 63.16]];
    expect(readSchedule(sheetFromRows("S", rows), EC2).bars[1]?.length ?? null).toBeNull();
  });
});
