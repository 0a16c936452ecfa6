import { FLAG_COLOURS, type FlagSeverity, flagOfColour } from "../../workbook/flag-colours";
import type { LookChange } from "../../workbook/look-change";
import { children } from "../read/cell-styles";
import { fillBeforeFlag, NO_FILL, plainFill } from "../read/flag-fill";
import { encodeXml } from "../xml/encode-xml";
import { attribute, findElement, insertInto, rootTag, withAttribute, xmlTags } from "../xml/xml-text";
import { changedAlignment, changedBorder, changedFont } from "./changed-look";

/** Look of a cell on a sheet that we add. */
export interface AddedLook {
  readonly bold?: boolean;
  readonly link?: boolean;
  readonly wrap?: boolean;
  readonly right?: boolean;
  /** with a thin line under it */
  readonly ruled?: boolean;
  /** a heading's grey; a flag goes before it */
  readonly shade?: boolean;
  readonly format?: string;
  readonly flag?: FlagSeverity;
}

const SHADE = "E9ECEF";
const RULE = "C8CDD2";
/** Numbers below are the formats that every program knows (ECMA-376-1:2016, 18.8.30). */
const FIRST_OWN_FORMAT = 164;

/**
 * The styles part with formats appended, nothing of what stood there changed. A flagged format is its
 * base with one other fill, whose second colour, unused in a solid fill, keeps what the base's fill was:
 * so a flag can be taken off again however rows were moved, sorted or copied since.
 */
export class StylePatch {
  private readonly formats: string[];
  private readonly fills: string[];
  private readonly fonts: string[];
  private readonly borders: string[];
  private readonly xfs: string[];
  private readonly counts: { formats: number; fills: number; fonts: number; borders: number; xfs: number };
  private readonly flaggedOf = new Map<FlagSeverity, Map<number, number>>();
  private readonly clearedOf = new Map<number, number>();
  private readonly changedOf = new Map<string, number>();
  private readonly addedOf = new Map<string | number, number>();
  private readonly prefix: string;
  private changed = false;

  constructor(private readonly xml: string) {
    this.formats = children(xml, "numFmts", "numFmt");
    this.fills = children(xml, "fills", "fill");
    this.fonts = children(xml, "fonts", "font");
    this.borders = children(xml, "borders", "border");
    this.xfs = children(xml, "cellXfs", "xf");
    this.counts = {
      formats: this.formats.length,
      fills: this.fills.length,
      fonts: this.fonts.length,
      borders: this.borders.length,
      xfs: this.xfs.length,
    };
    this.prefix = rootTag(xml)?.prefix ?? "";
    this.fillUp();
  }

  /**
   * What an index points to although the file does not hold it: the plain font, border and format, and
   * the two fills that every program takes the first two for.
   */
  private fillUp(): void {
    const p = this.prefix;
    if (this.fonts.length === 0)
      this.fonts.push(`<${p}font><${p}sz val="11"/><${p}name val="Calibri"/></${p}font>`);
    for (const pattern of ["none", "gray125"].slice(this.fills.length))
      this.fills.push(`<${p}fill><${p}patternFill patternType="${pattern}"/></${p}fill>`);
    if (this.borders.length === 0)
      this.borders.push(
        `<${p}border><${p}left/><${p}right/><${p}top/><${p}bottom/><${p}diagonal/></${p}border>`,
      );
    if (this.xfs.length === 0)
      this.xfs.push(this.element('xf numFmtId="0" fontId="0" fillId="0" borderId="0"'));
  }

  /** The format with a flag's fill; itself where its own fill is a pattern that a flag would lose. */
  flagged(style: number, severity: FlagSeverity): number {
    const base = this.cleared(style);
    const known = this.flaggedOf.get(severity)?.get(base);
    if (known !== undefined) return known;
    const before = plainFill(this.fills[this.fillOf(base)]);
    const flagged =
      before === null ? base : this.withFill(base, this.place(this.fills, this.flagFill(severity, before)));
    const ofSeverity = this.flaggedOf.get(severity) ?? new Map<number, number>();
    this.flaggedOf.set(severity, ofSeverity.set(base, flagged));
    return flagged;
  }

  /** The format as it was before a flag; itself where it has none. */
  cleared(style: number): number {
    const known = this.clearedOf.get(style);
    if (known !== undefined) return known;
    const fill = this.fills[this.fillOf(style)];
    const before = fill === undefined ? null : fillBeforeFlag(fill);
    const cleared = before === null ? style : this.findOrAddBase(style, before);
    this.clearedOf.set(style, cleared);
    return cleared;
  }

  /** The format with some of its look changed; a flag on it stays. */
  withChange(style: number, change: LookChange): number {
    const key = `${style} ${JSON.stringify(change)}`;
    const known = this.changedOf.get(key);
    if (known !== undefined) return known;
    const base = this.cleared(style);
    const changed = this.withLook(base, change);
    const flag = base === style ? null : flagOfFill(this.fills[this.fillOf(style)] ?? "");
    const result = flag === null ? changed : this.flagged(changed, flag);
    this.changedOf.set(key, result);
    return result;
  }

  private withLook(style: number, change: LookChange): number {
    let xf = this.xfs[style] ?? this.xfs[0] ?? "";
    const id = (name: string): number => Number(attribute(openingTag(xf), name) ?? 0);
    const set = (name: string, value: number | string, applies: string): void => {
      xf = withAttributes(xf, { [name]: String(value), [applies]: "1" });
    };
    const p = this.prefix;
    const font = this.fonts[id("fontId")] ?? `<${p}font/>`;
    const changedText = changedFont(font, change);
    if (changedText !== font && touchesFont(change))
      set("fontId", this.place(this.fonts, changedText), "applyFont");
    if (change.borders !== undefined) {
      const border = this.borders[id("borderId")] ?? `<${p}border/>`;
      set("borderId", this.place(this.borders, changedBorder(border, change.borders)), "applyBorder");
    }
    if (change.fill !== undefined) {
      const fill = change.fill === null ? 0 : this.place(this.fills, this.solidFill(rgbOf(change.fill)));
      set("fillId", fill, "applyFill");
    }
    if (change.numberFormat !== undefined) {
      const { numberFormat } = change;
      set("numFmtId", numberFormat === "General" ? 0 : this.numberFormat(numberFormat), "applyNumberFormat");
    }
    return this.place(this.xfs, changedAlignment(xf, change));
  }

  /** A format for cells of a sheet of ours, in the workbook's usual face. */
  added(look: Omit<AddedLook, "link">, link = false): number {
    const { bold, wrap, right, ruled, shade, format, flag } = look;
    // a number: it is asked for each cell of a long sheet
    const bits =
      (bold === true ? 1 : 0) |
      (link ? 2 : 0) |
      (wrap === true ? 4 : 0) |
      (right === true ? 8 : 0) |
      (ruled === true ? 16 : 0) |
      (shade === true ? 32 : 0);
    const key = format === undefined && flag === undefined ? bits : `${bits} ${flag ?? ""} ${format ?? ""}`;
    let style = this.addedOf.get(key);
    if (style === undefined) {
      style = this.addedAnew({ ...look, link });
      this.addedOf.set(key, style);
    }
    return style;
  }

  private addedAnew({ bold, link, wrap, right, ruled, shade, format, flag }: AddedLook): number {
    const p = this.prefix;
    const fill =
      flag !== undefined
        ? this.place(this.fills, this.flagFill(flag, NO_FILL))
        : shade === true
          ? this.place(this.fills, this.solidFill(SHADE))
          : 0;
    const marks = `${bold === true ? `<${p}b/>` : ""}${link === true ? `<${p}u/>` : ""}`;
    const colour = link === true ? `<${p}color rgb="FF0B5394"/>` : "";
    const font =
      marks === "" ? 0 : this.place(this.fonts, `<${p}font>${marks}${this.face(colour)}</${p}font>`);
    const border = ruled === true ? this.place(this.borders, this.rule()) : 0;
    const edge = right === true ? ' horizontal="right"' : "";
    const alignment = `<${p}alignment${edge} vertical="top"${wrap === true ? ' wrapText="1"' : ""}/>`;
    const number = format === undefined ? "0" : this.numberFormat(format);
    return this.place(
      this.xfs,
      `<${p}xf numFmtId="${number}" fontId="${font}" fillId="${fill}" borderId="${border}"${border === 0 ? "" : ' applyBorder="1"'}${number === "0" ? "" : ' applyNumberFormat="1"'} applyFont="1" applyFill="1" applyAlignment="1">${alignment}</${p}xf>`,
    );
  }

  get isChanged(): boolean {
    return this.changed;
  }

  /** The part's text with what was appended. */
  text(): string {
    let xml = this.xml;
    xml = this.appended(xml, "cellXfs", this.xfs.slice(this.counts.xfs), this.xfs.length);
    xml = this.appended(xml, "fills", this.fills.slice(this.counts.fills), this.fills.length);
    xml = this.appended(xml, "borders", this.borders.slice(this.counts.borders), this.borders.length);
    xml = this.appended(xml, "fonts", this.fonts.slice(this.counts.fonts), this.fonts.length);
    return this.appended(xml, "numFmts", this.formats.slice(this.counts.formats), this.formats.length);
  }

  /** Size, colour and name of the workbook's usual font. */
  private face(colour: string): string {
    const p = this.prefix;
    const tags = [...xmlTags(this.fonts[0] ?? "")];
    const said = (name: string): string | null => {
      const tag = tags.find((one) => one.name === name);
      return tag === undefined ? null : attribute(tag.attributes, "val");
    };
    const size = encodeXml(said("sz") ?? "11");
    return `<${p}sz val="${size}"/>${colour}<${p}name val="${encodeXml(said("name") ?? "Calibri")}"/>`;
  }

  private numberFormat(code: string): string {
    const ids = this.formats.map((one) => [
      attribute(openingTag(one), "numFmtId"),
      attribute(openingTag(one), "formatCode"),
    ]);
    const known = ids.find(([, held]) => held === code)?.[0];
    if (known) return known;
    const id = ids.reduce((most, [held]) => Math.max(most, Number(held) + 1), FIRST_OWN_FORMAT);
    this.formats.push(this.element(`numFmt numFmtId="${id}" formatCode="${encodeXml(code)}"`));
    return String(id);
  }

  private rule(): string {
    const p = this.prefix;
    return `<${p}border><${p}left/><${p}right/><${p}top/><${p}bottom style="thin"><${p}color rgb="FF${RULE}"/></${p}bottom><${p}diagonal/></${p}border>`;
  }

  private solidFill(colour: string): string {
    const p = this.prefix;
    return `<${p}fill><${p}patternFill patternType="solid"><${p}fgColor rgb="FF${colour}"/><${p}bgColor indexed="64"/></${p}patternFill></${p}fill>`;
  }

  private fillOf(style: number): number {
    return Number(attribute(openingTag(this.xfs[style] ?? this.xfs[0] ?? ""), "fillId") ?? 0);
  }

  private withFill(style: number, fill: number): number {
    return this.place(this.xfs, setFill(this.xfs[style] ?? this.xfs[0] ?? "", fill));
  }

  private findOrAddBase(style: number, before: string): number {
    const bare = setFill(this.xfs[style] ?? this.xfs[0]!, null);
    const found = this.xfs.findIndex(
      (xf, index) =>
        index !== style && setFill(xf, null) === bare && plainFill(this.fills[this.fillOf(index)]) === before,
    );
    if (found >= 0) return found;
    const known = this.fills.findIndex((fill) => plainFill(fill) === before);
    const p = this.prefix;
    const fill =
      known >= 0
        ? known
        : this.place(
            this.fills,
            `<${p}fill><${p}patternFill patternType="solid"><${p}fgColor ${before}/><${p}bgColor indexed="64"/></${p}patternFill></${p}fill>`,
          );
    return this.withFill(style, fill);
  }

  private flagFill(severity: FlagSeverity, before: string): string {
    const p = this.prefix;
    return (
      `<${p}fill><${p}patternFill patternType="solid"><${p}fgColor rgb="FF${FLAG_COLOURS.get(severity)}"/>` +
      `<${p}bgColor ${before}/></${p}patternFill></${p}fill>`
    );
  }

  private place(list: string[], item: string): number {
    const index = list.indexOf(item);
    if (index >= 0) return index;
    this.changed = true;
    return list.push(item) - 1;
  }

  private element(content: string): string {
    return `<${this.prefix}${content}/>`;
  }

  private appended(xml: string, name: string, items: readonly string[], count: number): string {
    if (items.length === 0) return xml;
    const list = findElement(xml, name);
    if (list === null) return this.withNewList(xml, name, items);
    const attributes = withAttribute(list.tag.attributes, "count", String(count));
    return (
      `${xml.slice(0, list.start)}<${list.tag.prefix}${name}${attributes}>` +
      xml.slice(list.innerStart, list.innerEnd) +
      `${items.join("")}</${list.tag.prefix}${name}>${xml.slice(list.end)}`
    );
  }

  private withNewList(xml: string, name: string, items: readonly string[]): string {
    const before = LIST_ORDER.slice(0, LIST_ORDER.indexOf(name));
    const opened = insertInto(xml, "styleSheet", "");
    const at = before.reduce(
      (end, one) => Math.max(end, findElement(opened, one)?.end ?? 0),
      rootTag(opened)?.end ?? 0,
    );
    const list = `<${this.prefix}${name} count="${items.length}">${items.join("")}</${this.prefix}${name}>`;
    return opened.slice(0, at) + list + opened.slice(at);
  }
}

/** A styles part with nothing in it: what is missing is filled up where a format is added. */
export const PLAIN_STYLES =
  '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n' +
  '<styleSheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"/>';

const LIST_ORDER = ["numFmts", "fonts", "fills", "borders", "cellStyleXfs", "cellXfs"];

function openingTag(element: string): string {
  return element.slice(0, element.indexOf(">"));
}

const FONT_PARTS = ["bold", "italic", "underline", "strike", "fontName", "fontSize", "fontColour"] as const;

const touchesFont = (change: LookChange): boolean => FONT_PARTS.some((part) => change[part] !== undefined);

const rgbOf = (colour: string): string => colour.replace("#", "").toUpperCase();

function flagOfFill(fill: string): FlagSeverity | null {
  const foreground = findElement(fill, "fgColor");
  return foreground === null ? null : flagOfColour(attribute(foreground.tag.attributes, "rgb") ?? "");
}

/** The element with attributes of its opening tag set. */
function withAttributes(xf: string, set: Readonly<Record<string, string>>): string {
  const end = xf.indexOf(">");
  const cut = xf[end - 1] === "/" ? end - 1 : end;
  const nameEnd = xf.search(/[\s/>]/);
  let attributes = xf.slice(nameEnd, cut);
  for (const [name, value] of Object.entries(set)) attributes = withAttribute(attributes, name, value);
  return xf.slice(0, nameEnd) + attributes + xf.slice(cut);
}

function setFill(xf: string, fill: number | null): string {
  const end = xf.indexOf(">");
  const isEmpty = xf[end - 1] === "/";
  const nameEnd = xf.search(/[\s/>]/);
  const cut = isEmpty ? end - 1 : end;
  let attributes = withAttribute(xf.slice(nameEnd, cut), "fillId", fill === null ? null : String(fill));
  attributes = withAttribute(attributes, "applyFill", fill === null ? null : "1");
  return xf.slice(0, nameEnd) + attributes.trimEnd() + xf.slice(cut);
}
