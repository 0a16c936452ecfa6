import { mkdir, readFile, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { tsImport } from "tsx/esm/api";
import webpack from "webpack";
import { inAddin } from "./base.mjs";

const NAME = "AddinFiles";

/**
 * Adds what Excel reads beside the page itself: functions.json, its help page, the icons; and writes the
 * manifests into the folder above, which is addin/dist.
 */
export class AddinFiles {
  /** @param {{ base: string, deployed: boolean }} options address that the files are served from */
  constructor(options) {
    this.options = options;
  }

  apply(compiler) {
    const { base } = this.options;
    const { RawSource } = webpack.sources;
    compiler.hooks.thisCompilation.tap(NAME, (compilation) => {
      const stage = webpack.Compilation.PROCESS_ASSETS_STAGE_ADDITIONAL;
      compilation.hooks.processAssets.tapPromise({ name: NAME, stage }, async () => {
        const { functionsMetadata } = await load("../functions/functions-metadata.ts");
        const { helpPage } = await load("../excel/help-page.ts");
        const { ICON_FILES, iconFile } = await load("../../manifest/icons.ts");
        const metadata = await functionsMetadata(base);
        const emit = (path, content) => compilation.emitAsset(path, new RawSource(content));
        emit("functions.json", JSON.stringify(metadata, null, 2));
        emit("functions.html", helpPage(metadata.functions));
        emit("help.css", await readFile(inAddin("excel/help.css")));
        for (const name of ICON_FILES) emit(`icons/${name}`, await readFile(iconFile(name)));
        compilation.fileDependencies.add(inAddin("functions/functions.ts"));
      });
    });
    compiler.hooks.afterEmit.tapPromise(NAME, async () => {
      const { manifestFiles } = await load("../../manifest/manifest-files.ts");
      const above = dirname(compiler.outputPath);
      await mkdir(above, { recursive: true });
      for (const [name, text] of await manifestFiles(this.options)) await writeFile(join(above, name), text);
    });
  }
}

const load = (path) => tsImport(path, import.meta.url);
