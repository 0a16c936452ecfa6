import { readFile } from "node:fs/promises";
import HtmlWebpackPlugin from "html-webpack-plugin";
import webpack from "webpack";
import { inAddin } from "./paths.mjs";

const ICONS = [32, 64, 128, 192];
const WORKER = "offline.js";
const MANIFEST = "barwright.webmanifest";

/**
 * What makes the workbench a web app that works offline: its description, its icons, and a worker that
 * keeps the files of this build and no others.
 */
export class WebApp {
  apply(compiler) {
    const { RawSource } = webpack.sources;
    compiler.hooks.thisCompilation.tap("WebApp", (compilation) => {
      HtmlWebpackPlugin.getHooks(compilation).alterAssetTags.tap("WebApp", (page) => {
        const tag = (tagName, attributes) => ({ tagName, attributes, voidTag: true, meta: {} });
        page.assetTags.meta.push(
          tag("link", { rel: "manifest", href: MANIFEST }),
          tag("meta", { name: "offline", content: WORKER }),
        );
        return page;
      });
      const added = webpack.Compilation.PROCESS_ASSETS_STAGE_ADDITIONAL;
      compilation.hooks.processAssets.tapPromise({ name: "WebApp", stage: added }, async () => {
        for (const size of ICONS) {
          const icon = await readFile(inAddin(`../manifest/icons/bar-${size}.png`));
          compilation.emitAsset(`bar-${size}.png`, new RawSource(icon));
        }
        compilation.emitAsset(MANIFEST, new RawSource(JSON.stringify(description(), null, 2)));
      });
      const last = webpack.Compilation.PROCESS_ASSETS_STAGE_REPORT;
      compilation.hooks.processAssets.tap({ name: "WebApp", stage: last }, () => {
        const files = Object.keys(compilation.assets).filter(
          (name) => name !== WORKER && !/\.(br|gz)$/.test(name),
        );
        compilation.emitAsset(WORKER, new RawSource(worker(compilation.fullHash ?? compilation.hash, files)));
      });
    });
  }
}

function description() {
  return {
    name: "Barwright workbench",
    short_name: "Barwright",
    description: "Checks, cutting lengths and bending set-up for reinforcing-bar schedules",
    start_url: ".",
    scope: ".",
    display: "standalone",
    icons: ICONS.map((size) => ({ src: `bar-${size}.png`, sizes: `${size}x${size}`, type: "image/png" })),
  };
}

/** A new build's files are kept beside the old ones until no page of the old build is open. */
function worker(hash, files) {
  return `const NAME = "barwright-${hash}";
const FILES = ${JSON.stringify(["./", ...files])};
addEventListener("install", (event) => event.waitUntil(caches.open(NAME).then((kept) => kept.addAll(FILES))));
addEventListener("activate", (event) =>
  event.waitUntil(
    caches.keys().then((names) =>
      Promise.all(names.filter((name) => name.startsWith("barwright-") && name !== NAME).map((name) => caches.delete(name))),
    ),
  ),
);
addEventListener("fetch", (event) => {
  if (event.request.method !== "GET" || new URL(event.request.url).origin !== location.origin) return;
  event.respondWith(
    caches.open(NAME).then((kept) =>
      kept.match(event.request, { ignoreSearch: true }).then((found) => found ?? fetch(event.request)),
    ),
  );
});
`;
}
