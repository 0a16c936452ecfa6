import { taskpaneConfig } from "./webpack/taskpane.mjs";
import { workbenchConfig } from "./webpack/workbench.mjs";

/** Each page of the add-in, by the name that `--env NAME` picks it with. */
const PAGES = { workbench: workbenchConfig, taskpane: taskpaneConfig };

/** Every page's config, or those named by `--env`. */
export default function configs(env = {}, argv = {}) {
  const mode = argv.mode ?? "production";
  const named = Object.keys(PAGES).filter((page) => env[page]);
  const wanted = named.length > 0 ? named : Object.keys(PAGES);
  return wanted.map((page) => PAGES[page]({ mode, env }));
}
