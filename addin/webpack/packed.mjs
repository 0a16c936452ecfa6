import { promisify } from "node:util";
import { brotliCompress, constants, gzip } from "node:zlib";
import webpack from "webpack";

const br = promisify(brotliCompress);
const gz = promisify(gzip);
const TEXT = /\.(js|css|html|json|svg|webmanifest|txt)$/;
const LEAST = 1_000;

/** Puts a packed copy beside each text, .br and .gz, for servers that hand out files as they are. */
export class Packed {
  apply(compiler) {
    compiler.hooks.thisCompilation.tap("Packed", (compilation) => {
      const stage = webpack.Compilation.PROCESS_ASSETS_STAGE_OPTIMIZE_TRANSFER;
      compilation.hooks.processAssets.tapPromise({ name: "Packed", stage }, async (assets) => {
        await Promise.all(
          Object.entries(assets).map(async ([name, source]) => {
            const bytes = source.buffer();
            if (!TEXT.test(name) || bytes.length < LEAST) return;
            const params = {
              [constants.BROTLI_PARAM_QUALITY]: 9,
              [constants.BROTLI_PARAM_SIZE_HINT]: bytes.length,
            };
            const copies = { br: await br(bytes, { params }), gz: await gz(bytes, { level: 9 }) };
            for (const [ending, packed] of Object.entries(copies)) {
              compilation.emitAsset(`${name}.${ending}`, new webpack.sources.RawSource(packed), {
                isPacked: true,
              });
            }
          }),
        );
      });
    });
  }
}
