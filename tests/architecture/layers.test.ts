import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { cruise, type ICruiseResult } from "dependency-cruiser";
import { afterAll, describe, expect, it } from "vitest";

interface Placed {
  readonly path: string;
  readonly floor: number;
}
interface Layers {
  readonly FOLDERS: Readonly<Record<"core" | "addin", readonly Placed[]>>;
  forbiddenPairs(): readonly { readonly from: string; readonly to: string }[];
  layerRules(): never[];
}

const root = fileURLToPath(new URL("../..", import.meta.url));
const { FOLDERS, forbiddenPairs, layerRules } = createRequire(import.meta.url)(
  `${root}/.layers.cjs`,
) as Layers;
const all = [...FOLDERS.core, ...FOLDERS.addin];
const house = mkdtempSync(join(tmpdir(), "layers-"));

afterAll(() => rmSync(house, { recursive: true }));

/** A house of one file a folder, in which one folder imports another for each pair. */
async function refusedOf(pairs: readonly { readonly from: string; readonly to: string }[]) {
  for (const { path } of [...all, ...pairs.map(({ from }) => ({ path: from }))]) {
    mkdirSync(join(house, path), { recursive: true });
    writeFileSync(join(house, path, "thing.ts"), "export const thing = 1;\n");
  }
  pairs.forEach(({ from, to }, index) => {
    const up = from
      .split("/")
      .map(() => "..")
      .join("/");
    writeFileSync(join(house, from, `planted-${index}.ts`), `export { thing } from "${up}/${to}/thing";\n`);
  });
  const { output } = await cruise(["core", "addin"], {
    baseDir: house,
    validate: true,
    tsPreCompilationDeps: true,
    ruleSet: { forbidden: layerRules() },
    enhancedResolveOptions: { extensions: [".ts"] },
  });
  const { violations } = (output as ICruiseResult).summary;
  const planted = new Set(violations.map(({ from }) => /planted-(\d+)/.exec(from)?.[1] ?? from));
  for (const [index, { from }] of pairs.entries()) rmSync(join(house, from, `planted-${index}.ts`));
  return planted;
}

describe("the floors of the house", () => {
  it("should name every folder, and no other", () => {
    for (const top of ["core", "addin"] as const) {
      const there = readdirSync(join(root, top), { withFileTypes: true })
        .filter((entry) => entry.isDirectory() && !["dist", "webpack"].includes(entry.name))
        .map(({ name }) => `${top}/${name}`);
      expect(FOLDERS[top].map(({ path }) => path).sort()).toEqual(there.sort());
    }
  });

  it("should forbid what must never be", () => {
    const pairs = forbiddenPairs().map(({ from, to }) => `${from} > ${to}`);
    for (const pair of [
      "core/schedule > core/tickets",
      "core/audit > core/cutting",
      "core/shop > core/bar",
      "core/jobs > core/formulas",
      "addin/xlsx > addin/pane",
      "addin/pane > addin/excel",
      "addin/functions > addin/pane",
    ])
      expect(pairs).toContain(pair);
  });

  it("should refuse one import planted for each forbidden pair, and none that is allowed", async () => {
    const forbidden = forbiddenPairs();
    expect(forbidden.length).toBeGreaterThan(120);
    const refused = await refusedOf(forbidden);
    expect(forbidden.filter((_, index) => !refused.has(String(index)))).toEqual([]);
    const allowed = all.flatMap((from) =>
      all
        .filter((to) => to.path.split("/")[0] === from.path.split("/")[0] && to.floor < from.floor)
        .map((to) => ({ from: from.path, to: to.path })),
    );
    expect([...(await refusedOf(allowed))]).toEqual([]);
  });

  it("should refuse a folder that is not in the list", async () => {
    const refused = await refusedOf([{ from: "core/attic", to: "core/units" }]);
    expect([...refused]).toEqual(["0"]);
    rmSync(join(house, "core/attic"), { recursive: true });
  });

  it("should stand on the map of DEVELOPERS.md", () => {
    const text = readFileSync(join(root, "DEVELOPERS.md"), "utf8");
    const map = text.slice(text.indexOf("## The map"), text.indexOf("A folder imports"));
    const named = map.split("\n").flatMap((line) => {
      const [, first = ""] = line.split("|");
      const names = [...first.matchAll(/`([^`]+)`/g)].map(([, name = ""]) => name.replace(/\/$/, ""));
      const top = names[0]?.split("/")[0] ?? "";
      return names.map((name) => (name.includes("/") ? name : `${top}/${name}`));
    });
    expect(all.map(({ path }) => path).filter((path) => !named.includes(path))).toEqual([]);
  });
});
