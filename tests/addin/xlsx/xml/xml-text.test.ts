import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { encodeCellText } from "../../../../addin/xlsx/xml/encode-xml";
import { plainXml } from "../../../../addin/xlsx/xml/plain-xml";
import {
  attribute,
  decodeCellText,
  insertInto,
  prefixInScope,
  withAttribute,
} from "../../../../addin/xlsx/xml/xml-text";

describe("attributes", () => {
  it("are never looked for inside another's value", () => {
    const raw = ` name="b id='rId1' c" r:id = 'rId7' state="a s='9'"`;
    expect([attribute(raw, "id"), attribute(raw, "s"), attribute(raw, "name")]).toEqual([
      "rId7",
      null,
      "b id='rId1' c",
    ]);
    expect(withAttribute(raw, "s", "3")).toBe(`${raw} s="3"`);
    expect(withAttribute(raw, "state", null)).toBe(` name="b id='rId1' c" r:id = 'rId7'`);
  });

  it("without a prefix go before those with one", () => {
    expect(attribute(' x:r="B2" r="A1"', "r")).toBe("A1");
  });
});

describe("prefixInScope", () => {
  it("knows what is declared about a place, and what hides it", () => {
    expect(prefixInScope("urn:a", [' xmlns:r="urn:a"', ""])).toBe("r");
    expect(prefixInScope("urn:a", [' xmlns:r="urn:a"', ' xmlns:r="urn:b"'])).toBe(null);
    expect(prefixInScope("urn:a", [' xmlns="urn:a"'])).toBe(null);
  });
});

describe("insertInto", () => {
  it("opens an empty element and refuses one that never ends", () => {
    expect(insertInto('<x:a b="1" />', "a", "<c/>")).toBe('<x:a b="1"><c/></x:a>');
    expect(() => insertInto("<a><b>", "a", "<c/>")).toThrow("damaged");
  });
});

describe("plainXml", () => {
  const text = "<r>a<!-- <c> --><![CDATA[<&]]>b<!---->]]</r>";
  const plain = "<r>a&lt;&amp;b]]</r>";

  it("should give the same text however it is cut", () => {
    fc.assert(
      fc.property(fc.array(fc.nat(text.length), { maxLength: 12 }), (cuts) => {
        const places = [0, ...cuts.sort((a, b) => a - b), text.length];
        const pieces = places.slice(1).map((end, index) => text.slice(places[index], end));
        expect([...plainXml(pieces)].join("")).toBe(plain);
      }),
    );
  });
});

describe("encodeCellText", () => {
  it("should be read back as it was, control characters and all", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), (text) => {
        // XML holds neither half of a pair alone nor these two
        fc.pre(
          new TextDecoder().decode(new TextEncoder().encode(text)) === text && !/[\uFFFE\uFFFF]/.test(text),
        );
        expect(decodeCellText(encodeCellText(text))).toBe(text);
      }),
    );
    expect(encodeCellText("\u001b[2J")).toBe("_x001B_[2J");
  });
});
