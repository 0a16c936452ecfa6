import { execFileSync, spawn } from "node:child_process";
import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

/** What a run of the command line left behind. */
export interface CommandRun {
  readonly exit: number | null;
  readonly out: string;
  readonly err: string;
}

const script = fileURLToPath(new URL("../../addin/command-line/build.mjs", import.meta.url));
let bundle: string | null = null;

/** The command line bundled as a user gets it, made once for the process that asks. */
export function barwrightBundle(): string {
  if (bundle === null) {
    bundle = join(mkdtempSync(join(tmpdir(), "barwright-")), "barwright.mjs");
    execFileSync(process.execPath, [script, bundle]);
  }
  return bundle;
}

/** Runs the bundle as a child process. */
export function barwright(args: readonly string[], input = ""): Promise<CommandRun> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [barwrightBundle(), ...args]);
    const out: Buffer[] = [];
    const err: Buffer[] = [];
    child.stdout.on("data", (piece: Buffer) => out.push(piece));
    child.stderr.on("data", (piece: Buffer) => err.push(piece));
    child.on("error", reject);
    child.on("close", (exit) => {
      resolve({ exit, out: Buffer.concat(out).toString(), err: Buffer.concat(err).toString() });
    });
    child.stdin.end(input);
  });
}
