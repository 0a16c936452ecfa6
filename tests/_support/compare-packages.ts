import JSZip from "jszip";

/** How two Office files differ, part by part, read by JSZip. */
export interface PackageDifference {
  readonly changed: readonly string[];
  readonly added: readonly string[];
  readonly removed: readonly string[];
}

/** Parts whose inflated bytes differ, and parts that only one of the two files has. */
export async function comparePackages(before: Uint8Array, after: Uint8Array): Promise<PackageDifference> {
  const [old, young] = [await partsOf(before), await partsOf(after)];
  const changed = [...old].filter(([name, bytes]) => young.has(name) && !sameBytes(bytes, young.get(name)!));
  return {
    changed: changed.map(([name]) => name).sort(),
    added: [...young.keys()].filter((name) => !old.has(name)).sort(),
    removed: [...old.keys()].filter((name) => !young.has(name)).sort(),
  };
}

/** Text of one part, read by JSZip. */
export async function partText(bytes: Uint8Array, part: string): Promise<string> {
  const zip = await JSZip.loadAsync(bytes, { checkCRC32: true });
  const file = zip.file(part);
  if (file === null) throw new Error(`no part ${part}`);
  return file.async("string");
}

async function partsOf(bytes: Uint8Array): Promise<Map<string, Uint8Array>> {
  const zip = await JSZip.loadAsync(bytes, { checkCRC32: true });
  const parts = new Map<string, Uint8Array>();
  for (const file of Object.values(zip.files)) {
    if (!file.dir) parts.set(file.name, await file.async("uint8array"));
  }
  return parts;
}

function sameBytes(a: Uint8Array, b: Uint8Array): boolean {
  return a.length === b.length && a.every((byte, index) => byte === b[index]);
}
