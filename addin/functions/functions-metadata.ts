import { fileURLToPath } from "node:url";
import { generateCustomFunctionsMetadata } from "custom-functions-metadata";

export interface FunctionParameter {
  readonly name: string;
  readonly description: string;
  readonly type: string;
  readonly dimensionality?: "matrix";
  readonly optional?: true;
}

export interface FunctionMetadata {
  readonly id: string;
  readonly name: string;
  readonly description: string;
  readonly helpUrl: string;
  readonly parameters: readonly FunctionParameter[];
  readonly result: { readonly dimensionality?: "matrix" };
}

/** What functions.json holds. */
export interface FunctionsMetadata {
  /** an error cell reaches the function, and so its own row only */
  readonly allowErrorForDataTypeAny: true;
  readonly functions: readonly FunctionMetadata[];
}

/** Place of a function's help below the add-in's address. */
const HELP_PAGE = "taskpane/functions.html";

/**
 * functions.json, made of the JSDoc of `functions.ts`; build time only.
 *
 * @param base address that the add-in is served from, https, without a slash at its end
 */
export async function functionsMetadata(base: string): Promise<FunctionsMetadata> {
  const input = fileURLToPath(new URL("./functions.ts", import.meta.url));
  const { metadataJson, errors } = await generateCustomFunctionsMetadata(input);
  if (errors.length > 0) throw new Error(`functions.json could not be made: ${errors.join("; ")}`);
  const { functions } = JSON.parse(metadataJson) as { functions: Omit<FunctionMetadata, "helpUrl">[] };
  return {
    allowErrorForDataTypeAny: true,
    functions: functions.map((one) => ({ ...one, helpUrl: `${base}/${HELP_PAGE}#${one.id}` })),
  };
}
