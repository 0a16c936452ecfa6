/**
 * `npm run manifest [-- https://address]`: writes both manifests into addin/dist and checks them without a
 * network. `npm run manifest:online` asks Microsoft's own service about the XML.
 */
import { spawnSync } from "node:child_process";
import { mkdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { checkUnifiedManifest } from "./check-unified-manifest";
import { checkXmlManifest } from "./check-xml-manifest";
import { LOCALHOST, manifestFiles } from "./manifest-files";

const folder = fileURLToPath(new URL("../addin/dist", import.meta.url));
const isOnline = process.argv.includes("--online");
const address = process.argv.slice(2).find((argument) => /^https?:/i.test(argument));
const base = (address ?? LOCALHOST).replace(/\/+$/, "");
if (!base.startsWith("https://")) {
  console.error(`${base} is no https address: Excel takes add-ins from https only`);
  process.exit(2);
}

await mkdir(folder, { recursive: true });
let problems = 0;
for (const [name, text] of await manifestFiles({ base, deployed: address !== undefined })) {
  const file = join(folder, name);
  await writeFile(file, text);
  const found = name.endsWith(".xml") ? checkXmlManifest(text) : await checkUnifiedManifest(JSON.parse(text));
  problems += found.length;
  console.log(
    `addin/dist/${name} for ${base}: ${found.length === 0 ? "good" : `${found.length} to put right`}`,
  );
  for (const problem of found) console.log(`  ${problem}`);
  if (isOnline && name.endsWith(".xml")) problems += askMicrosoft(file);
}
process.exitCode = problems > 0 ? 1 : 0;

function askMicrosoft(file: string): number {
  const { status } = spawnSync("npx", ["office-addin-manifest", "validate", file], { stdio: "inherit" });
  return status === 0 ? 0 : 1;
}
