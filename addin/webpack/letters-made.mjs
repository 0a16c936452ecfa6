import { pathToFileURL } from "node:url";

/** Loader: the patterns that the module would put together at each start, put together now. */
export default async function lettersMade() {
  const library = await import(pathToFileURL(this.resourcePath).href);
  const lines = Object.entries(library)
    .filter(([, make]) => typeof make === "function")
    .map(([name, make]) => {
      const source = JSON.stringify(make().toRegExp().source);
      return `export const ${name} = () => ({ toRegExp: () => new RegExp(${source}) });`;
    });
  return lines.join("\n");
}
