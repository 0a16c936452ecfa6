import { XMLParser } from "fast-xml-parser";

/** An element as fast-xml-parser reads it. */
export interface XmlNode {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly text: string;
  readonly children: readonly XmlNode[];
}

/** A part as fast-xml-parser reads it, elements in their order. */
export function xmlTree(xml: string): XmlNode {
  const parser = new XMLParser({
    preserveOrder: true,
    ignoreAttributes: false,
    attributeNamePrefix: "",
    parseTagValue: false,
    parseAttributeValue: false,
    trimValues: false,
    ignoreDeclaration: true,
  });
  const build = (raw: Record<string, unknown>): XmlNode => {
    const name = Object.keys(raw).find((key) => key !== ":@")!;
    const inside = raw[name] as Record<string, unknown>[];
    return {
      name,
      attributes: (raw[":@"] ?? {}) as Record<string, string>,
      text: inside.map((each) => ("#text" in each ? String(each["#text"]) : "")).join(""),
      children: inside.filter((each) => !("#text" in each)).map(build),
    };
  };
  return build((parser.parse(xml) as Record<string, unknown>[])[0]!);
}

export function* everyNode(node: XmlNode): Generator<XmlNode> {
  yield node;
  for (const child of node.children) yield* everyNode(child);
}

export const elementsOf = (node: XmlNode, name: string): XmlNode[] =>
  [...everyNode(node)].filter((each) => each.name === name);
export const valOf = (node: XmlNode, name: string): string | undefined =>
  elementsOf(node, name)[0]?.attributes["val"];
