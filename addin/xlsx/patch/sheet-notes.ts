import { addressAt } from "../../../core/schedule/cell-address";
import { parseAddress } from "../../workbook/cell-address";
import type { CellNote } from "../../workbook/sheet-changes";
import { encodeCellText } from "../xml/encode-xml";
import { PLACE, withPieces } from "../xml/encoded-pieces";
import {
  attribute,
  findElement,
  findElements,
  insertInto,
  rootTag,
  withAttribute,
  xmlTags,
} from "../xml/xml-text";
import type { PackageEdit } from "./package-edit";

/** Author of the notes that we add: by it they are found again. */
const NOTE_AUTHOR = "Barwright";

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const COMMENTS = "application/vnd.openxmlformats-officedocument.spreadsheetml.comments+xml";
const DRAWING = "application/vnd.openxmlformats-officedocument.vmlDrawing";
const SHAPES_PER_CLUSTER = 1024;
/** so that the numbers of a damaged file make no number too great to count on from */
const LAST_CLUSTER = 1_000_000;

/**
 * Adds and removes the notes of one sheet: the comments part holds the words, an old-style drawing part
 * the box of each. Cells that have a note or a threaded comment are left alone.
 */
export class SheetNotes {
  private readonly comments: string | null;
  private readonly threaded: string | null;
  private readonly drawing: string | null;

  constructor(
    private readonly edit: PackageEdit,
    private readonly sheetPart: string,
    /** the sheet's text after its rows, where it names its drawing */
    tail: string,
  ) {
    const relationships = edit.parts.relationships(sheetPart);
    const target = (type: string): string | null => {
      const found = relationships.find((one) => one.type === type)?.target;
      return found === undefined ? null : edit.parts.nameOf(found);
    };
    this.comments = target("comments");
    this.threaded = target("threadedComment");
    const legacy = findElement(tail, "legacyDrawing");
    const id = legacy === null ? null : attribute(legacy.tag.attributes, "id");
    const drawing = relationships.find((one) => one.id === id)?.target;
    this.drawing = drawing === undefined ? null : edit.parts.nameOf(drawing);
  }

  /** Takes out the notes of an earlier check, words and boxes. */
  removeOurs(): void {
    if (this.comments === null) return;
    const xml = this.edit.text(this.comments);
    const authors = authorsOf(xml);
    const gone = new Set<string>();
    let kept = "";
    let from = 0;
    for (const comment of findElements(xml, "comment")) {
      if (authors[Number(attribute(comment.tag.attributes, "authorId") ?? 0)] !== NOTE_AUTHOR) continue;
      gone.add((attribute(comment.tag.attributes, "ref") ?? "").toUpperCase());
      kept += xml.slice(from, comment.start);
      from = comment.end;
    }
    if (gone.size === 0) return;
    this.edit.set(this.comments, kept + xml.slice(from));
    if (this.drawing !== null) this.edit.set(this.drawing, withoutShapes(this.edit.text(this.drawing), gone));
  }

  /** Adds a note to each cell that has none; gives the drawing's relationship id where the sheet must name it. */
  add(notes: readonly CellNote[]): string | null {
    const taken = this.takenCells();
    const added = notes.filter((note) => {
      const address = addressAt(note.row, note.column);
      if (taken.has(address)) return false;
      taken.add(address);
      return true;
    });
    if (added.length === 0) return null;
    this.addWords(added);
    return this.addShapes(added);
  }

  private takenCells(): Set<string> {
    const taken = new Set<string>();
    const read = (part: string | null, element: string): void => {
      if (part === null) return;
      for (const tag of xmlTags(this.edit.text(part))) {
        if (tag.name === element && tag.kind !== "close") {
          taken.add((attribute(tag.attributes, "ref") ?? "").toUpperCase());
        }
      }
    };
    read(this.comments, "comment");
    read(this.threaded, "threadedComment");
    return taken;
  }

  private addWords(notes: readonly CellNote[]): void {
    const empty = `${HEAD}<comments xmlns="${MAIN}"><authors></authors><commentList></commentList></comments>`;
    let xml = this.comments === null ? empty : this.edit.text(this.comments);
    const prefix = rootTag(xml)?.prefix ?? "";
    for (const list of ["commentList", "authors"]) {
      if (findElement(xml, list) !== null) continue;
      const at = findElement(xml, "authors")?.end ?? rootTag(insertInto(xml, "comments", ""))?.end ?? 0;
      xml = insertInto(xml, "comments", "");
      xml = `${xml.slice(0, at)}<${prefix}${list}></${prefix}${list}>${xml.slice(at)}`;
    }
    let author = authorsOf(xml).indexOf(NOTE_AUTHOR);
    if (author < 0) {
      author = authorsOf(xml).length;
      xml = insertInto(xml, "authors", `<${prefix}author>${NOTE_AUTHOR}</${prefix}author>`);
    }
    const words = withPieces(insertInto(xml, "commentList", PLACE), function* () {
      for (const note of notes)
        yield `<${prefix}comment ref="${addressAt(note.row, note.column)}" authorId="${author}"><${prefix}text>` +
          `<${prefix}t xml:space="preserve">${encodeCellText(note.text)}</${prefix}t></${prefix}text></${prefix}comment>`;
    });
    if (this.comments !== null) this.edit.set(this.comments, words);
    else this.edit.relate(this.sheetPart, "comments", this.edit.add("xl/comments#.xml", words, COMMENTS));
  }

  private addShapes(notes: readonly CellNote[]): string | null {
    const part = this.drawing;
    const xml = part === null ? EMPTY_DRAWING : this.edit.text(part);
    const ids = new ShapeIds(xml, this.clustersElsewhere());
    const numbers = notes.map(() => ids.next());
    const hasType = /id=["']_x0000_t202["']/.test(xml);
    const about = ids.withClusters(insertInto(xml, "xml", (hasType ? "" : SHAPE_TYPE) + PLACE));
    const shapes = withPieces(about, function* () {
      for (const [at, note] of notes.entries()) yield noteShape(note, numbers[at] as number);
    });
    if (part !== null) {
      this.edit.set(part, shapes);
      return null;
    }
    const added = this.edit.add("xl/drawings/vmlDrawing#.vml", shapes, DRAWING, "vml");
    return this.edit.relate(this.sheetPart, "vmlDrawing", added);
  }

  /** Id clusters that other sheets' drawings use. */
  private clustersElsewhere(): Set<number> {
    const used = new Set<number>();
    const parts = new Set([...this.edit.parts.archive.entries.keys(), ...this.edit.changedTexts().keys()]);
    for (const name of parts) {
      if (!name.toLowerCase().endsWith(".vml") || name === this.drawing || !this.edit.has(name)) continue;
      for (const cluster of clustersOf(this.edit.text(name))) used.add(cluster);
    }
    return used;
  }
}

/** Numbers for new shapes, in clusters of 1,024 that no other drawing uses. */
class ShapeIds {
  private readonly own: number[];
  private at: number;

  constructor(
    xml: string,
    private readonly elsewhere: Set<number>,
  ) {
    this.own = clustersOf(xml);
    let highest = 0;
    for (const match of xml.matchAll(/_x0000_s(\d{1,9})\b/g)) highest = Math.max(highest, Number(match[1]));
    if (this.own.length === 0) this.own.push(this.freeCluster());
    const last = Math.max(...this.own) * SHAPES_PER_CLUSTER;
    this.at = Math.max(highest, last);
  }

  next(): number {
    this.at += 1;
    const cluster = Math.floor(this.at / SHAPES_PER_CLUSTER);
    if (!this.own.includes(cluster)) {
      const free = this.freeCluster();
      this.own.push(free);
      this.at = free * SHAPES_PER_CLUSTER + 1;
    }
    return this.at;
  }

  withClusters(xml: string): string {
    const data = this.own.join(",");
    // one that was begun for these notes has none, and is long
    const from = xml.indexOf("idmap");
    for (const tag of from < 0 ? [] : xmlTags(xml)) {
      if (tag.name !== "idmap" || tag.kind === "close") continue;
      const end = tag.kind === "empty" ? "/>" : ">";
      const map = `<${tag.prefix}idmap${withAttribute(tag.attributes, "data", data)}${end}`;
      return xml.slice(0, tag.start) + map + xml.slice(tag.end);
    }
    const layout =
      '<o:shapelayout xmlns:v="urn:schemas-microsoft-com:vml" xmlns:o="urn:schemas-microsoft-com:office:office" ' +
      `v:ext="edit"><o:idmap v:ext="edit" data="${data}"/></o:shapelayout>`;
    const at = rootTag(xml)?.end ?? 0;
    return xml.slice(0, at) + layout + xml.slice(at);
  }

  private freeCluster(): number {
    let cluster = 1;
    while (this.elsewhere.has(cluster) || this.own.includes(cluster)) cluster += 1;
    return cluster;
  }
}

function clustersOf(xml: string): number[] {
  const map = [...xmlTags(xml)].find(({ name, kind }) => name === "idmap" && kind !== "close");
  return (attribute(map?.attributes ?? "", "data") ?? "")
    .split(",")
    .map(Number)
    .filter((cluster) => Number.isSafeInteger(cluster) && cluster > 0 && cluster < LAST_CLUSTER);
}

const NAMESPACES =
  'xmlns:v="urn:schemas-microsoft-com:vml" xmlns:o="urn:schemas-microsoft-com:office:office" ' +
  'xmlns:x="urn:schemas-microsoft-com:office:excel"';
const EMPTY_DRAWING = `<xml ${NAMESPACES}></xml>`;
const SHAPE_TYPE =
  `<v:shapetype ${NAMESPACES} id="_x0000_t202" coordsize="21600,21600" o:spt="202" path="m,l,21600r21600,l21600,xe">` +
  '<v:stroke joinstyle="miter"/><v:path gradientshapeok="t" o:connecttype="rect"/></v:shapetype>';

/** A hidden note's box beside its cell, as tall as its words need. */
function noteShape(note: CellNote, id: number): string {
  const lines = note.text.split("\n").reduce((sum, line) => sum + Math.ceil((line.length + 1) / 42), 0);
  const left = note.column + 1;
  const top = Math.max(0, note.row - 1);
  const bottom = top + Math.max(4, lines + 1);
  return (
    `<v:shape ${NAMESPACES} id="_x0000_s${id}" type="#_x0000_t202" ` +
    'style="position:absolute;margin-left:60pt;margin-top:2pt;width:220pt;height:60pt;z-index:1;visibility:hidden" ' +
    'fillcolor="#ffffe1" o:insetmode="auto"><v:fill color2="#ffffe1"/><v:shadow on="t" color="black" obscured="t"/>' +
    '<v:path o:connecttype="none"/><v:textbox style="mso-direction-alt:auto"><div style="text-align:left"></div></v:textbox>' +
    '<x:ClientData ObjectType="Note"><x:MoveWithCells/><x:SizeWithCells/>' +
    `<x:Anchor>${left}, 15, ${top}, 10, ${left + 4}, 15, ${bottom}, 4</x:Anchor><x:AutoFill>False</x:AutoFill>` +
    `<x:Row>${note.row}</x:Row><x:Column>${note.column}</x:Column></x:ClientData></v:shape>`
  );
}

function withoutShapes(xml: string, addresses: ReadonlySet<string>): string {
  let kept = "";
  let from = 0;
  for (const shape of findElements(xml, "shape")) {
    const body = xml.slice(shape.start, shape.end);
    const row = numberIn(body, "Row");
    const column = numberIn(body, "Column");
    if (row === null || column === null || !addresses.has(addressAt(row, column))) continue;
    kept += xml.slice(from, shape.start);
    from = shape.end;
  }
  return kept + xml.slice(from);
}

function numberIn(xml: string, name: string): number | null {
  const element = findElement(xml, name);
  if (element === null) return null;
  const text = xml.slice(element.innerStart, element.innerEnd).trim();
  return /^\d{1,7}$/.test(text) ? Number(text) : null;
}

function authorsOf(xml: string): string[] {
  const list = findElement(xml, "authors");
  if (list === null) return [];
  const inner = xml.slice(list.innerStart, list.innerEnd);
  return [...findElements(inner, "author")].map((author) =>
    inner.slice(author.innerStart, author.innerEnd).trim(),
  );
}

/** Cells of a sheet that carry a note of ours. */
export function ourNotes(commentsXml: string): { row: number; column: number }[] {
  return notesBy(commentsXml, true);
}

/** How many cells carry a note or a comment of somebody else. */
export function othersNotes(commentsXml: string): number {
  return notesBy(commentsXml, false).length;
}

function notesBy(commentsXml: string, isOurs: boolean): { row: number; column: number }[] {
  const authors = authorsOf(commentsXml);
  const places: { row: number; column: number }[] = [];
  for (const tag of xmlTags(commentsXml)) {
    if (tag.name !== "comment" || tag.kind === "close") continue;
    const author = authors[Number(attribute(tag.attributes, "authorId") ?? 0)];
    if ((author === NOTE_AUTHOR) !== isOurs) continue;
    const place = parseAddress(attribute(tag.attributes, "ref") ?? "");
    if (place !== null) places.push(place);
  }
  return places;
}
