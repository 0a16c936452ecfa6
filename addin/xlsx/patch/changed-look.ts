import type { Edge, LookChange, Side } from "../../workbook/look-change";
import { encodeXml } from "../xml/encode-xml";
import { writeNodes, type XmlNode, xmlNodes } from "../xml/xml-nodes";
import { withAttribute } from "../xml/xml-text";

/** The format of text in a styles part with some of it changed; what is not named stays. */
export function changedFont(font: string, change: LookChange): string {
  return rebuilt(font, FONT_ORDER, (put) => {
    const mark = (name: string, isOn: boolean | undefined): void => {
      if (isOn !== undefined) put(name, isOn ? "" : null);
    };
    mark("b", change.bold);
    mark("i", change.italic);
    mark("strike", change.strike);
    mark("u", change.underline);
    if (change.fontSize !== undefined)
      put("sz", change.fontSize === null ? null : ` val="${change.fontSize}"`);
    if (change.fontColour !== undefined) put("color", colour(change.fontColour));
    if (change.fontName !== undefined) {
      put("name", change.fontName === null ? null : ` val="${encodeXml(change.fontName)}"`);
      // a face of the theme's would go before the named one
      put("scheme", null);
      put("family", null);
    }
  });
}

/** Edges of a cell with some of them changed. */
export function changedBorder(border: string, sides: NonNullable<LookChange["borders"]>): string {
  const nodes = xmlNodes(border);
  const root = nodes.find((node): node is XmlNode => typeof node !== "string");
  if (root === undefined) return border;
  const prefix = prefixOf(root);
  const parts = new Map<string, XmlNode | string>();
  for (const node of root.inside) if (typeof node !== "string") parts.set(node.name, node);
  for (const [side, edge] of Object.entries(sides) as [Side, Edge | null][]) {
    parts.set(
      side,
      edge === null
        ? `<${prefix}${side}/>`
        : `<${prefix}${side} style="${encodeXml(edge.style)}"><${prefix}color${colour(edge.colour) ?? ' auto="1"'}/></${prefix}${side}>`,
    );
  }
  const inside = BORDER_ORDER.flatMap((name) => parts.get(name) ?? []);
  root.inside.splice(0, root.inside.length, ...inside);
  root.ends = "closed";
  return writeNodes([root]);
}

/** A cell format's element with its alignment changed. */
export function changedAlignment(xf: string, change: LookChange): string {
  const said: [string, string | null | undefined][] = [
    ["horizontal", change.horizontal],
    ["vertical", change.vertical],
    ["wrapText", change.wrap === undefined ? undefined : change.wrap ? "1" : null],
    ["textRotation", change.rotation === undefined ? undefined : rotation(change.rotation)],
  ];
  if (said.every(([, value]) => value === undefined)) return xf;
  const [root] = xmlNodes(xf);
  if (root === undefined || typeof root === "string") return xf;
  let alignment = root.inside.find(
    (node): node is XmlNode => typeof node !== "string" && node.name === "alignment",
  );
  if (alignment === undefined) {
    alignment = {
      name: "alignment",
      written: `${prefixOf(root)}alignment`,
      attributes: "",
      inside: [],
      ends: "empty",
    };
    root.inside.unshift(alignment);
  }
  for (const [name, value] of said) {
    if (value !== undefined) alignment.attributes = withAttribute(alignment.attributes, name, value);
  }
  root.attributes = withAttribute(root.attributes, "applyAlignment", "1");
  root.ends = "closed";
  return writeNodes([root]);
}

const rotation = (degrees: number): string | null => (degrees === 0 ? null : String(degrees));

/** Order of what stands in a font (ECMA-376-1:2016, 18.8.22), and of a border's edges (18.8.4). */
const FONT_ORDER = [
  "b",
  "i",
  "strike",
  "condense",
  "extend",
  "outline",
  "shadow",
  "u",
  "vertAlign",
  "sz",
  "color",
  "name",
  "family",
  "charset",
  "scheme",
];
const BORDER_ORDER = ["start", "end", "left", "right", "top", "bottom", "diagonal", "vertical", "horizontal"];

function rebuilt(
  xml: string,
  order: readonly string[],
  change: (put: (name: string, attributes: string | null) => void) => void,
): string {
  const [root] = xmlNodes(xml);
  if (root === undefined || typeof root === "string") return xml;
  const parts = new Map<string, XmlNode | string>();
  for (const node of root.inside) if (typeof node !== "string") parts.set(node.name, node);
  change((name, attributes) => {
    if (attributes === null) parts.delete(name);
    else parts.set(name, `<${prefixOf(root)}${name}${attributes}/>`);
  });
  const inside = order.flatMap((name) => parts.get(name) ?? []);
  root.inside.splice(0, root.inside.length, ...inside);
  root.ends = "closed";
  return writeNodes([root]);
}

function prefixOf({ written, name }: XmlNode): string {
  return written.slice(0, written.length - name.length);
}

function colour(rgb: string | null): string | null {
  return rgb === null ? null : ` rgb="FF${rgb.replace("#", "").toUpperCase()}"`;
}
