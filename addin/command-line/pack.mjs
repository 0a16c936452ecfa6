/**
 * Puts together the package that others install: the command line, the library with its types and the
 * licences, each bundled, so that it depends on nothing. `pack.mjs [FOLDER]`.
 */
import { execFileSync } from "node:child_process";
import { cp, mkdir, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

const root = fileURLToPath(new URL("../..", import.meta.url));
const folder = process.argv[2] ?? join(root, "addin/dist/package");
const types = join(folder, "types");

await rm(folder, { recursive: true, force: true });
await mkdir(folder, { recursive: true });
execFileSync(process.execPath, [join(root, "addin/command-line/build.mjs"), join(folder, "barwright.mjs")]);
await build({
  entryPoints: [join(root, "addin/command-line/library.ts")],
  outfile: join(folder, "library.mjs"),
  bundle: true,
  platform: "node",
  format: "esm",
  target: "node20",
  legalComments: "eof",
  banner: { js: "import { createRequire as __cr } from 'node:module';const require=__cr(import.meta.url);" },
});
writeTypes();
await nameModules(types);
for (const page of ["archive.md", "api.md", "job-lines.schema.json"])
  await cp(join(root, "docs", page), join(folder, "docs", page));
await cp(join(root, "README.md"), join(folder, "README.md"));

const { name, version, description, license, engines } = JSON.parse(
  await readFile(join(root, "package.json"), "utf8"),
);
const entry = { types: "./types/addin/command-line/library.d.ts", default: "./library.mjs" };
const published = {
  name,
  version,
  description,
  license,
  type: "module",
  engines,
  bin: { barwright: "barwright.mjs" },
  exports: { ".": entry, "./job-lines.schema.json": "./docs/job-lines.schema.json" },
  types: entry.types,
};
await writeFile(join(folder, "package.json"), `${JSON.stringify(published, null, 2)}\n`);

function writeTypes() {
  const options = {
    target: "ES2022",
    module: "ESNext",
    moduleResolution: "bundler",
    strict: true,
    exactOptionalPropertyTypes: true,
    skipLibCheck: true,
    declaration: true,
    emitDeclarationOnly: true,
    rootDir: root,
    outDir: types,
  };
  const flags = Object.entries(options).flatMap(([key, value]) => [`--${key}`, String(value)]);
  const tsc = join(root, "node_modules/typescript/bin/tsc");
  const args = [
    ...flags,
    "--types",
    "node",
    "--lib",
    "ES2022,DOM",
    join(root, "addin/command-line/library.ts"),
  ];
  execFileSync(process.execPath, [tsc, ...args], { cwd: root, stdio: ["ignore", "inherit", "inherit"] });
}

/** Names the file behind each relative import, as Node's own resolution asks for. */
async function nameModules(top) {
  const files = (await readdir(top, { recursive: true })).filter((name) => name.endsWith(".d.ts"));
  const known = new Set(files.map((name) => join(top, name)));
  for (const file of files) {
    const path = join(top, file);
    const text = await readFile(path, "utf8");
    const named = text.replace(/((?:from|import\()\s*")(\.[^"]*)(")/g, (_, before, target, after) => {
      const at = join(dirname(path), target);
      const end = known.has(`${at}.d.ts`) ? ".js" : "/index.js";
      return `${before}${target}${end}${after}`;
    });
    await writeFile(path, named);
  }
}
