import { addressAt } from "../../../core/schedule/cell-address";
import type { CellRange, LineChange, SheetChanges, SheetFilter } from "../../workbook/sheet-changes";
import type { SheetLayout } from "../read/read-sheet";
import { encodeXml } from "../xml/encode-xml";
import { writeNodes, type XmlNode, xmlNodes } from "../xml/xml-nodes";
import { attribute, findElement, withAttribute, xmlTags } from "../xml/xml-text";
import type { StylePatch } from "./style-patch";

/** What stands about a sheet's rows, with widths of columns, frozen lines, merged cells and filter changed. */
export function changedFrame(layout: SheetLayout, change: SheetChanges, styles: StylePatch): SheetLayout {
  let { head, tail } = layout;
  if (change.columns !== undefined && change.columns.size > 0)
    head = withColumns(head, change.columns, styles);
  if (change.frozen !== undefined) head = withFrozen(head, change.frozen);
  if (change.merges !== undefined) tail = withList(tail, "mergeCells", mergesXml(change.merges, tail));
  if (change.filter !== undefined) tail = withList(tail, "autoFilter", filterXml(change.filter, tail));
  return { head, tail };
}

interface Span {
  first: number;
  last: number;
  attributes: string;
}

function withColumns(head: string, changes: ReadonlyMap<number, LineChange>, styles: StylePatch): string {
  const list = findElement(head, "cols");
  const spans: Span[] = [];
  for (const tag of list === null ? [] : xmlTags(head.slice(list.innerStart, list.innerEnd))) {
    if (tag.name !== "col" || tag.kind === "close") continue;
    const first = Number(attribute(tag.attributes, "min") ?? 1) - 1;
    spans.push({
      first,
      last: Number(attribute(tag.attributes, "max") ?? 1) - 1,
      attributes: tag.attributes,
    });
  }
  for (const [column, change] of changes) {
    const at = spans.findIndex(({ first, last }) => first <= column && column <= last);
    const held = spans[at];
    const parts: Span[] = [];
    if (held !== undefined && held.first < column) parts.push({ ...held, last: column - 1 });
    parts.push({
      first: column,
      last: column,
      attributes: changedColumn(held?.attributes ?? "", change, styles),
    });
    if (held !== undefined && held.last > column) parts.push({ ...held, first: column + 1 });
    if (held === undefined) spans.push(...parts);
    else spans.splice(at, 1, ...parts);
  }
  const prefix = prefixOf(head);
  const cols = spans
    .sort((a, b) => a.first - b.first)
    .map(({ first, last, attributes }) => {
      const placed = withAttribute(
        withAttribute(attributes, "min", String(first + 1)),
        "max",
        String(last + 1),
      );
      return `<${prefix}col ${placed.trim()}/>`;
    });
  const xml = `<${prefix}cols>${cols.join("")}</${prefix}cols>`;
  if (list !== null) return head.slice(0, list.start) + xml + head.slice(list.end);
  const at = head.lastIndexOf(`<${prefix}sheetData`);
  return head.slice(0, at) + xml + head.slice(at);
}

/** A column without a width of its own has the usual one of about nine characters. */
const USUAL_WIDTH = "9.140625";

function changedColumn(attributes: string, { size, hidden, look }: LineChange, styles: StylePatch): string {
  let changed = attributes;
  if (size !== undefined) {
    changed = withAttribute(changed, "width", size === null ? USUAL_WIDTH : String(size));
    changed = withAttribute(withAttribute(changed, "customWidth", "1"), "bestFit", null);
  } else if (attribute(changed, "width") === null) changed = withAttribute(changed, "width", USUAL_WIDTH);
  if (hidden !== undefined) changed = withAttribute(changed, "hidden", hidden ? "1" : null);
  if (look !== undefined) {
    const style = styles.withChange(Number(attribute(changed, "style") ?? 0), look);
    changed = withAttribute(changed, "style", String(style));
  }
  return changed;
}

function withFrozen(head: string, { rows, columns }: NonNullable<SheetChanges["frozen"]>): string {
  const nodes = xmlNodes(head);
  const prefix = prefixOf(head);
  const root = nodes.find((node): node is XmlNode => typeof node !== "string" && node.name === "worksheet");
  if (root === undefined) return head;
  const find = (inside: readonly (XmlNode | string)[], name: string) =>
    inside.find((node): node is XmlNode => typeof node !== "string" && node.name === name);
  let views = find(root.inside, "sheetViews");
  if (views === undefined) {
    views = node(prefix, "sheetViews", "", [node(prefix, "sheetView", ' workbookViewId="0"', [])]);
    const before = ["sheetPr", "dimension"].reduce(
      (at, name) =>
        Math.max(
          at,
          root.inside.findIndex((one) => typeof one !== "string" && one.name === name),
        ),
      -1,
    );
    root.inside.splice(before + 1, 0, views);
  }
  const view = find(views.inside, "sheetView");
  if (view === undefined) return head;
  const corner = rows > 0 ? (columns > 0 ? "bottomRight" : "bottomLeft") : "topRight";
  const split = `${columns > 0 ? ` xSplit="${columns}"` : ""}${rows > 0 ? ` ySplit="${rows}"` : ""}`;
  const selections = view.inside.filter(
    (one) => typeof one !== "string" && one.name !== "pane" && one.name !== "selection",
  );
  const pane = node(
    prefix,
    "pane",
    `${split} topLeftCell="${addressAt(rows, columns)}" activePane="${corner}" state="frozen"`,
    [],
  );
  view.inside.splice(0, view.inside.length, ...(rows + columns > 0 ? [pane] : []), ...selections);
  view.ends = view.inside.length === 0 ? "empty" : "closed";
  return writeNodes(nodes);
}

function node(prefix: string, name: string, attributes: string, inside: (XmlNode | string)[]): XmlNode {
  const ends = inside.length === 0 ? "empty" : "closed";
  return { name, written: prefix + name, attributes, inside, ends };
}

/** Elements that stand before merged cells and filters in a worksheet (ECMA-376-1:2016, 18.3.1.99). */
const BEFORE: Readonly<Record<string, readonly string[]>> = {
  autoFilter: ["sheetCalcPr", "sheetProtection", "protectedRanges", "scenarios"],
  mergeCells: [
    "sheetCalcPr",
    "sheetProtection",
    "protectedRanges",
    "scenarios",
    "autoFilter",
    "sortState",
    "dataConsolidate",
    "customSheetViews",
  ],
};

/** The tail with the one element of that name replaced, put in where it belongs, or taken out. */
function withList(tail: string, name: "mergeCells" | "autoFilter", xml: string): string {
  const held = topElement(tail, name);
  if (held !== null) return tail.slice(0, held.start) + xml + tail.slice(held.end);
  let at = /^\s*<\/(?:[\w.-]+:)?sheetData\s*>/.exec(tail)?.[0].length ?? 0;
  for (const before of BEFORE[name] ?? []) at = Math.max(at, topElement(tail, before)?.end ?? 0);
  return tail.slice(0, at) + xml + tail.slice(at);
}

/** An element of the worksheet's own, not of a custom view inside it. */
function topElement(tail: string, name: string) {
  const views = findElement(tail, "customSheetViews");
  const found = findElement(tail, name);
  if (found === null || views === null || found.start < views.start || found.start > views.end) return found;
  return findElement(tail, name, views.end);
}

function mergesXml(merges: readonly CellRange[], tail: string): string {
  if (merges.length === 0) return "";
  const p = tailPrefix(tail);
  const cells = merges.map((range) => `<${p}mergeCell ref="${rangeText(range)}"/>`);
  return `<${p}mergeCells count="${merges.length}">${cells.join("")}</${p}mergeCells>`;
}

function filterXml(filter: SheetFilter | null, tail: string): string {
  if (filter === null) return "";
  const p = tailPrefix(tail);
  const columns = filter.columns.map(({ column, values, blank, custom }) => {
    const tests = (custom?.tests ?? []).map(
      ({ value, operator }) =>
        `<${p}customFilter${operator === undefined ? "" : ` operator="${encodeXml(operator)}"`} val="${encodeXml(value)}"/>`,
    );
    const shown = (values ?? []).map((value) => `<${p}filter val="${encodeXml(value)}"/>`);
    const inside =
      custom === undefined
        ? `<${p}filters${blank === true ? ' blank="1"' : ""}>${shown.join("")}</${p}filters>`
        : `<${p}customFilters${custom.and ? ' and="1"' : ""}>${tests.join("")}</${p}customFilters>`;
    return `<${p}filterColumn colId="${column}">${inside}</${p}filterColumn>`;
  });
  return `<${p}autoFilter ref="${rangeText(filter.range)}">${columns.join("")}</${p}autoFilter>`;
}

const rangeText = ({ top, left, bottom, right }: CellRange): string =>
  `${addressAt(top, left)}:${addressAt(bottom, right)}`;

const prefixOf = (head: string): string => /<([\w.-]+:)?worksheet/.exec(head)?.[1] ?? "";
const tailPrefix = (tail: string): string => /<\/([\w.-]+:)?worksheet/.exec(tail)?.[1] ?? "";
