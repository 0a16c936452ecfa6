import { fileURLToPath } from "node:url";
import HtmlWebpackPlugin from "html-webpack-plugin";
import type { TestProject } from "vitest/node";
import webpack, { type Configuration } from "webpack";
import configs from "../../addin/webpack.config.mjs";
import { serve } from "./serve";

declare module "vitest" {
  interface ProvidedContext {
    /** where the built pages are served, with a trailing slash: each page in a folder of its name */
    readonly pages: string;
  }
}

const PAGES = fileURLToPath(new URL("../../.cache/pages", import.meta.url));
const PORT_PAGE = fileURLToPath(new URL("../browser/port-page.ts", import.meta.url));

/** Builds every page of the add-in once for the browser tests and serves them on a free port. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  for (const config of configs({ workbench: true }, { mode: "development" }))
    await build(withPortPage(config));
  // what is deployed to Excel is tested as it is deployed
  for (const config of configs({ taskpane: true }, { mode: "production" })) await build(config);
  const served = await serve(PAGES);
  project.provide("pages", served.url);
  return () => served.close();
}

/** A second page beside the workbench's: its grid alone, for the tests of the port. */
function withPortPage(config: Configuration): Configuration {
  return {
    ...config,
    entry: { ...(config.entry as Record<string, string>), port: PORT_PAGE },
    plugins: [
      ...(config.plugins ?? []),
      new HtmlWebpackPlugin({
        filename: "port.html",
        chunks: ["port"],
        templateContent: '<!doctype html><title>port</title><div id="grid" style="height: 600px"></div>',
      }),
    ],
  };
}

function build(config: Configuration): Promise<void> {
  const output = { ...config.output, path: `${PAGES}/${config.name}` };
  const compiler = webpack({ ...config, output });
  return new Promise((resolve, reject) => {
    compiler?.run((error, stats) => {
      compiler.close(() => {
        if (error) reject(error);
        else if (stats?.hasErrors()) reject(new Error(stats.toString({ all: false, errors: true })));
        else resolve();
      });
    });
  });
}
