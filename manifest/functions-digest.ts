import { createHash } from "node:crypto";
import type { FunctionsMetadata } from "../addin/functions/functions-metadata";

/** Digest of what Excel learns of the functions, wherever they are served from. */
export function functionsDigest({ functions }: FunctionsMetadata): string {
  const told = functions.map(({ id, description, parameters, result }) => ({
    id,
    description,
    parameters,
    result,
  }));
  return createHash("sha256").update(JSON.stringify(told)).digest("hex").slice(0, 16);
}
