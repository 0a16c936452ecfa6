import { attribute, decodeXml, encodeXml, findElement, findElements } from "./xml-text";

/** A defined name of a workbook: what it stands for is a formula without its equals sign. */
export interface DefinedName {
  readonly name: string;
  readonly refersTo: string;
  /** index of the sheet it belongs to; null for the whole workbook */
  readonly sheetIndex: number | null;
}

export function readDefinedNames(workbookXml: string): DefinedName[] {
  const list = findElement(workbookXml, "definedNames");
  if (list === null) return [];
  const inner = workbookXml.slice(list.innerStart, list.innerEnd);
  return [...findElements(inner, "definedName")].map((element) => {
    const sheet = attribute(element.tag.attributes, "localSheetId");
    return {
      name: attribute(element.tag.attributes, "name") ?? "",
      refersTo: decodeXml(inner.slice(element.innerStart, element.innerEnd)),
      sheetIndex: sheet === null ? null : Number(sheet),
    };
  });
}

/** The text that a name holds as a constant, `"a"` or `"a"&"b"`; null where it is anything else. */
export function constantText(refersTo: string): string | null {
  const formula = refersTo.trim().replace(/^=/, "");
  if (!/^"(?:[^"]|"")*"(?:\s*&\s*"(?:[^"]|"")*")*$/.test(formula)) return null;
  let text = "";
  for (const match of formula.matchAll(/"((?:[^"]|"")*)"/g)) text += match[1]!.replaceAll('""', '"');
  return text;
}

/** Longest text between quotes in a formula. */
const LONGEST_LITERAL = 255;

/** Excel's longest formula, its equals sign included. */
export const LONGEST_FORMULA = 8_192;

/** A text as a constant formula; long ones are joined of parts that a formula can hold. */
export function textConstant(text: string): string {
  const parts: string[] = [];
  for (let at = 0; at < text.length; ) {
    const end = at + LONGEST_LITERAL;
    const last = text.charCodeAt(end - 1);
    // a character of two units stays whole: half of one cannot be written
    const whole = end < text.length && last >= 0xd800 && last <= 0xdbff ? end - 1 : end;
    parts.push(text.slice(at, whole));
    at = whole;
  }
  return (parts.length === 0 ? [""] : parts).map((part) => `"${part.replaceAll('"', '""')}"`).join("&");
}

/**
 * The workbook part with names set, or taken out where the text is null: names of the whole workbook, or
 * of the sheet of that index.
 */
export function withDefinedNames(
  workbookXml: string,
  set: ReadonlyMap<string, string | null>,
  sheetIndex: number | null = null,
): string {
  if (set.size === 0) return workbookXml;
  const wanted = new Map([...set].map(([name, refersTo]) => [name.toLowerCase(), { name, refersTo }]));
  const list = findElement(workbookXml, "definedNames");
  const prefix = findElement(workbookXml, "workbook")?.tag.prefix ?? "";
  const kept: string[] = [];
  if (list !== null) {
    const inner = workbookXml.slice(list.innerStart, list.innerEnd);
    for (const element of findElements(inner, "definedName")) {
      const of = attribute(element.tag.attributes, "localSheetId");
      const isOther = (of === null ? null : Number(of)) !== sheetIndex;
      const name = (attribute(element.tag.attributes, "name") ?? "").toLowerCase();
      if (isOther || !wanted.has(name)) kept.push(inner.slice(element.start, element.end));
    }
  }
  for (const { name, refersTo } of wanted.values()) {
    if (refersTo === null) continue;
    const local = sheetIndex === null ? "" : ` localSheetId="${sheetIndex}"`;
    kept.push(
      `<${prefix}definedName name="${encodeXml(name)}"${local}>${encodeXml(refersTo)}</${prefix}definedName>`,
    );
  }
  const names = kept.length === 0 ? "" : `<${prefix}definedNames>${kept.join("")}</${prefix}definedNames>`;
  if (list !== null) return workbookXml.slice(0, list.start) + names + workbookXml.slice(list.end);
  const at = endOfLast(workbookXml, ["sheets", "functionGroups", "externalReferences"]);
  return workbookXml.slice(0, at) + names + workbookXml.slice(at);
}

function endOfLast(xml: string, names: readonly string[]): number {
  return names.reduce((end, name) => Math.max(end, findElement(xml, name)?.end ?? 0), 0);
}
