import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("../..", import.meta.url));

interface Package {
  readonly name: string;
  readonly version: string;
  readonly licence: string;
  readonly text: string;
}

interface PackageFile {
  readonly name: string;
  readonly version: string;
  readonly license?: string | { readonly type: string };
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly peerDependencies?: Readonly<Record<string, string>>;
}

/** `third-party-notices.txt`: every package that can end in a bundle, with the text of its licence. */
export async function generate(): Promise<Map<string, string>> {
  const packages = [...shippedPackages().values()].sort((a, b) => (a.name < b.name ? -1 : 1));
  const byText = new Map<string, Package[]>();
  for (const one of packages) byText.set(one.text, [...(byText.get(one.text) ?? []), one]);
  const parts = [...byText].map(([text, list]) => {
    const names = list.map(({ name, version, licence }) => `${name} ${version} (${licence})`);
    return `${names.join("\n")}\n\n${text.trim()}\n`;
  });
  const head =
    "Barwright is made with the packages below. Each keeps its own licence, whose text stands under its name.\n";
  return new Map([["third-party-notices.txt", [head, ...parts].join(`\n${"-".repeat(78)}\n\n`)]]);
}

/** Packages that the project depends on, and those that they depend on, by folder. */
function shippedPackages(): ReadonlyMap<string, Package> {
  const found = new Map<string, Package>();
  const own = packageFile(root);
  const waiting = Object.keys(own.dependencies ?? {}).map((name) => folderOf(name, root));
  for (let folder = waiting.pop(); folder !== undefined; folder = waiting.pop()) {
    if (folder === null || found.has(folder)) continue;
    const { name, version, license, dependencies = {}, peerDependencies = {} } = packageFile(folder);
    const text = licenceText(folder);
    const said = typeof license === "string" ? license : license?.type;
    found.set(folder, { name, version, licence: said ?? licenceNamed(text), text: text || (said ?? "") });
    for (const needed of Object.keys({ ...dependencies, ...peerDependencies }))
      waiting.push(folderOf(needed, folder));
  }
  return found;
}

/** Where Node finds a package from a folder; null where an optional one is not installed. */
function folderOf(name: string, from: string): string | null {
  for (let at = from; at.startsWith(root.replace(/\/$/, "")); at = join(at, "..")) {
    const folder = join(at, "node_modules", name);
    if (existsSync(join(folder, "package.json"))) return folder;
  }
  return null;
}

function packageFile(folder: string): PackageFile {
  return JSON.parse(readFileSync(join(folder, "package.json"), "utf8")) as PackageFile;
}

function licenceText(folder: string): string {
  const files = readdirSync(folder).filter((name) => /^(licen[cs]e|copying|notice)/i.test(name));
  return files
    .sort()
    .map((name) => readFileSync(join(folder, name), "utf8").replaceAll("\r\n", "\n").trim())
    .join("\n\n");
}

/** For a package whose own description names none: what its licence's text says it is. */
function licenceNamed(text: string): string {
  if (/Apache License\s+Version 2\.0/.test(text)) return "Apache-2.0";
  if (/Permission is hereby granted, free of charge/.test(text)) return "MIT";
  return "see the text";
}
