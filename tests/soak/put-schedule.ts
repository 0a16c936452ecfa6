import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { FOREIGN_HEADER, FOREIGN_ROWS } from "../_support/foreign-schedule";

/** A workbook with the invented schedule under the cells of one of its worksheets, put in as text. */
export interface Planted {
  readonly bytes: Uint8Array;
  readonly sheet: string;
  /** characters of the sheet's part */
  readonly size: number;
}

/** Null where the package has no worksheet that rows can be added to. */
export function putSchedule(bytes: Uint8Array): Planted | null {
  const parts = unzipSync(bytes);
  const names = new Map(Object.keys(parts).map((name) => [name.toLowerCase(), name]));
  const text = (part: string): string =>
    strFromU8(parts[names.get(part.toLowerCase()) ?? ""] ?? new Uint8Array());
  const main = /Target\s*=\s*["']\/?([^"']*workbook\d*\.xml)["']/i.exec(text("_rels/.rels"))?.[1];
  if (main === undefined) return null;
  const folder = main.replace(/[^/]*$/, "");
  const relationships = text(`${folder}_rels/${main.slice(folder.length)}.rels`);
  for (const sheet of text(main).matchAll(/<(?:\w+:)?sheet\b[^>]*>/g)) {
    const name = attributeOf(sheet[0], "name");
    const id = attributeOf(sheet[0], "\\w+:id");
    const line = [...relationships.matchAll(/<(?:\w+:)?Relationship\b[^>]*>/g)].find(
      ([each]) => attributeOf(each, "Id") === id,
    )?.[0];
    const target = line === undefined ? null : attributeOf(line, "Target");
    if (name === null || target === null || !/\/worksheet["']/.test(line ?? "")) continue;
    const part = names.get(new URL(target, `part:///${folder}`).pathname.slice(1).toLowerCase());
    if (part === undefined) continue;
    const planted = withRows(strFromU8(parts[part]!));
    if (planted === null) continue;
    parts[part] = strToU8(planted);
    return { bytes: zipSync(parts, { level: 1 }), sheet: name, size: planted.length };
  }
  return null;
}

function withRows(xml: string): string | null {
  const open = /<((?:[\w.-]+:)?)sheetData(\s[^>]*?)?(\/?)>/.exec(xml);
  if (open === null) return null;
  const p = open[1]!;
  const numbers = [...xml.matchAll(new RegExp(`<${p}row\\b[^>]*?\\sr="(\\d+)"`, "g"))].map(([, row]) =>
    Number(row),
  );
  const count = xml.split(new RegExp(`<${p}row\\b`)).length - 1;
  const first = numbers.reduce((most, row) => Math.max(most, row), count) + 3;
  if (first > 1_000_000) return null;
  const rows = [FOREIGN_HEADER, ...FOREIGN_ROWS].map((cells, index) => {
    const row = first + index;
    const written = cells.map((value, column) => {
      const address = `${String.fromCharCode(65 + column)}${row}`;
      if (value === null) return "";
      if (typeof value === "number") return `<${p}c r="${address}"><${p}v>${value}</${p}v></${p}c>`;
      return `<${p}c r="${address}" t="inlineStr"><${p}is><${p}t>${value}</${p}t></${p}is></${p}c>`;
    });
    return `<${p}row r="${row}">${written.join("")}</${p}row>`;
  });
  if (open[3] === "/") {
    const data = `<${p}sheetData${open[2] ?? ""}>${rows.join("")}</${p}sheetData>`;
    return xml.slice(0, open.index) + data + xml.slice(open.index + open[0].length);
  }
  const end = xml.indexOf(`</${p}sheetData`);
  return end < 0 ? null : xml.slice(0, end) + rows.join("") + xml.slice(end);
}

function attributeOf(tag: string, name: string): string | null {
  const match = new RegExp(`\\s${name}\\s*=\\s*(?:"([^"]*)"|'([^']*)')`).exec(tag);
  return match === null ? null : (match[1] ?? match[2] ?? null);
}
