import { xmlTags } from "./xml-text";

/** An element of a text that is to be written again; texts between elements stay as they were, raw. */
export interface XmlNode {
  /** without the prefix */
  readonly name: string;
  /** as written, "x:f" */
  readonly written: string;
  /** raw */
  attributes: string;
  readonly inside: (XmlNode | string)[];
  /** "empty" is written without an end tag; "open" ends behind the piece */
  ends: "closed" | "empty" | "open";
}

/** The elements of a part's piece, tags that end before or behind it as they are. */
export function xmlNodes(text: string): (XmlNode | string)[] {
  const top: (XmlNode | string)[] = [];
  const open: XmlNode[] = [];
  let at = 0;
  const inside = () => open.at(-1)?.inside ?? top;
  for (const tag of xmlTags(text)) {
    if (tag.start > at) inside().push(text.slice(at, tag.start));
    at = tag.end;
    if (tag.kind === "close") {
      // an end whose beginning lies before this piece
      if (open.pop() === undefined) top.push(text.slice(tag.start, tag.end));
      continue;
    }
    const node: XmlNode = {
      name: tag.name,
      written: tag.prefix + tag.name,
      attributes: tag.attributes,
      inside: [],
      ends: tag.kind === "empty" ? "empty" : "closed",
    };
    inside().push(node);
    if (tag.kind === "open") open.push(node);
  }
  if (at < text.length) inside().push(text.slice(at));
  for (const node of open) node.ends = "open";
  return top;
}

export function writeNodes(nodes: readonly (XmlNode | string)[]): string {
  return nodes
    .map((node) => {
      if (typeof node === "string") return node;
      if (node.ends === "empty") return `<${node.written}${node.attributes}/>`;
      const end = node.ends === "open" ? "" : `</${node.written}>`;
      return `<${node.written}${node.attributes}>${writeNodes(node.inside)}${end}`;
    })
    .join("");
}
