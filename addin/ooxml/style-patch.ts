import { children } from "./cell-styles";
import { FLAG_COLOURS, type FlagSeverity } from "./flag-colours";
import { fillBeforeFlag, NO_FILL, plainFill } from "./flag-fill";
import { attribute, findElement, withAttribute } from "./xml-text";

/** Look of a cell on a sheet that we add. */
export interface AddedLook {
  readonly bold?: boolean;
  readonly link?: boolean;
  readonly wrap?: boolean;
  readonly flag?: FlagSeverity;
}

/**
 * The styles part with formats appended, nothing of what stood there changed. A flagged format is its
 * base with one other fill, whose second colour, unused in a solid fill, keeps what the base's fill was:
 * so a flag can be taken off again however rows were moved, sorted or copied since.
 */
export class StylePatch {
  private readonly fills: string[];
  private readonly fonts: string[];
  private readonly xfs: string[];
  private readonly counts: { fills: number; fonts: number; xfs: number };
  private readonly flaggedOf = new Map<string, number>();
  private readonly clearedOf = new Map<number, number>();
  private readonly prefix: string;

  constructor(private readonly xml: string) {
    this.fills = children(xml, "fills", "fill");
    this.fonts = children(xml, "fonts", "font");
    this.xfs = children(xml, "cellXfs", "xf");
    this.counts = { fills: this.fills.length, fonts: this.fonts.length, xfs: this.xfs.length };
    this.prefix = findElement(xml, "styleSheet")?.tag.prefix ?? "";
    if (this.xfs.length === 0)
      this.xfs.push(this.element('xf numFmtId="0" fontId="0" fillId="0" borderId="0"'));
  }

  /** The format with a flag's fill; itself where its own fill is a pattern that a flag would lose. */
  flagged(style: number, severity: FlagSeverity): number {
    const base = this.cleared(style);
    const key = `${base} ${severity}`;
    const known = this.flaggedOf.get(key);
    if (known !== undefined) return known;
    const before = plainFill(this.fills[this.fillOf(base)]);
    const flagged =
      before === null ? base : this.withFill(base, this.place(this.fills, this.flagFill(severity, before)));
    this.flaggedOf.set(key, flagged);
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

  /** A format for cells of a sheet of ours. */
  added(look: AddedLook): number {
    const fill = look.flag === undefined ? 0 : this.place(this.fills, this.flagFill(look.flag, NO_FILL));
    const p = this.prefix;
    const marks = `${look.bold === true ? `<${p}b/>` : ""}${look.link === true ? `<${p}u/>` : ""}`;
    const colour = look.link === true ? `<${p}color rgb="FF0B5394"/>` : "";
    const font =
      marks === ""
        ? 0
        : this.place(
            this.fonts,
            `<${p}font>${marks}<${p}sz val="11"/>${colour}<${p}name val="Calibri"/></${p}font>`,
          );
    const alignment = `<${p}alignment vertical="top"${look.wrap === true ? ' wrapText="1"' : ""}/>`;
    return this.place(
      this.xfs,
      `<${p}xf numFmtId="0" fontId="${font}" fillId="${fill}" borderId="0" applyFont="1" applyFill="1" applyAlignment="1">${alignment}</${p}xf>`,
    );
  }

  get isChanged(): boolean {
    return this.fills.length > this.counts.fills || this.xfs.length > this.counts.xfs;
  }

  /** The part's text with what was appended. */
  text(): string {
    let xml = this.xml;
    xml = this.appended(xml, "cellXfs", this.xfs.slice(this.counts.xfs), this.xfs.length);
    xml = this.appended(xml, "fills", this.fills.slice(this.counts.fills), this.fills.length);
    return this.appended(xml, "fonts", this.fonts.slice(this.counts.fonts), this.fonts.length);
  }

  private fillOf(style: number): number {
    return Number(attribute(openingTag(this.xfs[style] ?? this.xfs[0] ?? ""), "fillId") ?? 0);
  }

  private withFill(style: number, fill: number): number {
    return this.place(this.xfs, setFill(this.xfs[style] ?? this.xfs[0] ?? "", fill));
  }

  private findOrAddBase(style: number, before: string): number {
    const bare = setFill(this.xfs[style]!, null);
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
    return index >= 0 ? index : list.push(item) - 1;
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
    const root = findElement(xml, "styleSheet");
    const at = before.reduce(
      (end, one) => Math.max(end, findElement(xml, one)?.end ?? 0),
      root?.innerStart ?? 0,
    );
    const list = `<${this.prefix}${name} count="${items.length}">${items.join("")}</${this.prefix}${name}>`;
    return xml.slice(0, at) + list + xml.slice(at);
  }
}

/** A styles part with nothing but the plain format. */
export const PLAIN_STYLES =
  '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n' +
  '<styleSheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main">' +
  '<fonts count="1"><font><sz val="11"/><name val="Calibri"/></font></fonts>' +
  '<fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills>' +
  '<borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders>' +
  '<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>' +
  '<cellXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/></cellXfs></styleSheet>';

const LIST_ORDER = ["numFmts", "fonts", "fills", "borders", "cellStyleXfs", "cellXfs"];

function openingTag(element: string): string {
  return element.slice(0, element.indexOf(">"));
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
