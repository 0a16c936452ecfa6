import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { BarRow, TableReading } from "../../../../core/schedule/bar-row";
import { plainBar } from "../../../../core/schedule/rows/stored-bar";
import { StoredBars } from "../../../../core/schedule/rows/stored-bars";

const table: TableReading = { headerTop: 0, headerBottom: 0, columns: new Map() };
const text = fc.option(fc.string({ maxLength: 4 }));
const number = fc.option(fc.double({ noNaN: true, min: -1e6, max: 1e6 }));

const bar = fc.record<Required<BarRow>>({
  table: fc.constant(table),
  row: fc.nat(),
  member: text,
  mark: text,
  sizeTyped: text,
  size: fc.option(fc.constant({ typed: "H16", prefix: "H", diameter: 16, bar: null })),
  grade: text,
  shape: text,
  dims: fc.array(number, { maxLength: 9 }),
  radius: number,
  freeDims: fc.constantFrom("", "A"),
  members: number,
  each: number,
  total: number,
  length: number,
  mass: number,
  former: number,
  coating: text,
  pour: text,
  revision: text,
  released: text,
  drawing: text,
  remark: text,
  hidden: fc.boolean(),
  struckThrough: fc.boolean(),
  problems: fc.option(fc.constant([])),
  unitMass: number,
  pieceMass: number,
  totalLength: number,
  sizedAt: fc.option(fc.nat(20)),
  spacing: number,
  varying: fc.constant(null),
  setMark: text,
  legs: fc.option(fc.array(fc.nat(900), { maxLength: 3 })),
  lap: number,
  remarks: fc.option(fc.constant({ layers: ["T1"], hand: null, alternate: false, stagger: false })),
  superseded: fc.boolean(),
  supersededBy: fc.option(fc.constant({ revision: "B", sheet: null })),
  fill: text,
});

describe("StoredBars", () => {
  it("should give back every field of every bar as it was kept", () => {
    fc.assert(
      fc.property(fc.array(bar, { maxLength: 60 }), (bars) => {
        const stored = new StoredBars(table);
        const kept = bars.map((one) => stored.keep(one));
        expect(kept.map(plainBar)).toEqual(bars);
        expect(JSON.stringify(kept)).toBe(JSON.stringify(bars.map(plainBar)));
      }),
    );
  });

  it("should change one bar and none beside it", () => {
    fc.assert(
      fc.property(fc.array(bar, { minLength: 2, maxLength: 40 }), fc.nat(), text, (bars, some, to) => {
        const stored = new StoredBars(table);
        const kept = bars.map((one) => stored.keep(one));
        const at = some % bars.length;
        const changed = {
          ...{ member: to, pour: to, grade: to, setMark: to, remark: to, remarks: null },
          ...{ superseded: true, supersededBy: { revision: "C", sheet: "L" } },
        };
        Object.assign(kept[at] as object, changed);
        const wanted = bars.map((one, place) => (place === at ? { ...one, ...changed } : one));
        expect(kept.map(plainBar)).toEqual(wanted);
      }),
    );
  });
});
