/** Bundles the command line into one file that Node runs as it is: `build.mjs [outfile]`. */
import { chmod } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

const outfile =
  process.argv[2] ?? fileURLToPath(new URL("../dist/command-line/barwright.mjs", import.meta.url));

await build({
  entryPoints: [fileURLToPath(new URL("./main.ts", import.meta.url))],
  outfile,
  bundle: true,
  platform: "node",
  format: "esm",
  target: "node20",
  legalComments: "none",
  banner: {
    js: "#!/usr/bin/env node\nimport { createRequire as __cr } from 'node:module';const require=__cr(import.meta.url);",
  },
});
await chmod(outfile, 0o755);
