import { JSDOM } from "jsdom";
import JSZip from "jszip";

/**
 * What is wrong with a copy of a workbook, beside the workbook it was made of: nothing that stood in the
 * original may be lost, nothing added may break the format's rules (ECMA-376-1 and -2:2016: schema orders
 * and the rules on parts, names and relationships, from memory). It shares no code with the product:
 * JSZip unpacks, jsdom's parser, which knows namespaces, reads. Faults of the original itself are not told.
 * @param anew sheets whose cells may be others than they were
 */
export async function copyFaults(
  before: Uint8Array,
  after: Uint8Array,
  anew: ReadonlySet<string> = new Set(),
): Promise<string[]> {
  const old = await Package.open(before);
  const young = await Package.open(after);
  return [
    ...partFaults(old, young),
    ...typeFaults(old, young),
    ...relationshipFaults(old, young),
    ...workbookFaults(old, young),
    ...styleFaults(old, young),
    ...sheetFaults(old, young, anew),
    ...noteFaults(old, young),
  ];
}

/** Parts of a package: bytes, parsed texts, types and relationships. */
class Package {
  readonly names: readonly string[];
  private readonly documents = new Map<string, Document | null>();

  private constructor(private readonly parts: ReadonlyMap<string, Uint8Array>) {
    this.names = [...parts.keys()];
  }

  static async open(bytes: Uint8Array): Promise<Package> {
    const zip = await JSZip.loadAsync(bytes, { checkCRC32: true });
    const parts = new Map<string, Uint8Array>();
    for (const file of Object.values(zip.files))
      if (!file.dir) parts.set(file.name.replace(/^\//, ""), await file.async("uint8array"));
    return new Package(parts);
  }

  has(part: string): boolean {
    return this.nameOf(part) !== null;
  }

  nameOf(part: string): string | null {
    if (this.parts.has(part)) return part;
    return this.names.find((name) => name.toLowerCase() === part.toLowerCase()) ?? null;
  }

  bytes(part: string): Uint8Array {
    return this.parts.get(this.nameOf(part) ?? "") ?? new Uint8Array();
  }

  /** Null where the part is no well-formed XML with every prefix bound. */
  xml(part: string): Document | null {
    const name = this.nameOf(part);
    if (name === null) return null;
    let found = this.documents.get(name);
    if (found === undefined) {
      found = parse(new TextDecoder().decode(this.parts.get(name)));
      this.documents.set(name, found);
    }
    return found;
  }

  relationships(part: string): { id: string; type: string; target: string | null }[] {
    return all(this.xml(relationshipsOf(part)), "Relationship").map((each) => ({
      id: each.getAttribute("Id") ?? "",
      type: (each.getAttribute("Type") ?? "").replace(/^.*\//, ""),
      target:
        each.getAttribute("TargetMode") === "External"
          ? null
          : resolved(part, each.getAttribute("Target") ?? ""),
    }));
  }

  get workbook(): string {
    return this.relationships("").find(({ type }) => type === "officeDocument")?.target ?? "";
  }

  get styles(): string | null {
    return this.relationships(this.workbook).find(({ type }) => type === "styles")?.target ?? null;
  }

  /** Sheet name to part. */
  get sheets(): Map<string, string> {
    const targets = new Map(this.relationships(this.workbook).map(({ id, target }) => [id, target]));
    const list = all(this.xml(this.workbook), "sheets")[0];
    return new Map(
      all(list, "sheet").map((sheet) => [
        sheet.getAttribute("name") ?? "",
        targets.get(idsOf(sheet)[0] ?? "") ?? "",
      ]),
    );
  }
}

const { DOMParser } = new JSDOM("").window;

function parse(text: string): Document | null {
  const document = new DOMParser().parseFromString(text.replace(/^\ufeff/, ""), "text/xml");
  return document.getElementsByTagName("parsererror").length > 0 ? null : document;
}

function all(within: Document | Element | null | undefined, name: string): Element[] {
  return within == null ? [] : [...within.getElementsByTagNameNS("*", name)];
}

function children(within: Element | null | undefined): Element[] {
  const list: Element[] = [];
  for (let each = within?.firstElementChild ?? null; each !== null; each = each.nextElementSibling)
    list.push(each);
  return list;
}

function relationshipsOf(part: string): string {
  const slash = part.lastIndexOf("/") + 1;
  return `${part.slice(0, slash)}_rels/${part.slice(slash)}.rels`;
}

function resolved(from: string, target: string): string {
  return decodeURI(new URL(target, `part:///${from}`).pathname.slice(1));
}

/** Values of the attributes by which an element names relationships. */
function idsOf(element: Element): string[] {
  return [...element.attributes]
    .filter(({ namespaceURI }) => namespaceURI?.endsWith("/relationships") === true)
    .map(({ value }) => value);
}

function sameBytes(a: Uint8Array, b: Uint8Array): boolean {
  return Buffer.compare(a, b) === 0;
}

function isText(part: string): boolean {
  return /\.(xml|rels)$/i.test(part);
}

/** Kinds of part that a copy may differ in. */
const MAY_CHANGE =
  /^(\[Content_Types\]\.xml|.*\.rels|.*\.vml)$|styles|sheet|comments|metadata|calcChain|chart|drawing/i;

function partFaults(old: Package, young: Package): string[] {
  const faults: string[] = [];
  if (new Set(young.names.map((name) => name.toLowerCase())).size < young.names.length)
    faults.push("two parts of one name");
  for (const name of young.names) {
    const isSame = old.has(name) && sameBytes(old.bytes(name), young.bytes(name));
    if (isSame) continue;
    if (old.has(name) && name !== young.workbook && !MAY_CHANGE.test(name)) faults.push(`${name}: changed`);
    if (isText(name) && young.xml(name) === null && !(old.has(name) && old.xml(name) === null))
      faults.push(`${name}: not well-formed`);
  }
  return faults;
}

function typeFaults(old: Package, young: Package): string[] {
  const missing = (pack: Package): Set<string> => {
    const types = pack.xml("[Content_Types].xml");
    const defaults = new Set(
      all(types, "Default").map((each) => each.getAttribute("Extension")?.toLowerCase()),
    );
    const overrides = new Set(
      all(types, "Override").map((each) => each.getAttribute("PartName")?.toLowerCase()),
    );
    return new Set(
      pack.names.filter(
        (name) =>
          name !== "[Content_Types].xml" &&
          !overrides.has(`/${name.toLowerCase()}`) &&
          !defaults.has(name.split(".").at(-1)?.toLowerCase()),
      ),
    );
  };
  const before = missing(old);
  const faults = [...missing(young)]
    .filter((name) => !before.has(name))
    .map((name) => `${name}: no content type`);
  const named = all(young.xml("[Content_Types].xml"), "Override").map(
    (each) => each.getAttribute("PartName")?.toLowerCase() ?? "",
  );
  const wasNamed = all(old.xml("[Content_Types].xml"), "Override").map((each) =>
    each.getAttribute("PartName")?.toLowerCase(),
  );
  for (const name of named) {
    if (!young.has(name.slice(1)) && (!wasNamed.includes(name) || old.has(name.slice(1))))
      faults.push(`${name}: a type without a part`);
  }
  if (new Set(named).size < named.length && new Set(wasNamed).size === wasNamed.length)
    faults.push("a part has two types");
  return faults;
}

function relationshipFaults(old: Package, young: Package): string[] {
  const faults: string[] = [];
  for (const rels of young.names.filter((name) => name.endsWith(".rels"))) {
    const part = rels.replace(/_rels\/([^/]*)\.rels$/, "$1");
    if (part !== "" && !young.has(part) && !(old.has(rels) && !old.has(part)))
      faults.push(`${rels}: of a part that is not there`);
    const list = young.relationships(part);
    const before = old.relationships(part);
    const ids = list.map(({ id }) => id);
    if (new Set(ids).size < ids.length && new Set(before.map(({ id }) => id)).size === before.length)
      faults.push(`${rels}: an id twice`);
    for (const { id, target } of list) {
      if (target === null || young.has(target)) continue;
      if (!before.some((each) => each.id === id && !old.has(each.target ?? "")))
        faults.push(`${rels}: ${id} leads nowhere`);
    }
    if (sameBytes(old.bytes(part), young.bytes(part)) || young.xml(part) === null) continue;
    const used = (pack: Package): string[] => all(pack.xml(part), "*").flatMap(idsOf);
    const known = new Set(ids);
    const dangling = new Set(used(old).filter((id) => !before.some((each) => each.id === id)));
    for (const id of used(young))
      if (id !== "" && !known.has(id) && !dangling.has(id))
        faults.push(`${part}: names ${id}, which is no relationship`);
  }
  return faults;
}

const WORKBOOK_ORDER =
  "fileVersion fileSharing workbookPr workbookProtection bookViews sheets functionGroups externalReferences definedNames calcPr oleSize customWorkbookViews pivotCaches smartTagPr smartTagTypes webPublishing fileRecoveryPr webPublishObjects extLst".split(
    " ",
  );
const STYLES_ORDER =
  "numFmts fonts fills borders cellStyleXfs cellXfs cellStyles dxfs tableStyles colors extLst".split(" ");
const SHEET_ORDER =
  "sheetPr dimension sheetViews sheetFormatPr cols sheetData sheetCalcPr sheetProtection protectedRanges scenarios autoFilter sortState dataConsolidate customSheetViews mergeCells phoneticPr conditionalFormatting dataValidations hyperlinks printOptions pageMargins pageSetup headerFooter rowBreaks colBreaks customProperties cellWatches ignoredErrors smartTags drawing legacyDrawing legacyDrawingHF drawingHF picture oleObjects controls webPublishItems tableParts extLst".split(
    " ",
  );

function isInOrder(root: Element | null | undefined, order: readonly string[]): boolean {
  const places = children(root)
    .map(({ localName }) => order.indexOf(localName))
    .filter((place) => place >= 0);
  return places.every((place, index) => index === 0 || place >= places[index - 1]!);
}

function workbookFaults(old: Package, young: Package): string[] {
  const faults: string[] = [];
  const book = young.xml(young.workbook);
  const wasInOrder = isInOrder(old.xml(old.workbook)?.documentElement, WORKBOOK_ORDER);
  if (wasInOrder && !isInOrder(book?.documentElement, WORKBOOK_ORDER))
    faults.push("workbook: out of schema order");
  const sheets = all(all(book, "sheets")[0], "sheet");
  for (const name of ["sheetId", "name"]) {
    const values = sheets.map((sheet) => sheet.getAttribute(name)?.toLowerCase());
    if (new Set(values).size < values.length) faults.push(`workbook: ${name} twice`);
  }
  for (const name of all(book, "definedName")) {
    const sheet = name.getAttribute("localSheetId");
    if (sheet !== null && Number(sheet) >= sheets.length) faults.push("workbook: a name of no sheet");
  }
  return faults;
}

/** Styles of a package by list, each as text. */
function styleLists(pack: Package): Map<string, string[]> {
  const root = pack.styles === null ? null : pack.xml(pack.styles)?.documentElement;
  return new Map(
    children(root).map((list) => [list.localName, children(list).map((item) => item.outerHTML)]),
  );
}

function styleFaults(old: Package, young: Package): string[] {
  if (young.styles === null) return [];
  const faults: string[] = [];
  const root = young.xml(young.styles)?.documentElement;
  if (!isInOrder(root, STYLES_ORDER)) faults.push("styles: out of schema order");
  const [before, lists] = [styleLists(old), styleLists(young)];
  for (const [name, items] of before) {
    const now = lists.get(name) ?? [];
    if (items.some((item, index) => now[index] !== item)) faults.push(`styles: ${name} changed`);
  }
  for (const list of children(root)) {
    const count = list.getAttribute("count");
    const wasWrong = (before.get(list.localName)?.length ?? 0) === children(list).length;
    if (count !== null && Number(count) !== children(list).length && !wasWrong)
      faults.push(`styles: ${list.localName} counts ${count}`);
  }
  const added = (name: string): string[] => (lists.get(name) ?? []).slice(before.get(name)?.length ?? 0);
  if (added("fills").length > 0) {
    const [first = "", second = ""] = lists.get("fills") ?? [];
    if ((before.get("fills")?.length ?? 0) < 1 && !first.includes("none"))
      faults.push("styles: no empty fill");
    if ((before.get("fills")?.length ?? 0) < 2 && !second.includes("gray125"))
      faults.push("styles: no gray fill");
  }
  const xfs = children(all(root, "cellXfs")[0]);
  const first = before.get("cellXfs")?.length ?? 0;
  for (const [id, list] of [
    ["fontId", "fonts"],
    ["fillId", "fills"],
    ["borderId", "borders"],
  ] as const) {
    const had = new Set(xfs.slice(0, first).map((xf) => xf.getAttribute(id)));
    for (const xf of xfs.slice(first)) {
      const index = xf.getAttribute(id);
      if (Number(index ?? 0) >= (lists.get(list)?.length ?? 0) && !had.has(index))
        faults.push(`styles: ${id} ${index} of no ${list}`);
    }
  }
  return faults;
}

function sheetFaults(old: Package, young: Package, anew: ReadonlySet<string>): string[] {
  const faults: string[] = [];
  const formats = styleLists(young).get("cellXfs")?.length ?? 0;
  const oldFormats = styleLists(old).get("cellXfs")?.length ?? 0;
  const oldSheets = old.sheets;
  for (const [sheet, part] of young.sheets) {
    const before = oldSheets.get(sheet);
    if (before !== undefined && sameBytes(old.bytes(before), young.bytes(part))) continue;
    const root = young.xml(part)?.documentElement;
    const oldRoot = before === undefined ? null : old.xml(before)?.documentElement;
    if (!isInOrder(root, SHEET_ORDER) && isInOrder(oldRoot, SHEET_ORDER))
      faults.push(`${sheet}: out of schema order`);
    if (children(root).filter(({ localName }) => localName === "legacyDrawing").length > 1)
      faults.push(`${sheet}: two legacyDrawing`);
    faults.push(...cellFaults(sheet, root, Math.max(formats, oldFormats)));
    if (before === undefined || anew.has(sheet)) faults.push(...longTexts(sheet, root));
    if (oldRoot != null && !anew.has(sheet)) faults.push(...lostCells(sheet, oldRoot, root));
  }
  for (const name of oldSheets.keys()) if (!young.sheets.has(name)) faults.push(`${name}: the sheet is gone`);
  return faults;
}

function cellFaults(sheet: string, root: Element | null | undefined, formats: number): string[] {
  const faults: string[] = [];
  let last = 0;
  for (const row of children(all(root, "sheetData")[0])) {
    const number = Number(row.getAttribute("r") || last + 1);
    if (number <= last) faults.push(`${sheet}: row ${number} after ${last}`);
    last = number;
    const seen = new Set<string>();
    for (const cell of children(row)) {
      const address = cell.getAttribute("r");
      if (address !== null && seen.has(address)) faults.push(`${sheet}: ${address} twice`);
      seen.add(address ?? "");
      if (Number(cell.getAttribute("s") ?? 0) >= Math.max(1, formats))
        faults.push(`${sheet}: ${address} has a format of nowhere`);
    }
  }
  return faults;
}

/** Characters that Excel holds in a cell (its published limits): it mends a file with more. */
const LONGEST_CELL = 32_767;

function longTexts(sheet: string, root: Element | null | undefined): string[] {
  return all(root, "c")
    .filter((cell) => (all(cell, "is")[0]?.textContent?.length ?? 0) > LONGEST_CELL)
    .map((cell) => `${sheet}: ${cell.getAttribute("r")} has too long a text`);
}

/** Everything of a cell but its style, and every other element of the sheet, must stand as it stood. */
function lostCells(sheet: string, old: Element, young: Element | null | undefined): string[] {
  const faults: string[] = [];
  const now = cellTexts(young);
  for (const [address, text] of cellTexts(old))
    if (now.get(address) !== text) faults.push(`${sheet}: ${address} changed`);
  const kept = children(young).map(written);
  for (const each of children(old)) {
    if (each.localName === "sheetData" || each.localName === "legacyDrawing") continue;
    if (!kept.includes(written(each))) faults.push(`${sheet}: ${each.localName} changed`);
  }
  return faults;
}

/** An element as text; CDATA and escaped characters say the same, and a comment nothing. */
function written(element: Element): string {
  const copy = element.cloneNode(true) as Element;
  const walk = (node: Node): void => {
    for (const each of [...node.childNodes]) {
      if (each.nodeType === each.CDATA_SECTION_NODE)
        each.replaceWith(element.ownerDocument.createTextNode(each.nodeValue ?? ""));
      else if (each.nodeType === each.COMMENT_NODE) each.remove();
      else walk(each);
    }
  };
  walk(copy);
  copy.normalize();
  return copy.outerHTML;
}

function cellTexts(root: Element | null | undefined): Map<string, string> {
  const cells = new Map<string, string>();
  let row = 0;
  for (const line of children(all(root, "sheetData")[0])) {
    row = Number(line.getAttribute("r") || row + 1);
    children(line).forEach((cell, index) => {
      const inside = children(cell).map(
        (each) => `${each.localName} ${each.getAttribute("ref") ?? ""} ${each.textContent}`,
      );
      if (inside.length > 0)
        cells.set(
          cell.getAttribute("r") || `${row} ${index}`,
          `${cell.getAttribute("t")} ${inside.join(" ")}`,
        );
    });
  }
  return cells;
}

function noteFaults(old: Package, young: Package): string[] {
  const faults: string[] = [];
  for (const part of young.sheets.values()) {
    const related = (type: string): string | null =>
      young.relationships(part).find((each) => each.type === type)?.target ?? null;
    const comments = related("comments");
    if (comments === null || sameBytes(old.bytes(comments), young.bytes(comments))) continue;
    const refs = all(young.xml(comments), "comment").map((each) => each.getAttribute("ref"));
    if (new Set(refs).size < refs.length) faults.push(`${comments}: two notes in a cell`);
    const authors = all(young.xml(comments), "author").length;
    if (all(young.xml(comments), "comment").some((each) => Number(each.getAttribute("authorId")) >= authors))
      faults.push(`${comments}: an author of nowhere`);
    const drawing = related("vmlDrawing");
    if (drawing === null) faults.push(`${part}: notes without boxes`);
    else if (shapeIdsTwice(young, drawing) > shapeIdsTwice(old, drawing))
      faults.push(`${drawing}: a shape id twice`);
  }
  return faults;
}

function shapeIdsTwice(pack: Package, drawing: string): number {
  const ids = [
    ...new TextDecoder().decode(pack.bytes(drawing)).matchAll(/<v:shape [^>]*\bid="([^"]+)"/g),
  ].map(([, id]) => id);
  return ids.length - new Set(ids).size;
}
