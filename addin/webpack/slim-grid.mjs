import webpack from "webpack";
import { inAddin } from "./paths.mjs";

/** What the worker that calculates is made of: it takes the grid's functions whole. */
const CALCULATING = "calculating";

/**
 * Leaves out of the page what its cells never ask of the grid: of each worksheet function that the worker
 * calculates all but its name, dictionaries for parting words at the end of a line, the reading of font
 * files, and the tables from which three patterns of letters are put together at each start.
 */
export const slimGrid = {
  experiments: { layers: true },
  alias: {
    "franc-min$": inAddin("webpack/no-hyphens.mjs"),
    "opentype.js$": inAddin("webpack/no-hyphens.mjs"),
  },
  rules: [
    { test: /[\\/]grid[\\/]engine\.worker\.ts$/, layer: CALCULATING },
    { test: /[\\/]cjk-regex[\\/]lib[\\/]index\.js$/, loader: inAddin("webpack/letters-made.mjs") },
    {
      test: /[\\/]@univerjs[\\/]engine-formula[\\/]lib[\\/]es[\\/]index\.js$/,
      issuerLayer: { not: [CALCULATING] },
      loader: inAddin("webpack/function-names.mjs"),
    },
  ],
  plugins: [
    // brought once the first sheet stands
    new webpack.NormalModuleReplacementPlugin(/^@univerjs\/sheets-formula\/locale\//, (asked) => {
      if (/[\\/]@univerjs[\\/]preset-sheets-core[\\/]/.test(asked.context))
        asked.request = inAddin("webpack/no-words.mjs");
    }),
    new webpack.NormalModuleReplacementPlugin(/^\.\/[a-z-]+\d*-[\w-]{8}\.js$/, (asked) => {
      if (/[\\/]@univerjs[\\/]engine-render[\\/]/.test(asked.context))
        asked.request = inAddin("webpack/no-hyphens.mjs");
    }),
  ],
};
