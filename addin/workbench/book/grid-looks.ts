import {
  BooleanNumber,
  BorderStyleTypes,
  HorizontalAlign,
  type IBorderStyleData,
  type IStyleData,
  type Nullable,
  VerticalAlign,
  WrapStrategy,
} from "@univerjs/core";
import type { LookChange, Side } from "../../workbook/look-change";
import type { CellFormat } from "../../xlsx/read/cell-styles";

const SIDES = { top: "t", right: "r", bottom: "b", left: "l" } as const satisfies Record<Side, string>;

const ALIGNS: readonly (readonly [string, HorizontalAlign])[] = [
  ["left", HorizontalAlign.LEFT],
  ["center", HorizontalAlign.CENTER],
  ["right", HorizontalAlign.RIGHT],
  ["justify", HorizontalAlign.JUSTIFIED],
  ["distributed", HorizontalAlign.DISTRIBUTED],
];

const VERTICALS: readonly (readonly [string, VerticalAlign])[] = [
  ["top", VerticalAlign.TOP],
  ["center", VerticalAlign.MIDDLE],
  ["bottom", VerticalAlign.BOTTOM],
];

const EDGES: readonly (readonly [string, BorderStyleTypes])[] = [
  ["thin", BorderStyleTypes.THIN],
  ["hair", BorderStyleTypes.HAIR],
  ["dotted", BorderStyleTypes.DOTTED],
  ["dashed", BorderStyleTypes.DASHED],
  ["dashDot", BorderStyleTypes.DASH_DOT],
  ["dashDotDot", BorderStyleTypes.DASH_DOT_DOT],
  ["double", BorderStyleTypes.DOUBLE],
  ["medium", BorderStyleTypes.MEDIUM],
  ["mediumDashed", BorderStyleTypes.MEDIUM_DASHED],
  ["mediumDashDot", BorderStyleTypes.MEDIUM_DASH_DOT],
  ["mediumDashDotDot", BorderStyleTypes.MEDIUM_DASH_DOT_DOT],
  ["slantDashDot", BorderStyleTypes.SLANT_DASH_DOT],
  ["thick", BorderStyleTypes.THICK],
];

const inGrid = <T>(pairs: readonly (readonly [string, T])[], written: string | null): T | undefined =>
  pairs.find(([name]) => name === written)?.[1];
const inFile = <T>(pairs: readonly (readonly [string, T])[], value: T | null | undefined): string | null =>
  pairs.find(([, held]) => held === value)?.[0] ?? null;

/** A file's format as the grid takes it. The workbook's usual face is left to the grid, which has one. */
export function gridStyle(format: CellFormat, usual: Partial<CellFormat>): IStyleData {
  const align = inGrid(ALIGNS, format.horizontal);
  const vertical = inGrid(VERTICALS, format.vertical);
  const borders = [...format.borders].map(([side, { style, colour }]): [string, IBorderStyleData] => [
    SIDES[side],
    { s: inGrid(EDGES, style) ?? BorderStyleTypes.THIN, cl: { rgb: colour ?? "#000000" } },
  ]);
  return {
    ...(format.fill !== null && { bg: { rgb: format.fill } }),
    ...(format.fontColour !== null && { cl: { rgb: format.fontColour } }),
    ...(format.fontSize !== null && format.fontSize !== usual.fontSize && { fs: format.fontSize }),
    ...(format.fontName !== null && format.fontName !== usual.fontName && { ff: format.fontName }),
    ...(format.bold && { bl: BooleanNumber.TRUE }),
    ...(format.italic && { it: BooleanNumber.TRUE }),
    ...(format.underline && { ul: { s: BooleanNumber.TRUE } }),
    ...(format.strike && { st: { s: BooleanNumber.TRUE } }),
    ...(format.wrap && { tb: WrapStrategy.WRAP }),
    ...(align !== undefined && { ht: align }),
    ...(vertical !== undefined && { vt: vertical }),
    ...(format.numberFormat !== "General" && { n: { pattern: format.numberFormat } }),
    ...(borders.length > 0 && { bd: Object.fromEntries(borders) }),
  };
}

/** What of a look is another than it was; null where nothing that a file holds is. */
export function lookChange(
  before: Nullable<IStyleData>,
  now: Nullable<IStyleData>,
  usual: Partial<CellFormat>,
): LookChange | null {
  const was = plainLook(before, usual);
  const is = plainLook(now, usual);
  const { borders: edgesWas, ...restWas } = was;
  const { borders: edgesNow, ...restNow } = is;
  const change: Record<string, unknown> = {};
  for (const [name, value] of Object.entries(restNow)) {
    if (value !== restWas[name as keyof typeof restWas]) change[name] = value;
  }
  const sides = (Object.keys(SIDES) as Side[]).filter(
    (side) => JSON.stringify(edgesWas[side]) !== JSON.stringify(edgesNow[side]),
  );
  if (sides.length > 0) change["borders"] = Object.fromEntries(sides.map((side) => [side, edgesNow[side]]));
  return Object.keys(change).length === 0 ? null : (change as LookChange);
}

type PlainLook = Required<Omit<LookChange, "borders" | "rotation">> & {
  readonly borders: Readonly<Record<Side, { style: string; colour: string | null } | null>>;
};

function plainLook(style: Nullable<IStyleData>, usual: Partial<CellFormat>): PlainLook {
  const { bd } = style ?? {};
  const edge = (side: Side) => {
    const data = bd?.[SIDES[side]];
    const name = inFile(EDGES, data?.s);
    return name === null ? null : { style: name, colour: rgb(data?.cl?.rgb) };
  };
  return {
    bold: style?.bl === BooleanNumber.TRUE,
    italic: style?.it === BooleanNumber.TRUE,
    underline: style?.ul?.s === BooleanNumber.TRUE,
    strike: style?.st?.s === BooleanNumber.TRUE,
    fontName: style?.ff ?? usual.fontName ?? null,
    fontSize: style?.fs ?? usual.fontSize ?? null,
    fontColour: rgb(style?.cl?.rgb),
    fill: rgb(style?.bg?.rgb),
    numberFormat: style?.n?.pattern || "General",
    horizontal: inFile(ALIGNS, style?.ht),
    vertical: inFile(VERTICALS, style?.vt),
    wrap: style?.tb === WrapStrategy.WRAP,
    borders: { top: edge("top"), right: edge("right"), bottom: edge("bottom"), left: edge("left") },
  };
}

/** "#RRGGBB" of a colour as the grid writes it; null for none. */
function rgb(colour: Nullable<string>): string | null {
  if (!colour) return null;
  const hex = /^#([0-9a-f]{6})/i.exec(colour)?.[1];
  if (hex !== undefined) return `#${hex.toUpperCase()}`;
  const short = /^#([0-9a-f])([0-9a-f])([0-9a-f])$/i.exec(colour);
  if (short !== null)
    return `#${short
      .slice(1)
      .map((digit) => digit + digit)
      .join("")
      .toUpperCase()}`;
  const numbers = /^rgba?\(\s*(\d+)[\s,]+(\d+)[\s,]+(\d+)/.exec(colour);
  if (numbers === null) return null;
  return `#${numbers
    .slice(1, 4)
    .map((part) => Number(part).toString(16).padStart(2, "0"))
    .join("")
    .toUpperCase()}`;
}
