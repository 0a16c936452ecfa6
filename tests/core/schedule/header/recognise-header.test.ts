import { expect, it } from "vitest";
import { recogniseHeader } from "../../../../core/schedule/header/recognise-header";

it.each(["Length ft-in", "Length (ft-in)", "Length, ft-in.", "Length ft in"])(
  "should read %s as a length in feet and inches",
  (header) => {
    expect(recogniseHeader(header)).toMatchObject({ kind: "length", unit: "ft" });
  },
);

it.each(["Getto", "N. getto", "Fase di getto"])(
  "should take %s, a casting of concrete, for the pour",
  (header) => {
    expect(recogniseHeader(header)).toMatchObject({ kind: "pour" });
  },
);
// 計 and 계 are "total": common practice
it.each(["本数 計", "員数 計", "개수 계", "수량 계"])("should read %s as the total number", (header) => {
  expect(recogniseHeader(header)).toMatchObject({ kind: "total" });
});
