import { existsSync, mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { DEFAULT_STANDARD_ID } from "../../core/standards";
import { demoFiles } from "../demo/demo-files";
import type { Command } from "./command";
import { InputRefused } from "./input-refused";
import { withResults } from "./with-results";

/** `demo [FOLDER]`: the example workbooks that the README uses; what stands there already is left alone. */
export const demo: Command = {
  name: "demo",
  usage: "demo [FOLDER]",
  summary: "writes the example workbooks that the README uses",
  options: {},
  async run(given, streams) {
    const [folder = ".", more] = given.positionals;
    if (more !== undefined) throw new InputRefused("name one folder, or none for this one");
    const files = demoFiles();
    const standing = [...files.keys()].filter((name) => existsSync(join(folder, name)));
    if (standing.length > 0)
      throw new InputRefused(
        `${standing.map((name) => join(folder, name)).join(", ")} stand${standing.length === 1 ? "s" : ""} there already: name another folder`,
      );
    try {
      for (const [name, bytes] of files) {
        mkdirSync(dirname(join(folder, name)), { recursive: true });
        writeFileSync(join(folder, name), withResults(bytes, DEFAULT_STANDARD_ID), { flag: "wx" });
        streams.result(join(folder, name));
      }
    } catch (error) {
      throw new InputRefused(`${folder} cannot be written to (${(error as NodeJS.ErrnoException).code})`);
    }
    return 0;
  },
};
