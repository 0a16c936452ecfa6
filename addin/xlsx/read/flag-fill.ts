import { flagOfColour } from "../../workbook/flag-colours";
import { encodeXml } from "../xml/encode-xml";
import { attribute, findElement, type XmlElement } from "../xml/xml-text";

/** Background index that stands for "there was no fill"; 64 is what every other solid fill has. */
export const NO_FILL = 'indexed="65"';

/** Colour attributes of a solid fill, `NO_FILL` of an empty one; null for patterns and gradients. */
export function plainFill(fill: string | undefined): string | null {
  if (fill === undefined) return NO_FILL;
  const pattern = findElement(fill, "patternFill");
  if (pattern === null) return null;
  const type = attribute(pattern.tag.attributes, "patternType") ?? "none";
  if (type === "none") return NO_FILL;
  const foreground = findElement(fill, "fgColor");
  return type === "solid" && foreground !== null ? colourAttributes(foreground) : null;
}

/** What a flag's fill says was there before; null where the fill is no flag. */
export function fillBeforeFlag(fill: string): string | null {
  const foreground = findElement(fill, "fgColor");
  const background = findElement(fill, "bgColor");
  if (foreground === null || background === null) return null;
  if (flagOfColour(attribute(foreground.tag.attributes, "rgb") ?? "") === null) return null;
  const before = colourAttributes(background);
  return before === null || before === 'indexed="64"' ? null : before;
}

function colourAttributes(colour: XmlElement): string | null {
  const kept = ["auto", "indexed", "rgb", "theme", "tint"].flatMap((name) => {
    const value = attribute(colour.tag.attributes, name);
    return value === null ? [] : [`${name}="${encodeXml(value)}"`];
  });
  return kept.length === 0 ? null : kept.join(" ");
}
