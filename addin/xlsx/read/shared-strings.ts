import { plainText } from "../xml/plain-xml";
import {
  attribute,
  closingTag,
  decodeCellText,
  findElements,
  isTrue,
  rootTag,
  xmlTags,
} from "../xml/xml-text";
import type { PackageParts } from "./package-parts";

export interface SharedStrings {
  readonly texts: readonly string[];
  /** indexes whose whole text is struck through by its own runs */
  readonly struck: ReadonlySet<number>;
}

/** The workbook's shared strings; none where it has no such part. */
export function readSharedStrings(parts: PackageParts, part: string | null): SharedStrings {
  const texts: string[] = [];
  const struck = new Set<number>();
  if (part === null || !parts.has(part)) return { texts, struck };
  const xml = plainText(parts.text(part));
  const prefix = rootTag(xml)?.prefix ?? "";
  const open = `<${prefix}si`;
  for (let at = xml.indexOf(open); at >= 0; at = xml.indexOf(open, at)) {
    const tagEnd = xml.indexOf(">", at);
    if (tagEnd < 0) break;
    const next = xml.charCodeAt(at + open.length);
    if (next !== 62 && next !== 47 && !(next <= 32)) {
      at = tagEnd;
      continue;
    }
    if (xml[tagEnd - 1] === "/") {
      texts.push("");
      at = tagEnd;
      continue;
    }
    const close = closingTag(xml, `${prefix}si`, tagEnd);
    if (close === null) break;
    const inner = xml.slice(tagEnd + 1, close.start);
    if (isRichStruck(inner)) struck.add(texts.length);
    texts.push(richText(inner));
    at = close.end;
  }
  return { texts, struck };
}

/** Plain text of an `si` or `is`: its runs joined, phonetic guides left out. */
export function richText(inner: string): string {
  const plain = /^\s*<(?:[\w.-]+:)?t(?:\s[^>]*)?>([^<]*)<\/(?:[\w.-]+:)?t>\s*$/.exec(inner);
  if (plain !== null) return decodeCellText(plain[1]!);
  let text = "";
  let phonetic = false;
  let from = -1;
  for (const tag of xmlTags(inner)) {
    if (tag.name === "rPh") phonetic = tag.kind === "open";
    else if (tag.name === "t" && !phonetic) {
      if (tag.kind === "open") from = tag.end;
      else if (tag.kind === "close" && from >= 0) text += decodeCellText(inner.slice(from, tag.start));
    }
  }
  return text;
}

/** True where every run with text is struck through. */
export function isRichStruck(inner: string): boolean {
  if (!inner.includes("strike")) return false;
  let runs = 0;
  for (const run of findElements(inner, "r")) {
    const xml = inner.slice(run.innerStart, run.innerEnd);
    if (richText(xml).trim() === "") continue;
    runs += 1;
    let strike = false;
    for (const tag of xmlTags(xml)) {
      if (tag.name === "strike") strike = isTrue(attribute(tag.attributes, "val") ?? "1");
    }
    if (!strike) return false;
  }
  return runs > 0;
}
