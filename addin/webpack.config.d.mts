import type { Configuration } from "webpack";

/** Every page's config, or those named by `--env`. */
export default function configs(
  env?: Readonly<Record<string, unknown>>,
  argv?: { readonly mode?: "development" | "production" },
): Configuration[];
