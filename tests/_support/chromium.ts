import { spawnSync } from "node:child_process";
import { accessSync, constants } from "node:fs";
import { type Browser, chromium } from "playwright-core";

const PLACES = [
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/usr/bin/google-chrome-stable",
  "/snap/bin/chromium",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
];

/** Asks for nothing outside the machine: each of these silences a service of the browser's own. */
const FLAGS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

const INSTALL = "apt-get update && apt-get install -y --no-install-recommends chromium";

/**
 * Where Chromium is: the variable CHROMIUM, the usual places, else Debian's package where root runs.
 * Never skips: without a browser it throws the line to type.
 */
export function findChromium(): string {
  const found = installed();
  if (found !== null) return found;
  if (process.getuid?.() === 0 && isExecutable("/usr/bin/apt-get")) {
    spawnSync("sh", ["-c", INSTALL], {
      stdio: "inherit",
      env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" },
    });
    const after = installed();
    if (after !== null) return after;
  }
  throw new Error(
    `no Chromium found in ${PLACES.join(", ")}: type "sudo sh -c '${INSTALL}'", or set CHROMIUM to its path`,
  );
}

export async function launchChromium(): Promise<Browser> {
  return chromium.launch({ executablePath: findChromium(), headless: true, args: FLAGS });
}

function installed(): string | null {
  const named = process.env["CHROMIUM"];
  if (named !== undefined && named !== "") {
    if (isExecutable(named)) return named;
    throw new Error(`CHROMIUM is ${named}, which cannot be run: set it to a browser's path, or unset it`);
  }
  return PLACES.find(isExecutable) ?? null;
}

function isExecutable(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
