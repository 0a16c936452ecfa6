import { encodeXml } from "../xml/encode-xml";

/** Look of a cell in a workbook that we write. */
export interface NewCellLook {
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly strike?: boolean;
  readonly wrap?: boolean;
  readonly numberFormat?: string;
  /** "#rrggbb" */
  readonly fill?: string;
  readonly horizontal?: "left" | "center" | "right";
  /** thin lines on all sides */
  readonly bordered?: boolean;
  /** points */
  readonly fontSize?: number;
}

/** The styles of a new workbook: each look once, in the order first asked for; index 0 is the plain one. */
export class StyleBook {
  private readonly looks = new Map<string, number>([["{}", 0]]);
  private readonly formats = new Map<string, number>();
  private readonly fonts = new Map<string, number>([[font({}), 0]]);
  private readonly fills = new Map<string, number>([
    ['<fill><patternFill patternType="none"/></fill>', 0],
    ['<fill><patternFill patternType="gray125"/></fill>', 1],
  ]);
  private readonly xfs: string[] = ['<xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/>'];

  index(look: NewCellLook): number {
    const key = JSON.stringify(look);
    const known = this.looks.get(key);
    if (known !== undefined) return known;
    const index = this.xfs.push(this.xf(look)) - 1;
    this.looks.set(key, index);
    return index;
  }

  xml(): string {
    const formats = [...this.formats].map(
      ([code, id]) => `<numFmt numFmtId="${id}" formatCode="${encodeXml(code)}"/>`,
    );
    return (
      '<styleSheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main">' +
      (formats.length === 0 ? "" : `<numFmts count="${formats.length}">${formats.join("")}</numFmts>`) +
      list("fonts", [...this.fonts.keys()]) +
      list("fills", [...this.fills.keys()]) +
      list("borders", BORDERS) +
      list("cellStyleXfs", ['<xf numFmtId="0" fontId="0" fillId="0" borderId="0"/>']) +
      list("cellXfs", this.xfs) +
      list("cellStyles", ['<cellStyle name="Normal" xfId="0" builtinId="0"/>']) +
      "</styleSheet>"
    );
  }

  private xf(look: NewCellLook): string {
    const numberFormat = look.numberFormat === undefined ? 0 : place(this.formats, look.numberFormat, 164);
    const fill = look.fill === undefined ? 0 : place(this.fills, solidFill(look.fill));
    const alignment = [
      look.horizontal === undefined ? "" : ` horizontal="${look.horizontal}"`,
      look.wrap === true ? ' vertical="top" wrapText="1"' : "",
    ].join("");
    return (
      `<xf numFmtId="${numberFormat}" fontId="${place(this.fonts, font(look))}" fillId="${fill}"` +
      ` borderId="${look.bordered === true ? 1 : 0}" xfId="0" applyNumberFormat="1" applyFont="1" applyFill="1"` +
      ' applyBorder="1" applyAlignment="1"' +
      (alignment === "" ? "/>" : `><alignment${alignment}/></xf>`)
    );
  }
}

const THIN = ["left", "right", "top", "bottom"]
  .map((side) => `<${side} style="thin"><color rgb="FFBFBFBF"/></${side}>`)
  .join("");
const BORDERS = [
  "<border><left/><right/><top/><bottom/><diagonal/></border>",
  `<border>${THIN}<diagonal/></border>`,
];

function font(look: NewCellLook): string {
  const marks = [look.bold && "<b/>", look.italic && "<i/>", look.strike && "<strike/>"]
    .filter(Boolean)
    .join("");
  return `<font>${marks}<sz val="${look.fontSize ?? 11}"/><name val="Calibri"/><family val="2"/></font>`;
}

function solidFill(colour: string): string {
  const rgb = colour.replace("#", "FF").toUpperCase();
  return `<fill><patternFill patternType="solid"><fgColor rgb="${rgb}"/><bgColor indexed="64"/></patternFill></fill>`;
}

function place(known: Map<string, number>, item: string, first = 0): number {
  const index = known.get(item);
  if (index !== undefined) return index;
  const next = first + known.size;
  known.set(item, next);
  return next;
}

function list(name: string, items: readonly string[]): string {
  return `<${name} count="${items.length}">${items.join("")}</${name}>`;
}
