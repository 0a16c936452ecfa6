import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { type Cell, type Sheet, sheetFromRows } from "../../core/schedule/sheet";
import type { Seeded } from "../corpus/seeded";
import { FOREIGN_HEADER, FOREIGN_ROWS } from "./foreign-schedule";

/** What people, programs and mischief put into a cell. */
const NASTY: readonly Cell[] = [
  ...[null, "", 0, -0, -1, 1, 1.5, 1e308, -1e308, 5e-324, 1e21, 9007199254740992, true, false],
  ...[Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 45_000, 36_526.5],
  ...[
    { error: "#REF!" },
    { error: "#N/A" },
    { error: "" },
    { error: "#N/A", message: "x", uncalculated: true } as const,
  ],
  ...[
    "NaN",
    "Infinity",
    "-Infinity",
    "1e999",
    "1e5",
    "0x10",
    "1_000",
    "undefined",
    "null",
    "__proto__",
    "constructor",
  ],
  ...[
    "\u202e0101\u202c",
    "\u200b",
    "\ufeff1250",
    "１２５０",
    "١٢٥٠",
    "½",
    "1½",
    "3'-4 1/2\"",
    "12-06",
    "1,250",
    "1.250,5",
  ],
  ...[
    "1 250",
    "(450)",
    "-450",
    "R1500",
    "R=0",
    "R=",
    "var",
    "1200-1800 step 50",
    "1800-1200 step 0",
    "1-1e9 step 1",
  ],
  ...[
    "12000+2350 (lap)",
    "ditto",
    '"',
    "as above",
    "same as 0101",
    "see 0101",
    "total",
    "Total 5",
    "C/F",
    "=1+1",
    "@x",
  ],
  ...[
    "\u0000",
    "\ud800",
    "😀",
    "a\nb",
    "  ",
    "99",
    "500 +90 1200",
    "500 +90",
    "hook90 500 hook90",
    "500 +0 500",
  ],
  ...[
    "500 +181 500",
    "00",
    "0",
    "21",
    "H16",
    "16",
    "#5",
    "15M",
    "Ø16",
    "H99",
    "H16@150",
    "25T16-03-200 T1",
    "2x3T20",
  ],
  ...[
    "8 Nos",
    "1O5O",
    "l6",
    "2 sets",
    "2024-05-01",
    "12/05",
    "1/2",
    "100%",
    "x".repeat(300),
    "1".repeat(400),
    "1/0",
  ],
  ...["B500B", "superseded", "Rev B", "deleted", "NOT USED"],
];

/** A schedule with a few of its cells, heads or rows spoiled. */
export function mutatedSchedule(random: Seeded): Sheet {
  const rows = Array.from({ length: random.between(3, 30) }, () => [...random.pick(FOREIGN_ROWS)] as Cell[]);
  for (let times = random.between(1, rows.length); times > 0; times -= 1) {
    const row = random.pick(rows);
    row[random.between(0, FOREIGN_HEADER.length - 1)] = random.chance(0.7)
      ? random.pick(NASTY)
      : oddNumber(random);
  }
  const head: Cell[] = [...FOREIGN_HEADER];
  if (random.chance(0.1)) head[random.between(0, head.length - 1)] = random.pick(NASTY);
  if (random.chance(0.1)) rows.splice(random.between(0, rows.length), 0, [random.pick(NASTY)]);
  if (random.chance(0.05)) rows.splice(random.between(0, rows.length), 0, head);
  const name = random.pick(["S", "S", "__proto__", "=x", "a'b"]);
  return sheetFromRows(name, [["Title"], [], head, ...rows]);
}

interface Listed {
  readonly sheets: readonly { readonly name: string; readonly rows: readonly (readonly Cell[])[] }[];
}
let lists: readonly Listed["sheets"][number][] | null = null;

/** A list as some office of the world lays it out, with a few of its cells spoiled. */
export function mutatedList(random: Seeded): Sheet {
  lists ??= listsOfTheWorld();
  const { name, rows } = random.pick(lists);
  const spoilt = rows.map((row) => [...row]);
  for (let times = random.between(1, spoilt.length); times > 0; times -= 1) {
    const row = random.pick(spoilt);
    if (row.length === 0) continue;
    row[random.between(0, row.length - 1)] = random.chance(0.7) ? random.pick(NASTY) : oddNumber(random);
  }
  return sheetFromRows(name, spoilt);
}

function listsOfTheWorld(): readonly Listed["sheets"][number][] {
  const folder = fileURLToPath(new URL("../corpus/unseen/", import.meta.url));
  const files = readdirSync(folder).filter((file) => file.endsWith(".json"));
  return files.flatMap((file) =>
    (JSON.parse(readFileSync(folder + file, "utf8")) as Listed[]).flatMap(({ sheets }) => sheets),
  );
}

function oddNumber(random: Seeded): number {
  return random.pick([
    random.between(0, 50),
    random.between(50, 13_000),
    -random.between(1, 5_000),
    random.between(1, 9) / 2,
  ]);
}
