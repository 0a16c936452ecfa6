import { EsbuildPlugin } from "esbuild-loader";
import HtmlWebpackPlugin from "html-webpack-plugin";
import { baseConfig, inAddin } from "./base.mjs";
import { Packed } from "./packed.mjs";
import { slimGrid } from "./slim-grid.mjs";
import { WebApp } from "./web-app.mjs";

/**
 * The page for people without Excel. The grid sets styles on its elements, so this page alone allows
 * inline styles; scripts come from files only.
 */
const POLICY = [
  "default-src 'self'",
  "script-src 'self'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "connect-src 'self'",
  "worker-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
].join("; ");

export function workbenchConfig({ mode }) {
  const base = baseConfig({ name: "workbench", mode });
  return {
    ...base,
    // the grid is six megabytes of other people's code: minifying it the slow way takes minutes
    devtool: false,
    optimization: { minimizer: [new EsbuildPlugin({ target: "es2022" })] },
    // a script of its own, since a worker does not begin while another script runs
    entry: {
      engine: "./workbench/early-engine.ts",
      workbench: { import: "./workbench/main.ts", dependOn: "engine" },
    },
    experiments: slimGrid.experiments,
    resolve: {
      ...base.resolve,
      alias: { ...slimGrid.alias, "csv-parse/sync$": "csv-parse/browser/esm/sync" },
    },
    module: { rules: [...base.module.rules, ...slimGrid.rules] },
    plugins: [
      ...base.plugins,
      ...slimGrid.plugins,
      new HtmlWebpackPlugin({
        filename: "index.html",
        chunks: ["engine", "workbench"],
        template: inAddin("workbench/index.html"),
        templateParameters: { policy: POLICY },
      }),
      // in development a kept file would hide its change
      ...(mode === "production" ? [new WebApp(), new Packed()] : []),
    ],
    devServer: {
      host: "localhost",
      port: 3000,
      hot: false,
      static: false,
      client: { overlay: false },
    },
  };
}
