import qrcode from "qrcode-generator";
import { describe, expect, it } from "vitest";
import { markCode } from "../../../addin/print/mark-code";

/** Dark modules of a code, as the drawing's path and as the library has them for these very bytes. */
const drawn = (texts: readonly string[]): Set<string> =>
  new Set(
    [...markCode(texts).text.matchAll(/M(\d+) (\d+)h1v1h-1z/g)].map(
      ([, x, y]) => `${Number(x) - 4} ${Number(y) - 4}`,
    ),
  );
function ofBytes(bytes: Uint8Array): Set<string> {
  const code = qrcode(0, "M");
  code.addData(Buffer.from(bytes).toString("latin1"), "Byte");
  code.make();
  const size = code.getModuleCount();
  const dark = new Set<string>();
  for (let row = 0; row < size; row += 1)
    for (let column = 0; column < size; column += 1)
      if (code.isDark(row, column)) dark.add(`${column} ${row}`);
  return dark;
}

describe("markCode", () => {
  it.each(["07; B1; 12 x H16; cut 975", "07; Стена Ø1; 12 x Ø16", "鉄筋; 20 x D16", "Träger \u{1F3D7}"])(
    "should hold %s in UTF-8, whatever its letters",
    (text) => expect(drawn([text])).toEqual(ofBytes(new TextEncoder().encode(text))),
  );

  it("should take the shorter text where the longer has no room, and say so where none has", () => {
    const short = "07; ; 12 x H16";
    expect(drawn([`07; ${"Wall ".repeat(60)}; 12 x H16`, short])).toEqual(drawn([short]));
    for (const long of ["0".repeat(214), "0".repeat(32_767), "鉄".repeat(72)])
      expect(markCode([long]).text).toContain("No code: long mark");
    expect(drawn(["0".repeat(213)]).size).toBeGreaterThan(0);
  });
});
