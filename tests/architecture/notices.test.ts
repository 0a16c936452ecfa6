import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { afterAll, describe, expect, it } from "vitest";
import { packagesNamed } from "../_support/packages-named";

const root = fileURLToPath(new URL("../..", import.meta.url));
const notices = readFileSync(`${root}/docs/third-party-notices.txt`, "utf8");
const folder = mkdtempSync(join(tmpdir(), "notices-"));
afterAll(() => rmSync(folder, { recursive: true }));

describe("the licence and the notices", () => {
  it("should hold the whole licence that the project names", () => {
    const text = readFileSync(`${root}/docs/LICENSE.txt`, "utf8");
    expect(text).toMatch(/Apache License\s+Version 2\.0, January 2004/);
    expect(text).toContain("END OF TERMS AND CONDITIONS");
  });

  it("should name every package of the command line's bundle, with a licence", async () => {
    const { metafile } = await build({
      entryPoints: [`${root}/addin/command-line/main.ts`],
      outfile: join(folder, "barwright.mjs"),
      bundle: true,
      platform: "node",
      format: "esm",
      target: "node20",
      metafile: true,
    });
    const bundled = packagesNamed(Object.keys(metafile.inputs).join("\n"));
    expect(bundled.length).toBeGreaterThan(2);
    const said = new Map(
      [...notices.matchAll(/^(\S+) \S+ \(([^)]+)\)$/gm)].map((line) => [line[1], line[2]]),
    );
    for (const name of bundled)
      expect(said.get(name), name).toMatch(/^(MIT|Apache-2\.0|BSD|ISC|0BSD|BlueOak)/);
  });

  it("should name a licence for a package whose own description names none", () => {
    expect(notices).toMatch(/^@univerjs\/telemetry \S+ \(Apache-2\.0\)$/m);
  });
});
