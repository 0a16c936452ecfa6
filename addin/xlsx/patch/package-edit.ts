import { type PackageParts, relationshipsPart } from "../read/package-parts";
import { encodeXml } from "../xml/encode-xml";
import { type PartText, wholeText } from "../xml/encoded-pieces";
import { attribute, insertInto, prefixInScope, rootNamespace, rootTag, xmlTags } from "../xml/xml-text";

const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const STRICT_OFFICE = "http://purl.oclc.org/ooxml/officeDocument/relationships";
const STRICT_MAIN = "http://purl.oclc.org/ooxml/spreadsheetml/main";
/** Namespaces of the usual dialect with those of the strict one: drawings keep their year out too. */
const STRICT_SPACES: readonly (readonly [string, string])[] = [
  [OFFICE, STRICT_OFFICE],
  ["http://schemas.openxmlformats.org/spreadsheetml/2006/main", STRICT_MAIN],
  ["http://schemas.openxmlformats.org/drawingml/2006/", "http://purl.oclc.org/ooxml/drawingml/"],
];

const RELATIONSHIPS = "application/vnd.openxmlformats-package.relationships+xml";

/** How content types of spreadsheet parts begin. */
export const SPREADSHEET_KIND = "application/vnd.openxmlformats-officedocument.spreadsheetml";

/** Parts of a package that are being changed, added or left out; all others stay as they lie. */
export class PackageEdit {
  private readonly texts = new Map<string, PartText>();
  private readonly removed = new Set<string>();
  private readonly types: { part: string; type: string; extension: string | null }[] = [];
  /** the file is written in the strict dialect of the format */
  readonly isStrict: boolean;

  constructor(
    readonly parts: PackageParts,
    workbookPart: string,
  ) {
    this.isStrict = rootNamespace(parts.text(workbookPart)) === STRICT_MAIN;
  }

  text(part: string): string {
    const changed = this.texts.get(part);
    return changed === undefined ? this.parts.text(part) : wholeText(changed);
  }

  has(part: string): boolean {
    return this.texts.has(part) || (!this.removed.has(part) && this.parts.has(part));
  }

  set(part: string, text: PartText): void {
    this.texts.set(part, text);
  }

  /**
   * Adds a part under the first free number, "xl/comments#.xml", and registers its content type. One of
   * which a workbook has but one, "xl/styles.xml", keeps that name where it is free.
   */
  add(pattern: string, text: PartText, type: string, extension: string | null = null): string {
    let part = pattern.replace("#", "1");
    for (let number = 2; this.has(part); number += 1)
      part = pattern.includes("#")
        ? pattern.replace("#", String(number))
        : pattern.replace(/(?=\.\w+$)/, String(number));
    this.set(part, this.inDialect(text));
    this.types.push({ part, type, extension });
    return part;
  }

  remove(part: string): void {
    const name = this.parts.nameOf(part) ?? part;
    this.removed.add(name);
    this.texts.delete(name);
  }

  /** Registers that one part uses another; gives the relationship's id. */
  relate(from: string, type: string, to: string): string {
    const rels = this.parts.nameOf(relationshipsPart(from)) ?? relationshipsPart(from);
    const empty =
      '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n' +
      '<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"></Relationships>';
    const xml = this.has(rels) ? this.text(rels) : empty;
    if (!this.has(rels)) this.types.push({ part: rels, type: RELATIONSHIPS, extension: "rels" });
    let highest = 0;
    for (const tag of xmlTags(xml)) {
      const number = /^rId(\d{1,9})$/i.exec(attribute(tag.attributes, "Id") ?? "");
      if (number !== null) highest = Math.max(highest, Number(number[1]));
    }
    const id = `rId${highest + 1}`;
    const prefix = rootTag(xml)?.prefix ?? "";
    const kind = type.startsWith("http") ? type : `${this.isStrict ? STRICT_OFFICE : OFFICE}/${type}`;
    const line = `<${prefix}Relationship Id="${id}" Type="${kind}" Target="/${encodeXml(to)}"/>`;
    this.set(rels, insertInto(xml, "Relationships", line));
    return id;
  }

  /** Takes a part's registration out of another's relationships. */
  unrelate(from: string, to: string): void {
    const rels = this.parts.nameOf(relationshipsPart(from));
    const id = this.parts
      .relationships(from)
      .find((one) => this.parts.nameOf(one.target) === this.parts.nameOf(to))?.id;
    if (rels === null || id === undefined) return;
    const xml = this.text(rels);
    for (const tag of xmlTags(xml)) {
      if (tag.name !== "Relationship" || attribute(tag.attributes, "Id") !== id) continue;
      const rest =
        tag.kind === "open"
          ? xml.slice(tag.end).replace(/^\s*<\/[^>]*Relationship>/, "")
          : xml.slice(tag.end);
      this.set(rels, xml.slice(0, tag.start) + rest);
      return;
    }
  }

  /**
   * A relationship attribute with the prefix that its namespace has in the tags about it, the outermost
   * first; declared where it has none.
   */
  relationshipAttribute(about: readonly string[], id: string): string {
    const space = this.isStrict ? STRICT_OFFICE : OFFICE;
    const prefix = prefixInScope(space, about);
    return prefix === null ? `xmlns:r="${space}" r:id="${id}"` : `${prefix}:id="${id}"`;
  }

  /** All texts that changed, for good: nothing is edited any more, and what was packed can be taken out. */
  changedTexts(): Map<string, PartText> {
    const types = this.contentTypes();
    if (types !== null) this.texts.set(...types);
    return this.texts;
  }

  removedParts(): ReadonlySet<string> {
    return this.removed;
  }

  private contentTypes(): [string, string] | null {
    if (this.types.length === 0 && this.removed.size === 0) return null;
    const part = this.parts.nameOf("[Content_Types].xml") ?? "[Content_Types].xml";
    let xml = this.text(part);
    const prefix = rootTag(xml)?.prefix ?? "";
    // an old entry for a part that is added anew would be a second one
    for (const name of [...this.removed, ...this.types.map(({ part: added }) => added)]) {
      for (const tag of xmlTags(xml)) {
        const path = attribute(tag.attributes, "PartName");
        if (path?.toLowerCase() !== `/${name.toLowerCase()}`) continue;
        xml = xml.slice(0, tag.start) + xml.slice(tag.end);
        break;
      }
    }
    let lines = "";
    const extensions = new Set(
      [...xmlTags(xml)]
        .filter((tag) => tag.name === "Default")
        .map((tag) => attribute(tag.attributes, "Extension")?.toLowerCase()),
    );
    for (const { part: added, type, extension } of this.types) {
      if (extension === null)
        lines += `<${prefix}Override PartName="/${encodeXml(added)}" ContentType="${type}"/>`;
      else if (!extensions.has(extension)) {
        extensions.add(extension);
        lines = `<${prefix}Default Extension="${extension}" ContentType="${type}"/>${lines}`;
      }
    }
    return [part, insertInto(xml, "Types", lines)];
  }

  /** A new part's text in the dialect of the file; no piece of a long one ends within a name. */
  inDialect(xml: PartText): PartText {
    if (!this.isStrict) return xml;
    const strictly = (piece: string): string =>
      STRICT_SPACES.reduce((text, [usual, strict]) => text.replaceAll(usual, strict), piece);
    if (typeof xml === "string") return strictly(xml);
    return {
      *pieces() {
        for (const piece of xml.pieces()) yield strictly(piece);
      },
    };
  }
}
