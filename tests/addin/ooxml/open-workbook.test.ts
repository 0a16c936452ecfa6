import { deflateSync } from "fflate";
import JSZip from "jszip";
import { describe, expect, it } from "vitest";
import { openWorkbook } from "../../../addin/ooxml/open-workbook";
import { UnreadableWorkbook } from "../../../addin/ooxml/unreadable-workbook";
import { buildPackage } from "../../_support/build-package";

const GOOD = [{ name: "S", xml: '<row r="1"><c r="A1"><v>1</v></c></row>' }];

function reason(bytes: Uint8Array): string {
  try {
    const workbook = openWorkbook(bytes);
    for (const { name } of workbook.sheets) workbook.read(name);
  } catch (error) {
    expect(error).toBeInstanceOf(UnreadableWorkbook);
    return (error as Error).message;
  }
  return "opened";
}

describe("openWorkbook", () => {
  it("opens a good file", async () => {
    expect(reason(await buildPackage(GOOD))).toBe("opened");
  });

  it("tells what a file is that is no workbook", async () => {
    const zip = new JSZip();
    zip.file("readme.txt", "hello");
    expect(reason(new Uint8Array())).toContain("empty");
    expect(reason(new TextEncoder().encode("size,length"))).toContain("not a workbook");
    expect(reason(await zip.generateAsync({ type: "uint8array" }))).toContain("not a workbook");
  });

  it("tells an encrypted workbook from an old binary one", () => {
    const container = new Uint8Array(4096);
    container.set([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1]);
    expect(reason(container)).toContain(".xls");
    container.set(new Uint8Array(Buffer.from("EncryptedPackage", "utf16le")), 1024);
    expect(reason(container)).toContain("encrypted");
  });

  it("refuses a part that declares a DOCTYPE", async () => {
    const xml = `<!DOCTYPE x [<!ENTITY a "b">]><worksheet><sheetData/></worksheet>`;
    expect(reason(await buildPackage([{ name: "S", xml }]))).toContain("DOCTYPE");
  });

  it("refuses a file that is cut short or whose bytes were changed", async () => {
    const bytes = await buildPackage(GOOD);
    expect(reason(bytes.subarray(0, bytes.length - 30))).toContain("cut short");
    const longer = declare(bytes, "xl/worksheets/sheet1.xml", 100_000);
    expect(reason(longer)).toContain("damaged");
  });

  it("refuses a part that declares more than any schedule inflates to", async () => {
    const bytes = declare(await buildPackage(GOOD), "xl/worksheets/sheet1.xml", 1_500_000_000);
    expect(reason(bytes)).toContain("not opened");
  });

  it("stops a bomb that lies about its size before it has inflated", async () => {
    // 64 MiB of blanks pack to 64 KiB: a ratio no sheet has. The directory says it is small.
    const blanks = deflateSync(new Uint8Array(64 * 1024 * 1024).fill(32), { level: 9 });
    const bytes = declare(storedAsDeflated(blanks), "xl/worksheets/sheet1.xml", 9_000);
    const before = process.memoryUsage().arrayBuffers;
    expect(reason(bytes)).toMatch(/packed more than 250 times|inflates to/);
    expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(48 * 1024 * 1024);
  });

  it("refuses more parts than any workbook has", async () => {
    const zip = new JSZip();
    for (let index = 0; index < 10_001; index += 1) zip.file(`p${index}`, "");
    expect(reason(await zip.generateAsync({ type: "uint8array" }))).toContain("10001 parts");
  });
});

/** The file with another inflated size in its directory. */
function declare(bytes: Uint8Array, part: string, size: number): Uint8Array {
  const changed = bytes.slice();
  const view = new DataView(changed.buffer);
  for (let at = 0; at + 46 < changed.length; at += 1) {
    if (view.getUint32(at, true) !== 0x02014b50) continue;
    const length = view.getUint16(at + 28, true);
    const name = new TextDecoder().decode(changed.subarray(at + 46, at + 46 + length));
    if (name === part) view.setUint32(at + 24, size, true);
  }
  return changed;
}

/** A workbook whose sheet is the given deflate stream, written entry by entry. */
function storedAsDeflated(stream: Uint8Array): Uint8Array {
  const office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  const rels = (type: string, target: string): string =>
    `<Relationships><Relationship Id="rId1" Type="${office}/${type}" Target="${target}"/></Relationships>`;
  const parts: [string, Uint8Array, number][] = [
    ["_rels/.rels", new TextEncoder().encode(rels("officeDocument", "xl/workbook.xml")), 0],
    [
      "xl/workbook.xml",
      new TextEncoder().encode(
        `<workbook xmlns:r="${office}"><sheets><sheet name="S" sheetId="1" r:id="rId1"/></sheets></workbook>`,
      ),
      0,
    ],
    ["xl/_rels/workbook.xml.rels", new TextEncoder().encode(rels("worksheet", "worksheets/sheet1.xml")), 0],
    ["xl/worksheets/sheet1.xml", stream, 8],
  ];
  const body: Buffer[] = [];
  const directory: Buffer[] = [];
  let offset = 0;
  for (const [name, data, method] of parts) {
    const fields = Buffer.alloc(26);
    fields.writeUInt16LE(20, 0);
    fields.writeUInt16LE(method, 4);
    fields.writeUInt32LE(data.length, 14);
    fields.writeUInt32LE(data.length, 18);
    fields.writeUInt16LE(name.length, 22);
    const local = Buffer.concat([Buffer.from([0x50, 0x4b, 3, 4]), fields, Buffer.from(name), data]);
    const rest = Buffer.alloc(14);
    rest.writeUInt32LE(offset, 10);
    directory.push(Buffer.concat([Buffer.from([0x50, 0x4b, 1, 2, 20, 0]), fields, rest, Buffer.from(name)]));
    body.push(local);
    offset += local.length;
  }
  const end = Buffer.alloc(22);
  end.writeUInt32LE(0x06054b50, 0);
  end.writeUInt16LE(parts.length, 8);
  end.writeUInt16LE(parts.length, 10);
  end.writeUInt32LE(
    directory.reduce((sum, one) => sum + one.length, 0),
    12,
  );
  end.writeUInt32LE(offset, 16);
  return new Uint8Array(Buffer.concat([...body, ...directory, end]));
}
