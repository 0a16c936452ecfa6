import { fileURLToPath } from "node:url";
import MiniCssExtractPlugin from "mini-css-extract-plugin";
import { Notices } from "./notices.mjs";
import { inAddin } from "./paths.mjs";
import { RulesPage } from "./rules-page.mjs";

export { inAddin };

const addin = inAddin("");
const root = fileURLToPath(new URL("../..", import.meta.url));

/**
 * What every page's build has in common: TypeScript by esbuild, styles in files of their own (a strict
 * content security policy allows no inline ones), and a cache on disk.
 */
export function baseConfig({ name, mode }) {
  return {
    name,
    mode,
    context: addin,
    target: ["web", "es2022"],
    devtool: mode === "production" ? "source-map" : false,
    output: { path: inAddin(`dist/${name}`), filename: "[name].js", clean: true },
    resolve: { extensions: [".ts", ".mjs", ".js"] },
    module: {
      rules: [
        {
          test: /\.ts$/,
          loader: "esbuild-loader",
          options: { target: "es2022", tsconfig: inAddin("tsconfig.json") },
        },
        { test: /\.css$/, use: [MiniCssExtractPlugin.loader, "css-loader"] },
      ],
    },
    plugins: [new MiniCssExtractPlugin(), new Notices(), new RulesPage()],
    performance: { hints: false },
    cache: {
      type: "filesystem",
      name: `${name}-${mode}`,
      cacheDirectory: `${root}.cache/webpack`,
      buildDependencies: { config: [inAddin("webpack/"), inAddin("webpack.config.mjs")] },
    },
    stats: "errors-warnings",
  };
}
