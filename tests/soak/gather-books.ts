import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";

/** Debian source packages that hold workbooks of other programs. */
const SOURCES = [
  "libapache-poi-java",
  "libxlsxwriter",
  "libexcel-writer-xlsx-perl",
  "liborcus",
  "gnumeric",
  "libspreadsheet-parsexlsx-perl",
  "r-cran-readxl",
  "ruby-roo",
  "pandas",
  "libreoffice",
];

/** Paths of foreign workbooks under a folder, each content once, fetched by apt where it holds none yet. */
export function gatherBooks(folder: string): string[] {
  if (!existsSync(join(folder, "books"))) fetch(folder);
  const books = new Map<string, string>();
  const walk = (at: string): void => {
    for (const entry of readdirSync(at, { withFileTypes: true })) {
      const path = join(at, entry.name);
      if (entry.isDirectory()) walk(path);
      else if (/\.(xlsx|xlsm)$/i.test(entry.name))
        books.set(createHash("sha256").update(readFileSync(path)).digest("hex"), path);
    }
  };
  walk(join(folder, "books"));
  return [...books.values()].sort();
}

/** The machine's own Debian lists, asked for sources. A package that its mirror does not hold is left out. */
function fetch(folder: string): void {
  const [lists, sources, books] = ["lists/partial", "sources", "books"].map((name) => join(folder, name)) as [
    string,
    string,
    string,
  ];
  for (const each of [lists, sources, books]) mkdirSync(each, { recursive: true });
  const own = "/etc/apt/sources.list.d/debian.sources";
  const asked = join(folder, "asked.sources");
  writeFileSync(asked, readFileSync(own, "utf8").replace(/^Types: .*$/gm, "Types: deb-src"));
  const options = [
    `Dir::Etc::sourcelist=${asked}`,
    "Dir::Etc::sourceparts=/dev/null",
    `Dir::State::lists=${join(folder, "lists")}`,
  ];
  const apt = (...args: string[]): void => {
    execFileSync("apt-get", [...options.flatMap((each) => ["-o", each]), ...args], {
      cwd: sources,
      stdio: "ignore",
    });
  };
  apt("update");
  for (const name of SOURCES) {
    try {
      apt("source", "--download-only", name);
    } catch {
      console.log(`not to be had: ${name}`);
    }
  }
  for (const archive of readdirSync(sources).filter((name) => /\.orig\.tar/.test(name))) {
    const into = join(books, archive.split("_")[0]!);
    mkdirSync(into, { recursive: true });
    execFileSync("sh", [
      "-c",
      `tar -xf "$0" -C "$1" --wildcards '*.xlsx' '*.xlsm' 2>/dev/null || true`,
      join(sources, archive),
      into,
    ]);
  }
}
