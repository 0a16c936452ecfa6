import { XMLParser, XMLValidator } from "fast-xml-parser";

/** One element of a manifest. */
export interface XmlElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly text: string;
  readonly children: readonly XmlElement[];
}

const ATTRIBUTES = ":@";
const TEXT = "#text";

/** The root of a well-formed XML text; otherwise what is wrong with it. */
export function readXml(xml: string): XmlElement | { readonly problem: string } {
  const valid = XMLValidator.validate(xml);
  if (valid !== true) return { problem: `line ${valid.err.line}: ${valid.err.msg}` };
  const parser = new XMLParser({
    preserveOrder: true,
    ignoreAttributes: false,
    attributeNamePrefix: "",
    parseTagValue: false,
    parseAttributeValue: false,
    ignoreDeclaration: true,
    trimValues: true,
  });
  const [root] = (parser.parse(xml) as RawElement[]).map(elementOf).filter((one) => one !== null);
  return root ?? { problem: "there is no element" };
}

type RawElement = Record<string, unknown>;

function elementOf(raw: RawElement): XmlElement | null {
  const name = Object.keys(raw).find((key) => key !== ATTRIBUTES && key !== TEXT);
  if (name === undefined) return null;
  const inner = raw[name] as RawElement[];
  return {
    name,
    attributes: (raw[ATTRIBUTES] ?? {}) as Record<string, string>,
    text: inner.map((one) => String(one[TEXT] ?? "")).join(""),
    children: inner.map(elementOf).filter((one) => one !== null),
  };
}
