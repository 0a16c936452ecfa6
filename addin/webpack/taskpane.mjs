import HtmlWebpackPlugin from "html-webpack-plugin";
import { AddinFiles } from "./addin-files.mjs";
import { baseConfig, inAddin } from "./base.mjs";

/** Microsoft allows the library from its own address only. */
const OFFICE_JS = "https://appsforoffice.microsoft.com/lib/1/hosted/office.js";
export const LOCALHOST = "https://localhost:3000";

/**
 * Nothing inline, no code from texts. No rule about frames: Excel on the web shows the page in one, and
 * a page's own policy could not set it in any case.
 */
const POLICY = [
  "default-src 'self'",
  "script-src 'self' https://appsforoffice.microsoft.com",
  "style-src 'self'",
  "img-src 'self' data:",
  "connect-src 'self'",
  "worker-src 'self'",
  "frame-src 'none'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
].join("; ");

/** The page of the add-in inside Excel; `--env base=https://...` is the address it will be served from. */
export function taskpaneConfig({ mode, env }) {
  const base = baseConfig({ name: "taskpane", mode });
  const address = typeof env.base === "string" ? env.base.replace(/\/+$/, "") : LOCALHOST;
  return {
    ...base,
    module: {
      rules: [
        ...base.module.rules,
        {
          test: /core[\\/]audit[\\/]rules[\\/][\w-]+\.ts$/,
          enforce: "pre",
          loader: inAddin("webpack/without-rule-examples.mjs"),
        },
      ],
    },
    entry: { functions: "./functions/associate-functions.ts", taskpane: "./excel/taskpane.ts" },
    plugins: [
      ...base.plugins,
      new HtmlWebpackPlugin({
        filename: "taskpane.html",
        template: inAddin("excel/taskpane.html"),
        chunks: ["functions", "taskpane"],
        chunksSortMode: "manual",
        templateParameters: { policy: POLICY, officeJs: OFFICE_JS },
      }),
      new AddinFiles({ base: address, deployed: address !== LOCALHOST }),
    ],
    optimization: {
      // Pane and functions on one page need one copy of core: one memory, one standard in force.
      runtimeChunk: { name: "runtime" },
      splitChunks: {
        chunks: "all",
        minSize: 1_000,
        cacheGroups: { defaultVendors: { test: /[\\/]node_modules[\\/]/, filename: "libraries-[id].js" } },
      },
      // Page and worker share files, so each module is shaken once for both.
      usedExports: "global",
    },
  };
}
