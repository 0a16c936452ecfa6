import { encodeXml } from "../xml/encode-xml";
import type { XmlNode } from "../xml/xml-nodes";
import { attribute, decodeXml, withAttribute } from "../xml/xml-text";
import { type SheetShift, type Shifts, shiftFormula, shiftRanges } from "./shift-references";

/** Elements whose text is a formula, on worksheets, in tables and in charts. */
const FORMULAS = new Set([
  "f",
  "formula",
  "formula1",
  "formula2",
  "calculatedColumnFormula",
  "totalsRowFormula",
]);
/** Attributes that hold ranges of the sheet's own. */
const RANGES = ["ref", "sqref", "topLeftCell", "activeCell", "r1", "r2"];
/** Attributes that hold a formula. */
const LINKS = ["location", "fmlaLink", "fmlaRange"];
/** Lists that may not stand empty. */
const LISTS = new Set([
  "mergeCells",
  "conditionalFormattings",
  "dataValidations",
  "hyperlinks",
  "protectedRanges",
  "ignoredErrors",
  "rowBreaks",
  "colBreaks",
  "sparklines",
  "sparklineGroups",
  "scenarios",
  "ext",
  "extLst",
]);

/**
 * Elements of a part that follow what became of the sheets, in place: formulas anywhere, ranges where the
 * part belongs to one sheet. What has no place left is taken out.
 */
export function shiftNodes(
  nodes: (XmlNode | string)[],
  own: { readonly sheet: string; readonly shift: SheetShift | null },
  shifts: Shifts,
): (XmlNode | string)[] {
  return nodes.filter((node) => typeof node === "string" || isKept(node, own, shifts));
}

function isKept(
  node: XmlNode,
  own: { readonly sheet: string; readonly shift: SheetShift | null },
  shifts: Shifts,
): boolean {
  if (FORMULAS.has(node.name) && node.inside.every((one) => typeof one === "string")) {
    const text = decodeXml(node.inside.join(""));
    const shifted = shiftFormula(text, own.sheet, shifts);
    if (shifted !== text) node.inside.splice(0, node.inside.length, encodeXml(shifted));
  }
  for (const name of LINKS) {
    const link = attribute(node.attributes, name);
    if (link === null || link === "") continue;
    const shifted = shiftFormula(link, own.sheet, shifts);
    if (shifted !== link) node.attributes = withAttribute(node.attributes, name, shifted);
  }
  if (node.name === "cfvo" && attribute(node.attributes, "type") === "formula") {
    const value = attribute(node.attributes, "val") ?? "";
    node.attributes = withAttribute(node.attributes, "val", shiftFormula(value, own.sheet, shifts));
  }
  const { shift } = own;
  if (shift !== null) {
    if (node.name === "sqref") {
      const ranges = shiftRanges(decodeXml(node.inside.join("")), shift);
      if (ranges === null) return false;
      node.inside.splice(0, node.inside.length, ranges);
    }
    if (!shiftsItsRanges(node, shift)) return false;
    if (node.name === "brk" && !shiftsBreak(node, shift)) return false;
  }
  const before = node.inside.length;
  const kept = shiftNodes(node.inside, own, shifts);
  if (kept.length === before) return true;
  node.inside.splice(0, before, ...kept);
  const has = (name?: string) =>
    kept.some((one) => typeof one !== "string" && (name === undefined || one.name === name));
  // a block of one range, such as a conditional format of the newer kind, goes with its range
  const lostRange =
    !has("sqref") && node.inside.some((one) => typeof one !== "string" && one.name === "sqref");
  if (lostRange || (LISTS.has(node.name) && !has())) return false;
  node.attributes = withAttribute(withAttribute(node.attributes, "count", null), "manualBreakCount", null);
  return true;
}

function shiftsItsRanges(node: XmlNode, shift: SheetShift): boolean {
  // what stays in sight is counted in lines, and the corner behind it goes by that
  if (node.name === "pane") return true;
  for (const name of RANGES) {
    const ranges = attribute(node.attributes, name);
    if (ranges === null || ranges === "") continue;
    const shifted = shiftRanges(ranges, shift);
    if (shifted === null && (name === "topLeftCell" || name === "activeCell")) {
      node.attributes = withAttribute(node.attributes, name, null);
      continue;
    }
    if (shifted === null) return node.name === "selection";
    if (node.name === "mergeCell" && !shifted.includes(":")) return false;
    if (shifted !== ranges) node.attributes = withAttribute(node.attributes, name, shifted);
  }
  return true;
}

/** A page break stands before the line of its number. */
function shiftsBreak(node: XmlNode, shift: SheetShift): boolean {
  const line = Number(attribute(node.attributes, "id"));
  const isColumn = Number(attribute(node.attributes, "max") ?? 16_383) > 16_383;
  const now = (isColumn ? shift.columns : shift.rows).to(line);
  if (now !== null) node.attributes = withAttribute(node.attributes, "id", String(now));
  return now !== null;
}
