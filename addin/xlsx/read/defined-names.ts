import type { DefinedName } from "../../workbook/defined-name";
import { encodeXml } from "../xml/encode-xml";
import { attribute, decodeXml, findElement, findElements } from "../xml/xml-text";

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
      const text = isOther ? undefined : wanted.get(name)?.refersTo;
      if (text === undefined) kept.push(inner.slice(element.start, element.end));
      if (typeof text !== "string" || element.tag.kind !== "open") continue;
      // a name that was hidden stays hidden
      const [before, behind] = [
        inner.slice(element.start, element.innerStart),
        inner.slice(element.innerEnd, element.end),
      ];
      kept.push(before + encodeXml(text) + behind);
      wanted.delete(name);
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
