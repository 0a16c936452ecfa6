import { type FlagSeverity, flagOfColour } from "../../workbook/flag-colours";
import { attribute, findElement, findElements, isTrue, type XmlElement, xmlTags } from "../xml/xml-text";
import { fillBeforeFlag, NO_FILL } from "./flag-fill";
import { isDateFormat, numberFormatCode } from "./number-format";
import type { PackageParts } from "./package-parts";

/** What a cell looks like, as far as a grid shows it. Colours are "#rrggbb"; null is automatic or none. */
export interface CellFormat {
  readonly numberFormat: string;
  readonly isDate: boolean;
  readonly bold: boolean;
  readonly italic: boolean;
  readonly underline: boolean;
  readonly strike: boolean;
  readonly fontName: string | null;
  /** points */
  readonly fontSize: number | null;
  readonly fontColour: string | null;
  /** without a flag of ours */
  readonly fill: string | null;
  /** what an earlier check marked the cell as */
  readonly flag: FlagSeverity | null;
  readonly horizontal: string | null;
  readonly vertical: string | null;
  readonly wrap: boolean;
  /** degrees */
  readonly rotation: number;
  readonly borders: ReadonlyMap<
    "top" | "right" | "bottom" | "left",
    { style: string; colour: string | null }
  >;
}

const PLAIN: CellFormat = {
  numberFormat: "General",
  isDate: false,
  bold: false,
  italic: false,
  underline: false,
  strike: false,
  fontName: null,
  fontSize: null,
  fontColour: null,
  fill: null,
  flag: null,
  horizontal: null,
  vertical: null,
  wrap: false,
  rotation: 0,
  borders: new Map(),
};

type Font = Pick<
  CellFormat,
  "bold" | "italic" | "underline" | "strike" | "fontName" | "fontSize" | "fontColour"
>;

/** Formats of a workbook's cells by style index (`s` of a cell); index 0 where there are no styles. */
export function readCellStyles(
  parts: PackageParts,
  styles: string | null,
  theme: string | null,
): readonly CellFormat[] {
  if (styles === null || !parts.has(styles)) return [PLAIN];
  const xml = parts.text(styles);
  const colour = colourReader(theme !== null && parts.has(theme) ? parts.text(theme) : "");
  const own = new Map<number, string>();
  for (const tag of xmlTags(section(xml, "numFmts"))) {
    if (tag.name !== "numFmt") continue;
    own.set(
      Number(attribute(tag.attributes, "numFmtId")),
      attribute(tag.attributes, "formatCode") ?? "General",
    );
  }
  const fonts = children(xml, "fonts", "font").map((font) => readFont(font, colour));
  const fills = children(xml, "fills", "fill").map((fill) => readFill(fill, colour));
  const borders = children(xml, "borders", "border").map((border) => readBorders(border, colour));
  const formats = children(xml, "cellXfs", "xf").map((xf): CellFormat => {
    const attributes = xf.slice(0, xf.indexOf(">"));
    const id = (name: string): number => Number(attribute(attributes, name) ?? 0);
    const numberFormat = numberFormatCode(id("numFmtId"), own);
    const alignment = findElement(xf, "alignment")?.tag.attributes ?? "";
    return {
      ...PLAIN,
      ...fonts[id("fontId")],
      numberFormat,
      isDate: isDateFormat(numberFormat),
      fill: fills[id("fillId")]?.fill ?? null,
      flag: fills[id("fillId")]?.flag ?? null,
      borders: borders[id("borderId")] ?? PLAIN.borders,
      horizontal: attribute(alignment, "horizontal"),
      vertical: attribute(alignment, "vertical"),
      wrap: isTrue(attribute(alignment, "wrapText")),
      rotation: Number(attribute(alignment, "textRotation") ?? 0),
    };
  });
  return formats.length === 0 ? [PLAIN] : formats;
}

/** The elements of a list such as `fills`, each whole. */
export function children(xml: string, list: string, name: string): string[] {
  const inner = section(xml, list);
  return [...findElements(inner, name)].map((element: XmlElement) => inner.slice(element.start, element.end));
}

function section(xml: string, name: string): string {
  const element = findElement(xml, name);
  return element === null ? "" : xml.slice(element.innerStart, element.innerEnd);
}

type ColourReader = (attributes: string) => string | null;

function readFont(xml: string, colour: ColourReader): Font {
  const font = { ...PLAIN } as { -readonly [K in keyof Font]: Font[K] };
  for (const tag of xmlTags(xml)) {
    const value = attribute(tag.attributes, "val");
    if (tag.kind === "close") continue;
    if (tag.name === "b") font.bold = isTrue(value ?? "1");
    else if (tag.name === "i") font.italic = isTrue(value ?? "1");
    else if (tag.name === "strike") font.strike = isTrue(value ?? "1");
    else if (tag.name === "u") font.underline = value !== "none";
    else if (tag.name === "name") font.fontName = value;
    else if (tag.name === "sz") font.fontSize = Number(value) || null;
    else if (tag.name === "color") font.fontColour = colour(tag.attributes);
  }
  const { bold, italic, underline, strike, fontName, fontSize, fontColour } = font;
  return { bold, italic, underline, strike, fontName, fontSize, fontColour };
}

/** The colour of a fill as it looks without a flag: a pattern's own colours are not mixed, a gradient is none. */
function readFill(xml: string, colour: ColourReader): { fill: string | null; flag: FlagSeverity | null } {
  const pattern = findElement(xml, "patternFill");
  const foreground = findElement(xml, "fgColor");
  if (
    pattern === null ||
    foreground === null ||
    attribute(pattern.tag.attributes, "patternType") !== "solid"
  ) {
    return { fill: null, flag: null };
  }
  const before = fillBeforeFlag(xml);
  if (before === null) return { fill: colour(foreground.tag.attributes), flag: null };
  const flag = flagOfColour(attribute(foreground.tag.attributes, "rgb") ?? "");
  return { fill: before === NO_FILL ? null : colour(before), flag };
}

function readBorders(xml: string, colour: ColourReader): CellFormat["borders"] {
  const borders = new Map<"top" | "right" | "bottom" | "left", { style: string; colour: string | null }>();
  for (const side of ["top", "right", "bottom", "left"] as const) {
    const element = findElement(xml, side);
    const style = element === null ? null : attribute(element.tag.attributes, "style");
    if (element === null || style === null || style === "none") continue;
    const inner = xml.slice(element.innerStart, element.innerEnd);
    borders.set(side, { style, colour: colour(findElement(inner, "color")?.tag.attributes ?? "") });
  }
  return borders;
}

/** Order of a theme's colours as styles count them (ECMA-376-1:2016, 18.8.3, from memory). */
const THEME_ORDER = [
  "lt1",
  "dk1",
  "lt2",
  "dk2",
  "accent1",
  "accent2",
  "accent3",
  "accent4",
  "accent5",
  "accent6",
  "hlink",
  "folHlink",
];

/** The first sixteen of the fixed palette; the rest of it is rare (ECMA-376-1:2016, 18.8.27, from memory). */
const PALETTE = ["000000", "FFFFFF", "FF0000", "00FF00", "0000FF", "FFFF00", "FF00FF", "00FFFF"];

function colourReader(theme: string): ColourReader {
  const scheme = section(theme, "clrScheme");
  const themed = THEME_ORDER.map((name) => {
    const inner = section(scheme, name);
    for (const tag of xmlTags(inner)) {
      const value = attribute(tag.attributes, tag.name === "sysClr" ? "lastClr" : "val");
      if (value !== null && /^[0-9a-fA-F]{6}$/.test(value)) return value;
    }
    return null;
  });
  return (attributes) => {
    const rgb = attribute(attributes, "rgb");
    const index = attribute(attributes, "theme");
    const indexed = attribute(attributes, "indexed");
    let base: string | null = null;
    if (rgb !== null) base = rgb.slice(-6);
    else if (index !== null) base = themed[Number(index)] ?? null;
    else if (indexed !== null) base = Number(indexed) < 16 ? (PALETTE[Number(indexed) % 8] ?? null) : null;
    if (base === null || !/^[0-9a-fA-F]{6}$/.test(base)) return null;
    return tinted(base, Number(attribute(attributes, "tint") ?? 0));
  };
}

/** Each channel drawn towards white (tint above 0) or black (below). */
function tinted(hex: string, tint: number): string {
  const channels = [0, 2, 4].map((at) => {
    const value = Number.parseInt(hex.slice(at, at + 2), 16);
    const moved = tint > 0 ? value + (255 - value) * tint : value * (1 + tint);
    return Math.round(Math.min(255, Math.max(0, moved)))
      .toString(16)
      .padStart(2, "0");
  });
  return `#${channels.join("")}`;
}
