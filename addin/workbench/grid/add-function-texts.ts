import type { Univer } from "@univerjs/core";
import {
  BaseFunction,
  FunctionType,
  IDescriptionService,
  IFunctionService,
} from "@univerjs/preset-sheets-core";
import type { FunctionText } from "./bar-functions";

/** What the grid says of the BAR functions while one is typed; they are known to the page by name alone. */
export function addFunctionTexts(univer: Univer, functions: readonly FunctionText[]): void {
  const injector = univer.__getInjector();
  injector
    .get(IFunctionService)
    .registerExecutors(...functions.map(({ name }) => new BaseFunction(name as never)));
  injector.get(IDescriptionService).registerDescriptions(
    functions.map(({ name, description, args }) => ({
      functionName: name,
      functionType: FunctionType.User,
      description,
      abstract: description,
      functionParameter: args.map((argument) => ({
        name: argument.name,
        detail: argument.description,
        example: "",
        require: argument.optional ? 0 : 1,
        repeat: 0,
      })),
    })),
  );
}
