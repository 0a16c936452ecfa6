import { UnreadableWorkbook } from "../unreadable-workbook";
import { attribute, decodeXml, refuseDoctype, xmlTags } from "../xml/xml-text";
import {
  type FileBytes,
  inflateEntry,
  inflateWhole,
  type NativeZip,
  readZip,
  type ZipArchive,
  type ZipEntry,
} from "../zip/zip-archive";
import type { ZipLimits } from "../zip/zip-limits";

/** One relationship of a part; `target` is the path of a part, or an address outside. */
export interface Relationship {
  readonly id: string;
  /** last word of the type's address: "worksheet", "comments" */
  readonly type: string;
  readonly target: string;
  readonly external: boolean;
}

/** The parts of an Office file by name. Names come from the file, so they are only ever keys of a Map. */
export interface PackageParts {
  readonly archive: ZipArchive;
  has(part: string): boolean;
  /** the name as the file writes it, case aside */
  nameOf(part: string): string | null;
  /** The whole text of a part; throws where there is none. */
  text(part: string): string;
  /** The bytes of a part in pieces. */
  pieces(part: string): Generator<Uint8Array>;
  bytes(part: string): Uint8Array;
  relationships(part: string): readonly Relationship[];
  /** What the package says a part is; empty where it says nothing. */
  contentType(part: string): string;
}

/** Bytes of a part that is taken as one text; sheets are not, they are read in pieces. */
const LONGEST_TEXT = 256 * 1024 * 1024;
const CFB = [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1];

/** Opens an Office file's parts. Throws `UnreadableWorkbook` with the reason and the remedy. */
export function openParts(file: FileBytes, limits?: ZipLimits, native?: NativeZip): PackageParts {
  refuseOtherKinds(file.bytes);
  const archive = readZip(file, limits, native);
  const byLowerCase = new Map<string, string>();
  for (const name of archive.entries.keys()) byLowerCase.set(name.toLowerCase(), name);
  const nameOf = (part: string): string | null =>
    archive.entries.has(part) ? part : (byLowerCase.get(part.toLowerCase()) ?? null);
  const entry = (part: string): ZipEntry => {
    const name = nameOf(part);
    const found = name === null ? undefined : archive.entries.get(name);
    if (found === undefined)
      throw new UnreadableWorkbook(`not a whole workbook: its part ${part} is missing`);
    return found;
  };
  const text = (part: string): string => {
    const found = entry(part);
    if (found.declaredSize > LONGEST_TEXT) {
      throw new UnreadableWorkbook(`the part ${part} would inflate to over 256 MiB of text: not opened`);
    }
    return decodeWhole(inflateWhole(archive, found), part);
  };
  return {
    archive,
    nameOf,
    has: (part) => nameOf(part) !== null,
    text,
    bytes: (part) => inflateWhole(archive, entry(part)),
    pieces: (part) => checkedPieces(inflateEntry(archive, entry(part)), part),
    contentType: (part) => contentType(nameOf(TYPES) === null ? "" : text(TYPES), part),
    relationships: (part) => {
      const rels = relationshipsPart(part);
      return nameOf(rels) === null ? [] : readRelationships(text(rels), part);
    },
  };
}

function refuseOtherKinds(bytes: Uint8Array): void {
  if (bytes.length === 0) throw new UnreadableWorkbook("the file is empty");
  if (CFB.every((byte, index) => bytes[index] === byte))
    throw new UnreadableWorkbook(compoundFileReason(bytes));
  if (bytes[0] !== 0x50 || bytes[1] !== 0x4b) {
    throw new UnreadableWorkbook("not a workbook: .xlsx (or .csv) is read; save it as .xlsx");
  }
}

const TYPES = "[Content_Types].xml";

function contentType(types: string, part: string): string {
  const extension = part.split(".").at(-1)?.toLowerCase();
  let byExtension = "";
  for (const { name, attributes } of xmlTags(types)) {
    const type = attribute(attributes, "ContentType") ?? "";
    if (name === "Override" && attribute(attributes, "PartName")?.toLowerCase() === `/${part.toLowerCase()}`)
      return type;
    if (name === "Default" && attribute(attributes, "Extension")?.toLowerCase() === extension)
      byExtension = type;
  }
  return byExtension;
}

/** "xl/worksheets/_rels/sheet1.xml.rels" of "xl/worksheets/sheet1.xml". */
export function relationshipsPart(part: string): string {
  const slash = part.lastIndexOf("/") + 1;
  return `${part.slice(0, slash)}_rels/${part.slice(slash)}.rels`;
}

function readRelationships(xml: string, part: string): Relationship[] {
  const found: Relationship[] = [];
  for (const tag of xmlTags(xml)) {
    if (tag.name !== "Relationship") continue;
    const target = attribute(tag.attributes, "Target") ?? "";
    const external = attribute(tag.attributes, "TargetMode") === "External";
    found.push({
      id: attribute(tag.attributes, "Id") ?? "",
      type: (attribute(tag.attributes, "Type") ?? "").replace(/^.*\//, ""),
      target: external ? target : resolvePart(part, target),
      external,
    });
  }
  return found;
}

function resolvePart(from: string, target: string): string {
  const path = target.startsWith("/") ? [] : from.split("/").slice(0, -1);
  for (const step of decodeXml(target).split("/")) {
    if (step === "..") path.pop();
    else if (step !== "." && step !== "") path.push(step);
  }
  return path.join("/");
}

function* checkedPieces(pieces: Iterable<Uint8Array>, part: string): Generator<Uint8Array> {
  let first = true;
  for (const piece of pieces) {
    if (first) {
      refuseUtf16(piece, part);
      refuseDoctype(new TextDecoder("utf-8").decode(piece.subarray(0, 4096)));
    }
    first = false;
    yield piece;
  }
}

function decodeWhole(bytes: Uint8Array, part: string): string {
  refuseUtf16(bytes, part);
  const text = new TextDecoder("utf-8").decode(bytes);
  refuseDoctype(text);
  return text;
}

function refuseUtf16(bytes: Uint8Array, part: string): void {
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff)) {
    throw new UnreadableWorkbook(`the part ${part} is written in UTF-16: save the workbook again as .xlsx`);
  }
}

function compoundFileReason(bytes: Uint8Array): string {
  const encrypted = "EncryptedPackage";
  const wide = new Uint8Array(encrypted.length * 2);
  for (let index = 0; index < encrypted.length; index += 1) wide[index * 2] = encrypted.charCodeAt(index);
  return includesBytes(bytes, wide)
    ? "the workbook is encrypted: open it with its password and save a copy without one"
    : "an old binary workbook (.xls): save it as .xlsx";
}

function includesBytes(bytes: Uint8Array, wanted: Uint8Array): boolean {
  const first = wanted[0]!;
  for (let at = bytes.indexOf(first); at >= 0; at = bytes.indexOf(first, at + 1)) {
    let length = 1;
    while (length < wanted.length && bytes[at + length] === wanted[length]) length += 1;
    if (length === wanted.length) return true;
  }
  return false;
}
