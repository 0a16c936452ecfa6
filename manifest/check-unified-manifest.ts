import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import Ajv from "ajv-draft-04";

const SCHEMAS = "build/json-schemas/teams";

interface Unified {
  readonly $schema?: string;
  readonly manifestVersion?: string;
  readonly extensions?: readonly {
    readonly runtimes?: readonly { readonly actions?: readonly { readonly id: string }[] }[];
  }[];
}

/** Everything wrong with a unified manifest, by Microsoft's schema of its version and what that leaves out. */
export async function checkUnifiedManifest(manifest: object): Promise<string[]> {
  const { manifestVersion } = manifest as Unified;
  const validate = new Ajv({ strict: false, allErrors: true, validateFormats: false }).compile(
    await schemaOf(manifestVersion ?? ""),
  );
  validate(manifest);
  const bySchema = (validate.errors ?? []).map(
    ({ instancePath, message, params }) => `${instancePath || "/"} ${message} ${JSON.stringify(params)}`,
  );
  return [...bySchema, ...danglingActions(manifest), ...plainHttp(manifest)];
}

/** The schema lies in a package that office-addin-manifest brings. */
async function schemaOf(version: string): Promise<object> {
  const fromManifest = createRequire(createRequire(import.meta.url).resolve("office-addin-manifest"));
  const entry = fromManifest.resolve("@microsoft/app-manifest");
  const folder = entry.slice(0, entry.lastIndexOf("/app-manifest/") + "/app-manifest/".length);
  const text = await readFile(`${folder}${SCHEMAS}/v${version}/MicrosoftTeams.schema.json`, "utf8");
  return JSON.parse(text) as object;
}

function danglingActions(manifest: Unified): string[] {
  const known = new Set(
    manifest.extensions?.flatMap((extension) =>
      (extension.runtimes ?? []).flatMap((runtime) => (runtime.actions ?? []).map((action) => action.id)),
    ),
  );
  const named = [...JSON.stringify(manifest).matchAll(/"actionId":"([^"]*)"/g)].map(
    (match) => match[1] ?? "",
  );
  return named.filter((id) => !known.has(id)).map((id) => `actionId ${id} is no action of a runtime`);
}

/** The schema lets plain http pass. */
function plainHttp(manifest: object): string[] {
  const found = JSON.stringify(manifest).match(/"http:[^"]*"/gi) ?? [];
  return found.map((address) => `${address} must be https`);
}
