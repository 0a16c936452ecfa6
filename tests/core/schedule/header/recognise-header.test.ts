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
