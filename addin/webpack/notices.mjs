import { readFile } from "node:fs/promises";
import webpack from "webpack";
import { inAddin } from "./paths.mjs";

/** The licence and the notices of other people's packages, as they go with every bundle. */
export const NOTICE_FILES = ["LICENSE.txt", "third-party-notices.txt"];

export const noticeFile = (name) => inAddin(`../docs/${name}`);

/** Puts them beside a page. */
export class Notices {
  apply(compiler) {
    const stage = webpack.Compilation.PROCESS_ASSETS_STAGE_ADDITIONAL;
    compiler.hooks.thisCompilation.tap("Notices", (compilation) => {
      compilation.hooks.processAssets.tapPromise({ name: "Notices", stage }, async () => {
        for (const name of NOTICE_FILES) {
          compilation.emitAsset(name, new webpack.sources.RawSource(await readFile(noticeFile(name))));
        }
      });
    });
  }
}
