import { execFileSync, spawn, spawnSync } from "node:child_process";
import { once } from "node:events";
import {
  copyFileSync,
  linkSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { refuseTarget, writeCopy } from "../../../addin/command-line/write-copy";
import { openWorkbook } from "../../../addin/xlsx/read/open-workbook";
import { writeNewWorkbook } from "../../../addin/xlsx/write/new-workbook";
import { barwright, barwrightBundle } from "../../_support/command-line";
import { FOREIGN_HEADER, FOREIGN_ROWS } from "../../_support/foreign-schedule";

const BOOK = writeNewWorkbook({ sheets: [{ name: "Bars", rows: [FOREIGN_HEADER, ...FOREIGN_ROWS] }] });

function place(): string {
  return mkdtempSync(join(tmpdir(), "barwright-out-"));
}

describe("--out", () => {
  const folder = place();
  const book = join(folder, "Book.xlsx");
  writeFileSync(book, BOOK);
  symlinkSync(book, join(folder, "link.xlsx"));
  linkSync(book, join(folder, "hard.xlsx"));
  mkdirSync(join(folder, "sub"));
  symlinkSync(folder, join(folder, "sub", "back"));

  it.each([
    ["Book.xlsx", "Book.xlsx"],
    ["Book.xlsx", "./sub/../Book.xlsx"],
    ["Book.xlsx", "link.xlsx"],
    ["link.xlsx", "Book.xlsx"],
    ["Book.xlsx", "hard.xlsx"],
    ["Book.xlsx", "sub/back/Book.xlsx"],
    ["Book.xlsx", "book.XLSX"],
    ["link.xlsx", "sub/back/BOOK.xlsx"],
  ])("of %s to %s is refused: it is the book", (path, out) => {
    expect(() => refuseTarget(join(folder, path), `${folder}/${out}`)).toThrow(/--out (names|differs)/);
  });

  it("to a file of its own is not", () => {
    expect(() => refuseTarget(book, join(folder, "Book-checked.xlsx"))).not.toThrow();
    expect(() => refuseTarget(book, join(folder, "sub", "Book.xlsx"))).not.toThrow();
  });

  it("that is a link to the book leaves the book as it is, whichever command writes", async () => {
    for (const command of ["check", "recalc", "cutplan", "tickets"]) {
      const run = await barwright([command, book, "--out", join(folder, "link.xlsx")]);
      expect([run.exit, run.err.trim().split("\n").length], command).toEqual([2, 1]);
    }
    expect(Buffer.compare(readFileSync(book), BOOK)).toBe(0);
  });
});

describe("two results of one command", () => {
  const folder = place();
  const at = (name: string): string => join(folder, name);
  writeFileSync(at("Book.xlsx"), BOOK);
  writeFileSync(at("own.csv"), "Document,BS8666:2005\nFigure,Former,H16,70 mm\n");
  const own = readFileSync(at("own.csv"), "utf8");

  it.each([
    ["tickets", "--out", "page.html", "--labels", "page.html"],
    ["tickets", "--out", "page.html", "--labels", "PAGE.html"],
    ["tickets", "--labels", "./page.html", "--chart", "page.html"],
    ["check", "--own", "own.csv", "--out", "own.csv"],
    ["cutplan", "--own", "own.csv", "--out", "OWN.csv"],
  ])(
    "%s %s %s %s %s are never one file, however it is spelled",
    async (command, first, one, second, other) => {
      const run = await barwright([command, at("Book.xlsx"), first, at(one), second, at(other)]);
      expect([run.exit, run.out]).toEqual([2, ""]);
      expect(run.err.trim()).toMatch(
        /^barwright \w+: --\w+ \S+ is the file that --\w+ names: name another file$/,
      );
      expect(readdirSync(folder).sort()).toEqual(["Book.xlsx", "own.csv"]);
      expect(readFileSync(at("own.csv"), "utf8")).toBe(own);
    },
  );
});

describe("writeCopy", () => {
  it("replaces what stood there and leaves nothing beside it", () => {
    const folder = place();
    const path = join(folder, "copy.xlsx");
    writeFileSync(path, "old", { mode: 0o640 });
    symlinkSync(path, join(folder, "link"));
    writeCopy(join(folder, "link"), new TextEncoder().encode("new"));
    expect(readFileSync(path, "utf8")).toBe("new");
    expect(readdirSync(folder).sort()).toEqual(["copy.xlsx", "link"]);
  });

  it("leaves the old copy whole where the new one cannot be", () => {
    const folder = place();
    const path = join(folder, "copy.xlsx");
    writeFileSync(path, "old");
    copyFileSync(barwrightBundle(), join(folder, "barwright.mjs"));
    writeFileSync(join(folder, "Book.xlsx"), BOOK);
    // no file may grow over 2 blocks of 512 bytes: the disk is as good as full
    const limited = spawnSync(
      "sh",
      ["-c", 'ulimit -f 2; exec "$0" barwright.mjs check Book.xlsx --out copy.xlsx', process.execPath],
      { cwd: folder, encoding: "utf8" },
    );
    expect(readFileSync(path, "utf8")).toBe("old");
    expect([limited.status, limited.stderr]).toEqual([
      2,
      expect.stringContaining("cannot be written (EFBIG)"),
    ]);
    expect(readdirSync(folder).sort()).toEqual(["Book.xlsx", "barwright.mjs", "copy.xlsx"]);
  });
});

describe("a command that is killed while it writes", () => {
  it("leaves the old copy whole, and the next command takes away what it left", async () => {
    const folder = place();
    const out = join(folder, "copy.xlsx");
    const book = join(folder, "Book.xlsx");
    writeFileSync(out, "old");
    writeFileSync(book, BOOK);
    // stops where the new file holds its first bytes: what it would do next is to write the rest
    const hook = join(folder, "stop.cjs");
    writeFileSync(
      hook,
      `const fs = require("node:fs");
       const { writeSync } = fs;
       fs.writeSync = (file, bytes, at) => {
         if (file <= 2) return writeSync(file, bytes, at);
         writeSync(file, bytes, 0, Math.min(1_000, bytes.length));
         writeSync(1, "half\\n");
         for (;;) Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 1_000);
       };
       require("node:module").syncBuiltinESMExports();`,
    );
    const args = ["--require", hook, barwrightBundle(), "check", book, "--out", out];
    const run = spawn(process.execPath, args, { stdio: ["ignore", "pipe", "ignore"] });
    await once(run.stdout, "data");
    run.kill("SIGKILL");
    await once(run, "exit");
    expect(readFileSync(out, "utf8")).toBe("old");
    const left = () => readdirSync(folder).filter((name) => name.endsWith(".part"));
    expect(left()).toHaveLength(1);
    const still = left()[0]!.replace(/-\d+-(?=\w+\.part$)/, `-${process.pid}-`);
    const elsewhere = ".barwright-00000000-1-0123abcd.part";
    for (const name of [still, elsewhere]) writeFileSync(join(folder, name), "of a command that still runs");
    const next = await barwright(["check", book, "--out", out]);
    expect([next.exit, left().sort()]).toEqual([1, [still, elsewhere].sort()]);
    expect(readFileSync(out).subarray(0, 2).toString()).toBe("PK");
  });

  it("or runs beside others that write the same copy: one of them stands there whole", async () => {
    const folder = place();
    const book = join(folder, "Book.xlsx");
    writeFileSync(book, BOOK);
    const runs = Array.from({ length: 3 }, () =>
      spawn(process.execPath, [barwrightBundle(), "check", book, "--out", join(folder, "copy.xlsx")], {
        stdio: "ignore",
      }),
    );
    const exits = await Promise.all(runs.map((run) => once(run, "exit")));
    expect(exits.map(([code]) => code)).toEqual([1, 1, 1]);
    const copy = openWorkbook(new Uint8Array(readFileSync(join(folder, "copy.xlsx"))));
    expect(copy.sheets.map(({ name }) => name)).toEqual(["Bars", "Findings"]);
    expect(readdirSync(folder).sort()).toEqual(["Book.xlsx", "copy.xlsx"]);
  });
});

describe("standard output", () => {
  const folder = place();
  const book = join(folder, "Book.xlsx");
  const rows = Array.from({ length: 3_000 }, (_, at) => [`${at}`, ...FOREIGN_ROWS[at % 6]!.slice(1)]);
  writeFileSync(book, writeNewWorkbook({ sheets: [{ name: "Bars", rows: [FOREIGN_HEADER, ...rows] }] }));
  const shell = (line: string): string =>
    execFileSync("bash", ["-c", line], {
      env: { ...process.env, NODE: process.execPath, BARWRIGHT: barwrightBundle(), BOOK: book, DIR: folder },
      encoding: "utf8",
    });

  it("that is closed early is no error, and the copy is made all the same", () => {
    const said = shell(
      'exec 2>&1; "$NODE" "$BARWRIGHT" check "$BOOK" --out "$DIR/copy.xlsx" | head -1; echo "$PIPESTATUS"',
    );
    expect(said.trim().split("\n").at(-1)).toBe("0");
    expect(said).not.toContain("Error");
    expect(readdirSync(folder)).toContain("copy.xlsx");
  });

  it("that is full is one line and exit code 2", () => {
    const said = shell('"$NODE" "$BARWRIGHT" check "$BOOK" 2>&1 >/dev/full; echo "$?"').trim().split("\n");
    // what was noted before stands on its own stream
    expect(said.slice(-2)).toEqual(["barwright: the results cannot be written (ENOSPC)", "2"]);
    expect(said.filter((line) => line.startsWith("barwright:"))).toHaveLength(1);
  });

  it("gets no control character of a cell", async () => {
    const path = join(folder, "escape.xlsx");
    const row = [
      "01",
      "H16",
      1,
      1,
      1,
      1000,
      "00",
      1000,
      null,
      null,
      null,
      null,
      "\u001b[2J\u009b2Jpour\u202e",
    ];
    writeFileSync(path, writeNewWorkbook({ sheets: [{ name: "Bars", rows: [FOREIGN_HEADER, row] }] }));
    for (const args of [
      ["tonnage", path],
      ["tonnage", path, "--json"],
      ["check", path],
    ]) {
      const run = await barwright(args);
      expect(run.exit, run.err).toBe(0);
      expect(run.out + run.err).not.toMatch(/[^\P{Cc}\n\t]|\u202e/u);
    }
    const told = JSON.parse((await barwright(["tonnage", path, "--json"])).out) as {
      pours: { pour: string }[];
    };
    expect(told.pours[0]?.pour).toContain("[2J");
  });
});
