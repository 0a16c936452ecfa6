import { createReadStream, statSync } from "node:fs";
import { createServer } from "node:http";
import { extname, join, normalize, sep } from "node:path";

const TYPES = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json",
  ".map": "application/json",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".xml": "text/xml",
  ".txt": "text/plain; charset=utf-8",
  ".wasm": "application/wasm",
  ".webmanifest": "application/manifest+json",
};

const PACKINGS = ["br", "gz"];

/** The packed copy beside a file that the browser can unpack; null where there is none. */
function packedCopy(file, accepted) {
  for (const ending of PACKINGS) {
    const encoding = ending === "gz" ? "gzip" : ending;
    if (!new RegExp(`\\b${encoding}\\b`).test(accepted)) continue;
    const copy = statSync(`${file}.${ending}`, { throwIfNoEntry: false });
    if (!copy?.isFile()) continue;
    return {
      file: `${file}.${ending}`,
      headers: { "content-length": copy.size, "content-encoding": encoding },
    };
  }
  return null;
}

/** A folder's files over HTTP on a port of this machine alone; 0 is any free port. */
export async function serveFolder(folder, port) {
  const server = createServer((request, response) => {
    const path = decodeURIComponent(new URL(request.url ?? "/", "http://localhost").pathname);
    const file = join(folder, normalize(path.endsWith("/") ? `${path}index.html` : path));
    const found = file.startsWith(folder + sep) ? statSync(file, { throwIfNoEntry: false }) : undefined;
    if (!found?.isFile()) {
      response.writeHead(404).end();
      return;
    }
    const packed = packedCopy(file, String(request.headers["accept-encoding"] ?? ""));
    const mark = `"${found.size}-${Math.round(found.mtimeMs)}"`;
    const kind = { "content-type": TYPES[extname(file)] ?? "application/octet-stream" };
    const headers = { ...kind, etag: mark, "cache-control": "no-cache", vary: "accept-encoding" };
    if (request.headers["if-none-match"] === mark) response.writeHead(304, headers).end();
    else {
      const sent = packed === null ? { "content-length": found.size } : packed.headers;
      response.writeHead(200, { ...headers, ...sent });
      createReadStream(packed?.file ?? file).pipe(response);
    }
  });
  await new Promise((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, "localhost", resolve);
  });
  return {
    url: `http://localhost:${server.address().port}/`,
    close: () =>
      new Promise((resolve) => {
        server.closeAllConnections();
        server.close(() => resolve());
      }),
  };
}
