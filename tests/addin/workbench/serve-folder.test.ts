import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { get, type IncomingMessage } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { brotliCompressSync, brotliDecompressSync } from "node:zlib";
import { afterAll, beforeAll, expect, test } from "vitest";
import { serveFolder } from "../../../addin/workbench/serve-folder.mjs";

const TEXT = "one two three ".repeat(200);
const folder = mkdtempSync(join(tmpdir(), "barwright-served-"));
let served: { url: string; close(): Promise<void> };

beforeAll(async () => {
  writeFileSync(join(folder, "page.js"), TEXT);
  writeFileSync(join(folder, "page.js.br"), brotliCompressSync(TEXT));
  served = await serveFolder(folder, 0);
});
afterAll(async () => {
  await served.close();
  rmSync(folder, { recursive: true });
});

async function ask(encodings: string): Promise<{ headers: IncomingMessage["headers"]; body: Buffer }> {
  const response = await new Promise<IncomingMessage>((done) => {
    get(`${served.url}page.js`, { headers: { "accept-encoding": encodings } }, done);
  });
  const parts: Buffer[] = [];
  for await (const part of response) parts.push(part as Buffer);
  return { headers: response.headers, body: Buffer.concat(parts) };
}

test("should hand out the packed copy to a browser that unpacks it", async () => {
  const { headers, body } = await ask("gzip, deflate, br");
  expect(headers["content-encoding"]).toBe("br");
  expect(headers["content-type"]).toBe("text/javascript; charset=utf-8");
  expect(brotliDecompressSync(body).toString()).toBe(TEXT);
});

test("should hand out the file itself to any other", async () => {
  const { headers, body } = await ask("identity");
  expect(headers["content-encoding"]).toBeUndefined();
  expect(body.toString()).toBe(TEXT);
});
