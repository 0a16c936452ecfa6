import { fileURLToPath } from "node:url";

const addin = fileURLToPath(new URL("..", import.meta.url));

/** Path within the folder addin. */
export const inAddin = (path) => `${addin}${path}`;
