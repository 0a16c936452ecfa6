import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { generatedPages } from "../../docs/generate/generated-pages";

const docs = fileURLToPath(new URL("../../docs", import.meta.url));

describe("generated pages", async () => {
  const pages = await generatedPages();

  it("should come from at least one generator", () => {
    expect(pages.size).toBeGreaterThan(0);
  });

  it.each([...pages])("should print no value that has no words: %s", (_path, text) => {
    expect(text).not.toMatch(/\[object |\bundefined\b \||\bNaN\b \|/);
  });

  it.each([...pages])("should be up to date: %s (npm run generate)", (path, text) => {
    const file = join(docs, path);
    expect(existsSync(file) ? readFileSync(file, "utf8") : "missing").toBe(text);
  });
});
