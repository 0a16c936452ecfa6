/**
 * `npm start`: the workbench on this machine, built where its sources are newer than what was built last.
 * `--build` builds only. The port is `PORT` or `--port`, else 3000.
 */
import { readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { serveFolder } from "./serve-folder.mjs";

const root = fileURLToPath(new URL("../..", import.meta.url));
const built = join(root, "addin/dist/workbench");
const stamp = join(root, "addin/dist/workbench.stamp");

const given = process.argv.slice(2);
if (!isFresh()) await build();
if (!given.includes("--build")) await serve();

/** Newest change of what the page is made from, by the clock of the disk. */
function newest() {
  const single = ["package-lock.json", "docs/LICENSE.txt", "docs/third-party-notices.txt"];
  let latest = Math.max(...single.map((file) => statSync(join(root, file)).mtimeMs));
  const visit = (folder) => {
    for (const entry of readdirSync(folder, { withFileTypes: true })) {
      if (entry.name === "dist" || entry.name.startsWith(".")) continue;
      const path = join(folder, entry.name);
      if (entry.isDirectory()) visit(path);
      else latest = Math.max(latest, statSync(path).mtimeMs);
    }
  };
  for (const folder of ["core", "addin"]) visit(join(root, folder));
  return String(latest);
}

function isFresh() {
  try {
    return readFileSync(stamp, "utf8") === newest() && statSync(join(built, "index.html")).isFile();
  } catch {
    return false;
  }
}

async function build() {
  const since = newest();
  console.error("building the workbench: once, and after each change of its sources");
  const { default: webpack } = await import("webpack");
  const { default: configs } = await import("../webpack.config.mjs");
  const compiler = webpack(configs({ workbench: true }, { mode: "production" }));
  const stats = await new Promise((resolve, reject) => {
    compiler.run((error, result) => compiler.close(() => (error ? reject(error) : resolve(result))));
  });
  if (stats.hasErrors()) {
    console.error(stats.toString({ all: false, errors: true }));
    process.exit(1);
  }
  writeFileSync(stamp, since);
}

async function serve() {
  const asked = given.includes("--port") ? given[given.indexOf("--port") + 1] : process.env.PORT;
  const port = Number(asked || 3000);
  if (!Number.isInteger(port) || port < 0 || port > 65_535) {
    console.error(
      `PORT is ${asked}, which is no port: give a number up to 65535, as in "PORT=3001 npm start"`,
    );
    process.exit(2);
  }
  try {
    const { url } = await serveFolder(built, port);
    console.log(`the workbench is at ${url} (Ctrl+C ends it)`);
  } catch (error) {
    if (error.code !== "EADDRINUSE" && error.code !== "EACCES") throw error;
    const why = error.code === "EACCES" ? "may not be used" : "is taken by another program";
    console.error(`port ${port} ${why}: type "PORT=${port + 1} npm start", or any other free number`);
    process.exit(2);
  }
}
