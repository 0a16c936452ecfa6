import { readFile } from "node:fs/promises";
import { describe, expect, test } from "vitest";
import { functionsMetadata } from "../../addin/functions/functions-metadata";
import { checkUnifiedManifest } from "../../manifest/check-unified-manifest";
import { functionsDigest } from "../../manifest/functions-digest";
import { ICON_FILES, ICON_SIZES, iconFile, iconName, OUTLINE_NAME, OUTLINE_SIZE } from "../../manifest/icons";
import { manifestFiles } from "../../manifest/manifest-files";
import { RELEASED } from "../../manifest/released-functions";
import { unifiedManifest } from "../../manifest/unified-manifest";

const BASE = "https://bars.example.com/tools";

interface Unified {
  readonly id: string;
  readonly version: string;
  readonly extensions: readonly {
    readonly requirements: { readonly capabilities: readonly { name: string; minVersion: string }[] };
  }[];
}

const unified = async () => unifiedManifest(BASE, await functionsMetadata(BASE));

describe("the unified manifest", () => {
  test("is good by Microsoft's schema of its version", async () => {
    expect(await checkUnifiedManifest(await unified())).toEqual([]);
  });

  test.each<[string, string | RegExp, string, RegExp]>([
    [
      "a name over 30 characters",
      '"short":"Barwright"',
      `"short":"${"x".repeat(31)}"`,
      /name\/short.*30 characters/,
    ],
    ["a lifetime that is none", '"lifetime":"long"', '"lifetime":"forever"', /lifetime.*allowed values/],
    ["no functions", /"functions":\[.*\](?=\}\}\],"ribbons")/, '"functions":[]', /functions.*fewer than 1/],
    ["a function's id of two letters", '"id":"DEVELOPED"', '"id":"AB"', /id.*3 characters/],
    ["a button without an action", '"actionId":"OpenPane"', '"actionId":"Nope"', /Nope is no action/],
    ["plain http", '"page":"https', '"page":"http', /must be https/],
  ])("with %s is refused", async (_, change, to, words) => {
    const json = JSON.stringify(await unified());
    const broken = json.replace(change, to);
    expect(broken).not.toBe(json);
    expect((await checkUnifiedManifest(JSON.parse(broken))).join("\n")).toMatch(words);
  });
});

describe("both manifests", () => {
  test("say the same of one add-in at one address", async () => {
    const files = await manifestFiles({ base: BASE, deployed: true });
    expect([...files.keys()]).toEqual(["manifest.xml", "manifest.json"]);
    const xml = files.get("manifest.xml") ?? "";
    const json = JSON.parse(files.get("manifest.json") ?? "") as Unified;
    expect(xml).toContain(`<Id>${json.id}</Id>`);
    expect(xml).toContain(`<Version>${json.version}.0</Version>`);
    for (const { name, minVersion } of json.extensions[0]?.requirements.capabilities ?? []) {
      expect(xml).toContain(`<Set Name="${name}" MinVersion="${minVersion}"/>`);
    }
    expect(xml).not.toContain("localhost");
    expect(JSON.stringify(json)).not.toContain("localhost");
  });

  test("for the machine's own address have names of their own", async () => {
    const files = await manifestFiles({ base: "https://localhost:3000", deployed: false });
    expect([...files.keys()]).toEqual(["manifest-localhost.xml", "manifest-localhost.json"]);
  });

  test("have a new version whenever Excel is told something new of the functions", async () => {
    const digest = functionsDigest(await functionsMetadata(BASE));
    expect(
      RELEASED.digest,
      `functions.json changed: in manifest/released-functions.ts raise the version from ${RELEASED.version} and set the digest`,
    ).toBe(digest);
    expect(RELEASED.version).toMatch(/^\d+\.\d+\.\d+$/);
  });
});

describe("icons", () => {
  const sizes = [
    ...ICON_SIZES.map((size) => [iconName(size), size] as const),
    [OUTLINE_NAME, OUTLINE_SIZE] as const,
  ];

  test.each(sizes)("%s is a PNG of %i pixels", async (name, size) => {
    const bytes = await readFile(iconFile(name));
    expect(bytes.subarray(1, 4).toString("latin1")).toBe("PNG");
    // width and height stand in the header chunk (PNG specification, 11.2.2 IHDR)
    expect([bytes.readUInt32BE(16), bytes.readUInt32BE(20)]).toEqual([size, size]);
  });

  test("are all in the list that the build copies", () => {
    expect(sizes.map(([name]) => name)).toEqual(ICON_FILES);
  });
});
