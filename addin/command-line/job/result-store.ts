import { createHash, randomBytes } from "node:crypto";
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { homedir, platform, tmpdir } from "node:os";
import { join } from "node:path";
import { deflateRawSync, inflateRawSync } from "node:zlib";

const FOLDER = "barwright";
const VERSION_NAME = /^[0-9a-f]{16}$/;
const SUM_LENGTH = 32;
const FASTEST = 1;

/**
 * Results by what they were made of. A result is found by the digest of the file's own bytes, of the question
 * and of this program, so that nothing but the same input can find it; one that is damaged is none. It is safe
 * to delete at any time.
 */
export class ResultStore {
  constructor(
    readonly folder: string,
    /** of this program */
    readonly version: string,
  ) {}

  /** The name of the result of these parts. */
  key(parts: readonly (string | Uint8Array)[]): string {
    const hash = createHash("sha256").update(this.version);
    for (const part of parts) {
      const bytes = typeof part === "string" ? Buffer.from(part) : part;
      hash.update(`\n${bytes.length}\n`).update(bytes);
    }
    return hash.digest("hex");
  }

  /** Null where there is none, or where what lies there is not what was put there. */
  get(key: string): unknown {
    try {
      const stored = readFileSync(this.#path(key));
      const packed = stored.subarray(SUM_LENGTH);
      const sum = createHash("sha256").update(key).update(packed).digest();
      if (!sum.equals(stored.subarray(0, SUM_LENGTH))) return null;
      return JSON.parse(inflateRawSync(packed).toString());
    } catch {
      return null;
    }
  }

  /** Keeps a result; one that cannot be kept is worked out again when it is asked for. */
  put(key: string, result: unknown): void {
    const packed = deflateRawSync(JSON.stringify(result), { level: FASTEST });
    const sum = createHash("sha256").update(key).update(packed).digest();
    const path = this.#path(key);
    const beside = `${path}.${randomBytes(4).toString("hex")}`;
    try {
      mkdirSync(join(path, ".."), { recursive: true });
      writeFileSync(beside, Buffer.concat([sum, packed]));
      renameSync(beside, path);
    } catch {
      rmSync(beside, { force: true });
    }
  }

  #path(key: string): string {
    return join(this.folder, key.slice(0, 2), key);
  }
}

/** The store of a run: the machine's own cache folder, or one that is gone with the run. */
export function openStore(version: string, isKept: boolean): { readonly store: ResultStore; close(): void } {
  const own = isKept ? keptFolder(version) : null;
  if (own !== null) return { store: new ResultStore(own, version), close: () => undefined };
  const folder = mkdtempSync(join(tmpdir(), "barwright-job-"));
  return {
    store: new ResultStore(folder, version),
    close: () => rmSync(folder, { recursive: true, force: true }),
  };
}

/** Null where nothing can be written there. What other versions left is taken away. */
function keptFolder(version: string): string | null {
  const base = join(cacheFolder(), FOLDER);
  const name = version.slice(0, 16);
  try {
    mkdirSync(join(base, name), { recursive: true });
    for (const other of readdirSync(base))
      if (other !== name && VERSION_NAME.test(other))
        rmSync(join(base, other), { recursive: true, force: true });
    return existsSync(join(base, name)) ? join(base, name) : null;
  } catch {
    return null;
  }
}

/** Where programs of this system keep what can be made again. */
function cacheFolder(): string {
  const { XDG_CACHE_HOME: own, LOCALAPPDATA: local } = process.env;
  if (own !== undefined && own !== "") return own;
  if (platform() === "win32" && local !== undefined) return local;
  return platform() === "darwin" ? join(homedir(), "Library", "Caches") : join(homedir(), ".cache");
}
