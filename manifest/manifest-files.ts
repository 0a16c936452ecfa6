import { functionsMetadata } from "../addin/functions/functions-metadata";
import { unifiedManifest } from "./unified-manifest";
import { xmlManifest } from "./xml-manifest";

export const LOCALHOST = "https://localhost:3000";

/**
 * Both manifests by file name: `manifest.xml` and `manifest.json` for the address they are deployed at,
 * `manifest-localhost.*` for a machine of one's own.
 */
export async function manifestFiles({
  base,
  deployed,
}: {
  readonly base: string;
  readonly deployed: boolean;
}): Promise<ReadonlyMap<string, string>> {
  const name = deployed ? "manifest" : "manifest-localhost";
  const unified = unifiedManifest(base, await functionsMetadata(base));
  return new Map([
    [`${name}.xml`, xmlManifest(base)],
    [`${name}.json`, `${JSON.stringify(unified, null, 2)}\n`],
  ]);
}
