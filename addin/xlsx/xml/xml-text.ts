import { UnreadableWorkbook } from "../unreadable-workbook";
import { encodeXml } from "./encode-xml";
import { plainText } from "./plain-xml";

/** One tag of an XML text. `attributes` is the raw text between the name and the end. */
export interface XmlTag {
  readonly kind: "open" | "close" | "empty";
  /** without the namespace prefix */
  readonly name: string;
  /** "x:" or empty */
  readonly prefix: string;
  readonly attributes: string;
  readonly start: number;
  readonly end: number;
}

/** Every tag of a whole text in order; comments, CDATA and instructions are passed over. A DOCTYPE is refused. */
export function* xmlTags(text: string, from = 0): Generator<XmlTag> {
  let at = from;
  for (;;) {
    const start = text.indexOf("<", at);
    if (start < 0) return;
    const second = text[start + 1];
    if (second === "!" || second === "?") {
      at = skipMarkup(text, start);
      continue;
    }
    const end = tagEnd(text, start + 1);
    if (end < 0) return;
    yield readTag(text, start, end);
    at = end + 1;
  }
}

/** Refuses a document type declaration: no part of a workbook has one, and entities hide in it. */
export function refuseDoctype(text: string): void {
  if (/<!DOCTYPE/i.test(text)) {
    throw new UnreadableWorkbook("a part of the file declares a DOCTYPE, which no workbook does: not opened");
  }
}

/** One attribute in the raw text of a tag; numbers are offsets into it. */
interface XmlAttribute {
  /** with its prefix */
  readonly name: string;
  readonly start: number;
  readonly valueStart: number;
  readonly valueEnd: number;
  /** after the closing quote */
  readonly end: number;
}

/** The attributes of a tag in turn, so that no value is taken for a name. */
function* attributesOf(raw: string): Generator<XmlAttribute> {
  const pattern = /([^\s=/"'<>]+)\s*=\s*(?:"([^"]*)"|'([^']*)')/y;
  for (let at = 0; at < raw.length; ) {
    pattern.lastIndex = at;
    const match = pattern.exec(raw);
    if (match === null) {
      at += 1;
      continue;
    }
    const end = at + match[0].length;
    const length = (match[2] ?? match[3] ?? "").length;
    yield { name: match[1]!, start: at, valueStart: end - 1 - length, valueEnd: end - 1, end };
    at = end;
  }
}

/** Value of an attribute by its local name, decoded; one without a prefix goes first, null where there is none. */
export function attribute(attributes: string, name: string): string | null {
  let found: string | null = null;
  for (const each of attributesOf(attributes)) {
    const isPlain = each.name === name;
    if (!isPlain && (found !== null || !each.name.endsWith(`:${name}`))) continue;
    found = attributes.slice(each.valueStart, each.valueEnd);
    if (isPlain) break;
  }
  return found === null ? null : decodeXml(found);
}

/** The raw attribute text with one attribute set, or taken out where the value is null. */
export function withAttribute(attributes: string, name: string, value: string | null): string {
  const set = value === null ? "" : `${name}="${encodeXml(value)}"`;
  for (const each of attributesOf(attributes)) {
    if (each.name !== name) continue;
    const before = attributes.slice(0, each.start);
    return (set === "" ? before.trimEnd() : before + set) + attributes.slice(each.end);
  }
  return set === "" ? attributes : `${attributes.trimEnd()} ${set}`;
}

/** Prefix that a namespace has where tags with these attributes stand about a place, the outermost first; null for none. */
export function prefixInScope(namespace: string, about: readonly string[]): string | null {
  const bound = new Map<string, string>();
  for (const attributes of about) {
    for (const { name, valueStart, valueEnd } of attributesOf(attributes)) {
      if (name.startsWith("xmlns:"))
        bound.set(name.slice("xmlns:".length), decodeXml(attributes.slice(valueStart, valueEnd)));
    }
  }
  return [...bound].find(([, space]) => space === namespace)?.[0] ?? null;
}

/** The opening tag of a document's root; null where it has none. */
export function rootTag(text: string): XmlTag | null {
  return xmlTags(text).next().value ?? null;
}

/** Namespace of a document's root. */
export function rootNamespace(text: string): string | null {
  const root = rootTag(text);
  if (root === null) return null;
  const declared = root.prefix === "" ? "xmlns" : `xmlns:${root.prefix.slice(0, -1)}`;
  for (const { name, valueStart, valueEnd } of attributesOf(root.attributes))
    if (name === declared) return decodeXml(root.attributes.slice(valueStart, valueEnd));
  return null;
}

export function isTrue(value: string | null): boolean {
  return value === "1" || value === "true";
}

const ENTITIES: ReadonlyMap<string, string> = new Map([
  ["amp", "&"],
  ["lt", "<"],
  ["gt", ">"],
  ["quot", '"'],
  ["apos", "'"],
]);

/** Text with its character references resolved and CDATA opened; unknown entities stay as written. */
export function decodeXml(raw: string): string {
  const text = raw.includes("<!") ? plainText(raw) : raw;
  if (!text.includes("&")) return text;
  return text.replace(/&(?:#x([0-9a-fA-F]{1,6})|#(\d{1,7})|(\w+));/g, (whole, hex, decimal, name) => {
    if (name !== undefined) return ENTITIES.get(name) ?? whole;
    const code = hex === undefined ? Number(decimal) : Number.parseInt(hex, 16);
    return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : whole;
  });
}

/** Spreadsheets write characters that XML cannot hold as `_x000D_`. */
export function decodeCellText(raw: string): string {
  const text = decodeXml(raw);
  if (!text.includes("_x")) return text;
  return text.replace(/_x([0-9a-fA-F]{4})_/g, (_, hex: string) =>
    String.fromCharCode(Number.parseInt(hex, 16)),
  );
}

/** Where an element stands, its inside and its opening tag. */
export interface XmlElement {
  readonly tag: XmlTag;
  readonly start: number;
  readonly innerStart: number;
  readonly innerEnd: number;
  readonly end: number;
}

/** First element of that local name at or after `from`, nested ones of the same name counted. */
export function findElement(text: string, name: string, from = 0): XmlElement | null {
  let open: XmlTag | null = null;
  let depth = 0;
  for (const tag of xmlTags(text, from)) {
    if (tag.name !== name) continue;
    if (open === null) {
      if (tag.kind === "close") continue;
      if (tag.kind === "empty")
        return { tag, start: tag.start, innerStart: tag.end, innerEnd: tag.end, end: tag.end };
      open = tag;
      depth = 1;
    } else if (tag.kind === "open") depth += 1;
    else if (tag.kind === "close") {
      depth -= 1;
      if (depth === 0) {
        return { tag: open, start: open.start, innerStart: open.end, innerEnd: tag.start, end: tag.end };
      }
    }
  }
  return null;
}

/** All elements of that local name that stand side by side in a text. */
export function* findElements(text: string, name: string): Generator<XmlElement> {
  let from = 0;
  for (;;) {
    const element = findElement(text, name, from);
    if (element === null) return;
    yield element;
    from = element.end;
  }
}

/** Text put before the end of the first element of that name, which is opened where it is empty. */
export function insertInto(xml: string, name: string, text: string): string {
  const element = findElement(xml, name);
  if (element === null)
    throw new UnreadableWorkbook(`a part of the file has no whole ${name}: it is damaged`);
  if (element.tag.kind !== "empty")
    return xml.slice(0, element.innerEnd) + text + xml.slice(element.innerEnd);
  const { prefix, attributes } = element.tag;
  const open = `<${prefix}${name}${attributes.trimEnd()}>`;
  return `${xml.slice(0, element.start)}${open}${text}</${prefix}${name}>${xml.slice(element.end)}`;
}

/** Where the next closing tag of that name, prefix and all, begins and ends; null where there is none whole. */
export function closingTag(text: string, name: string, from: number): { start: number; end: number } | null {
  const end = closingStart(text, `</${name}`, from);
  return end < 0 ? null : { start: end, end: text.indexOf(">", end) + 1 };
}

/** Where the next closing tag begins that begins with `open`; -1 where there is none whole. */
export function closingStart(text: string, open: string, from: number): number {
  let at = text.indexOf(open, from);
  while (at >= 0 && text.charCodeAt(at + open.length) !== 62 && endOfClosing(text, at + open.length) === 0)
    at = text.indexOf(open, at + 2);
  return at;
}

/** The last closing tag of that name in a text. */
export function lastClosingTag(text: string, name: string): { start: number; end: number } | null {
  const open = `</${name}`;
  for (let at = text.lastIndexOf(open); at >= 0; at = at === 0 ? -1 : text.lastIndexOf(open, at - 1)) {
    const end = endOfClosing(text, at + open.length);
    if (end > 0) return { start: at, end };
  }
  return null;
}

/** After the `>` that blanks may stand before; 0 where the name goes on or the text ends. */
function endOfClosing(text: string, from: number): number {
  let at = from;
  while (at < text.length && text.charCodeAt(at) <= 32) at += 1;
  return text.charCodeAt(at) === 62 ? at + 1 : 0;
}

function readTag(text: string, start: number, end: number): XmlTag {
  const closing = text[start + 1] === "/";
  const empty = text[end - 1] === "/";
  const nameStart = start + (closing ? 2 : 1);
  let nameEnd = nameStart;
  while (nameEnd < end && !isBoundary(text.charCodeAt(nameEnd))) nameEnd += 1;
  const whole = text.slice(nameStart, nameEnd);
  const colon = whole.indexOf(":");
  return {
    kind: closing ? "close" : empty ? "empty" : "open",
    name: colon < 0 ? whole : whole.slice(colon + 1),
    prefix: colon < 0 ? "" : whole.slice(0, colon + 1),
    attributes: text.slice(nameEnd, empty ? end - 1 : end),
    start,
    end: end + 1,
  };
}

function isBoundary(code: number): boolean {
  return code === 32 || code === 47 || code === 10 || code === 13 || code === 9;
}

/** Index of the tag's `>`, those inside quoted values passed over; -1 where the text ends first. */
function tagEnd(text: string, from: number): number {
  let quote = 0;
  for (let at = from; at < text.length; at += 1) {
    const code = text.charCodeAt(at);
    if (quote !== 0) {
      if (code === quote) quote = 0;
    } else if (code === 34 || code === 39) quote = code;
    else if (code === 62) return at;
  }
  return -1;
}

function skipMarkup(text: string, start: number): number {
  if (text.startsWith("<!--", start)) return after(text, "-->", start);
  if (text.startsWith("<![CDATA[", start)) return after(text, "]]>", start);
  if (text[start + 1] === "?") return after(text, "?>", start);
  refuseDoctype(text.slice(start, start + 10));
  return after(text, ">", start);
}

function after(text: string, mark: string, from: number): number {
  const at = text.indexOf(mark, from);
  return at < 0 ? text.length : at + mark.length;
}
