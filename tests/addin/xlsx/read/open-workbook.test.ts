import JSZip from "jszip";
import { describe, expect, it } from "vitest";
import { openWorkbook } from "../../../../addin/xlsx/read/open-workbook";
import { UnreadableWorkbook } from "../../../../addin/xlsx/unreadable-workbook";
import { buildPackage } from "../../../_support/build-package";
import { withDirectory, zipBomb } from "../../../_support/zip-bomb";

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
    const longer = declared(bytes, 100_000);
    expect(reason(longer)).toContain("damaged");
  });

  it("refuses a part whose bytes are not those that the check sum was made of", async () => {
    const stored = new JSZip();
    const made = await JSZip.loadAsync(await buildPackage(GOOD));
    for (const [name, file] of Object.entries(made.files)) stored.file(name, await file.async("string"));
    for (const bytes of [await buildPackage(GOOD), await stored.generateAsync({ type: "uint8array" })]) {
      const other = withDirectory(bytes, "xl/worksheets/sheet1.xml", (view, at) =>
        view.setUint32(at + 16, view.getUint32(at + 16, true) ^ 1, true),
      );
      expect(reason(other)).toMatch(/sheet1\.xml is damaged: its check sum/);
    }
  });

  it("passes over no sheet that the workbook names and whose part is missing", async () => {
    const zip = await JSZip.loadAsync(await buildPackage([...GOOD, { name: "Beams", xml: "" }]));
    zip.remove("xl/worksheets/sheet2.xml");
    expect(reason(await zip.generateAsync({ type: "uint8array" }))).toContain(
      'the part of its sheet "Beams" is missing',
    );
  });

  it("refuses a part that declares more than any schedule inflates to", async () => {
    const bytes = declared(await buildPackage(GOOD), 1_500_000_000);
    expect(reason(bytes)).toContain("not opened");
  });

  it("stops a bomb that lies about its size before it has inflated", async () => {
    const bytes = await zipBomb(256 * 1024 * 1024, 9_000);
    const before = process.memoryUsage().arrayBuffers;
    expect(reason(bytes)).toContain("longer than the file says");
    expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(64 * 1024 * 1024);
  });

  it("refuses more parts than any workbook has", async () => {
    const zip = new JSZip();
    for (let index = 0; index < 10_001; index += 1) zip.file(`p${index}`, "");
    expect(reason(await zip.generateAsync({ type: "uint8array" }))).toContain("10001 parts");
  });
});

/** The file whose directory gives its sheet another inflated size. */
function declared(bytes: Uint8Array, size: number): Uint8Array {
  return withDirectory(bytes, "xl/worksheets/sheet1.xml", (view, at) => view.setUint32(at + 24, size, true));
}
