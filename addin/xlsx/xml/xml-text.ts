import { UnreadableWorkbook } from "../unreadable-workbook";

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

/** Value of an attribute by its local name, decoded; null where it is not given. */
export function attribute(attributes: string, name: string): string | null {
  const match = attributePattern(name).exec(attributes);
  return match === null ? null : decodeXml(match[1] ?? match[2] ?? "");
}

const patterns = new Map<string, RegExp>();

function attributePattern(name: string): RegExp {
  let pattern = patterns.get(name);
  if (pattern === undefined) {
    pattern = new RegExp(`(?:^|\\s)(?:[\\w.-]+:)?${name}\\s*=\\s*(?:"([^"]*)"|'([^']*)')`);
    patterns.set(name, pattern);
  }
  return pattern;
}

/** The raw attribute text with one attribute set, or taken out where the value is null. */
export function withAttribute(attributes: string, name: string, value: string | null): string {
  const pattern = new RegExp(`(^|\\s)${name}\\s*=\\s*(?:"[^"]*"|'[^']*')`);
  const set = value === null ? "" : `${name}="${encodeXml(value)}"`;
  if (pattern.test(attributes))
    return attributes.replace(pattern, (_, space: string) => (set === "" ? "" : space + set));
  return set === "" ? attributes : `${attributes.trimEnd()} ${set}`;
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
  const text = raw.includes("<!") ? openCdata(raw) : raw;
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

export function encodeXml(text: string): string {
  if (!NEEDS_ENCODING.test(text)) return text;
  return text
    .replace(CONTROL, "")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
}

/** Control characters that XML cannot hold. */
const CONTROL = /[^\P{Cc}\t\n\r]/gu;
const NEEDS_ENCODING = /[&<>"]|[^\P{Cc}\t\n\r]/u;

/** Text of a cell or comment, its own `_x000D_`-like runs kept apart from escapes. */
export function encodeCellText(text: string): string {
  return encodeXml(text.replace(/_(?=x[0-9a-fA-F]{4}_)/g, "_x005F_").replaceAll("\r", "_x000D_"));
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

function openCdata(raw: string): string {
  return raw
    .replace(/<!\[CDATA\[([\s\S]*?)\]\]>/g, (_, text: string) => encodeXml(text))
    .replace(/<!--[\s\S]*?-->/g, "");
}
