import { transform } from "esbuild";

/** As many lists as the grid's engine has of its functions; other ones would be another engine. */
const LISTS = 12;

/**
 * Loader: the lists of the engine's functions keep the names, one class without a formula serves all, and
 * what then nothing uses is gone.
 */
export default async function functionNames(source) {
  let lists = 0;
  const named = source.replace(/^const (function[A-Z]\w*) = \[\n([\s\S]*?)^\];/gm, (_, list, functions) => {
    lists += 1;
    return `const ${list} = [\n${functions.replace(/\[\w+, /g, "[BaseFunction, ")}];`;
  });
  if (lists !== LISTS)
    throw new Error(
      `the grid's engine lists its functions ${lists} times, not ${LISTS}: look at what changed`,
    );
  const { code } = await transform(named, { format: "esm", treeShaking: true, target: "es2022" });
  return code;
}
