import { constants, deflateRawSync } from "node:zlib";
import JSZip from "jszip";
import { buildPackage } from "./build-package";

const PART = "xl/worksheets/sheet1.xml";
const BLOCK = 64 * 1024 * 1024;

/**
 * A workbook whose sheet really inflates to `size` bytes of blanks, about a thousandth of that in the
 * file. The stream is one packed block said again and again: a full flush forgets what went before.
 * `declared` is the size that the directory tells.
 */
export async function zipBomb(size: number, declared = size): Promise<Uint8Array> {
  const block = deflateRawSync(Buffer.alloc(BLOCK, " "), { finishFlush: constants.Z_FULL_FLUSH });
  const blocks = Array.from({ length: Math.ceil(size / BLOCK) }, () => block);
  const stream = Buffer.concat([...blocks, deflateRawSync(Buffer.alloc(0))]);
  const zip = await JSZip.loadAsync(await buildPackage([{ name: "S", xml: "" }]));
  zip.file(PART, stream);
  const bytes = await zip.generateAsync({ type: "uint8array", compression: "STORE" });
  return withDirectory(bytes, PART, (view, at) => {
    view.setUint16(at + 10, 8, true);
    view.setUint32(at + 24, declared, true);
  });
}

/** The file with one entry of its directory rewritten; `at` is where the entry begins. */
export function withDirectory(
  bytes: Uint8Array,
  part: string,
  change: (view: DataView, at: number) => void,
): Uint8Array {
  const changed = bytes.slice();
  const view = new DataView(changed.buffer);
  for (let at = 0; at + 46 < changed.length; at += 1) {
    if (view.getUint32(at, true) !== 0x02014b50) continue;
    const name = changed.subarray(at + 46, at + 46 + view.getUint16(at + 28, true));
    if (new TextDecoder().decode(name) === part) change(view, at);
  }
  return changed;
}
