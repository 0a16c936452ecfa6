import { describe, expect, it } from "vitest";
import { LANGUAGES } from "../../../../core/schedule/header/all-languages";
import { recogniseHeader } from "../../../../core/schedule/header/recognise-header";

// headings of several words, in the order that each language puts them (common practice)
const HEADINGS: readonly (readonly [heading: string, kind: string, unit: string | null])[] = [
  ["Pieces per member", "each", null],
  ["Pieces total", "total", null],
  ["Pzas/elem.", "each", null],
  ["Total pzas", "total", null],
  ["Кол. на 1 эл., шт.", "each", null],
  ["Количество элементов", "members", null],
  ["Tổng chiều dài (m)", "totalLength", "m"],
  ["Chiều dài 1 thanh (mm)", "length", "mm"],
  ["Συνολικό μήκος (m)", "totalLength", "m"],
  ["Ukupna duljina (m)", "totalLength", "m"],
  ["จำนวนรวม", "total", null],
  ["单根长 (mm)", "length", "mm"],
  ["개소당 수량", "each", null],
  ["تعداد در عضو", "each", null],
  ["وزن واحد (kg/m)", "unitMass", null],
  ["Celková hmotnost (kg)", "mass", "kg"],
  // two rows of a header: the unit stands among the words
  ["Masė, kg 1 vnt.", "pieceMass", "kg"],
  ["Masė, kg viso", "mass", "kg"],
  ["Вес, кг всего", "mass", "kg"],
  ["N.º por peça", "each", null],
  ["Peças iguais", "members", null],
];

describe("headingOfParts", () => {
  it.each(HEADINGS)("should read %s as %s", (heading, kind, unit) => {
    expect(recogniseHeader(heading)).toMatchObject({ kind, unit });
  });

  it("should not take the mass of one bar or of one member for that of the row", () => {
    expect(recogniseHeader("Масса ед., кг")?.kind).toBe("pieceMass");
    expect(recogniseHeader("Масса на 1 эл., кг")?.kind).toBe("ignored");
  });

  it("should take no heading with a word that it does not know", () => {
    expect(recogniseHeader("Pzas/zorblat")?.kind).not.toBe("each");
  });
});

describe("the words of each language", () => {
  it("should be one file a language, each with its source", () => {
    expect(new Set(LANGUAGES.map(({ language }) => language)).size).toBe(LANGUAGES.length);
    for (const { language, provenance } of LANGUAGES) {
      expect(["common practice", "memory"], language).toContain(provenance);
    }
  });

  it.each(LANGUAGES.map((one) => [one.language, one] as const))(
    "%s: every whole heading is read as the column that it is listed under",
    (_, { columns }) => {
      for (const { kind, words } of columns) {
        for (const word of words) expect(recogniseHeader(word)?.kind, word).toBe(kind);
      }
    },
  );
});
