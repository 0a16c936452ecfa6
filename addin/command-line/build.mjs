/** Bundles the command line into one file that Node runs as it is: `build.mjs [outfile]`. */
import { chmod, copyFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { NOTICE_FILES, noticeFile } from "../webpack/notices.mjs";

const outfile =
  process.argv[2] ?? fileURLToPath(new URL("../dist/command-line/barwright.mjs", import.meta.url));

await build({
  entryPoints: [fileURLToPath(new URL("./main.ts", import.meta.url))],
  outfile,
  bundle: true,
  platform: "node",
  format: "esm",
  target: "node20",
  legalComments: "eof",
  banner: {
    js: "#!/usr/bin/env node\nimport { createRequire as __cr } from 'node:module';const require=__cr(import.meta.url);",
  },
});
await chmod(outfile, 0o755);
for (const name of NOTICE_FILES) await copyFile(noticeFile(name), join(dirname(outfile), name));
