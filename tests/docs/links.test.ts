import { execFileSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";

const root = fileURLToPath(new URL("../..", import.meta.url));
const pages = execFileSync("git", ["ls-files", "*.md"], { cwd: root, encoding: "utf8" })
  .split("\n")
  .filter(Boolean);

describe("pages", () => {
  it.each(pages)("should link only to what is there: %s", (page) => {
    const text = readFileSync(join(root, page), "utf8").replace(/```[\s\S]*?```|`[^`\n]*`/g, "");
    const links = [...text.matchAll(/\]\(([^)\s]+)\)/g)].map((match) => match[1]!);
    const local = links.filter((link) => !/^[a-z]+:|^#/.test(link)).map((link) => link.split("#")[0]!);
    expect(local.filter((link) => !existsSync(join(root, dirname(page), link)))).toEqual([]);
  });
});
