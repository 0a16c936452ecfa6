import type { Nullable } from "@univerjs/core";
import {
  ArrayValueObject,
  BaseFunction,
  type BaseValueObject,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  type IFunctionNames,
  NullValueObject,
  NumberValueObject,
  StringValueObject,
} from "@univerjs/engine-formula";
import { WORKSHEET_FUNCTIONS } from "../../../core/formulas";
import type {
  Block,
  FunctionEnvironment,
  WorksheetFunction,
} from "../../../core/formulas/worksheet-function";
import { type Cell, isCellError } from "../../../core/schedule/sheet";
import { massPlaces } from "../../../core/units/mass-places";

const NAMESPACE = "BAR.";

/** What the functions share in the thread they run in: what they ask of the workbook, and where messages go. */
export const surroundings = {
  environment: { defaultStandard: "" } as FunctionEnvironment,
  /** Told of each refusal, by the cell it stands in: the grid's errors carry no text of their own. */
  onResult: (_place: ResultPlace, _refusals: readonly CellMessage[], _block: ResultBlock): void => {},
};

export interface ResultPlace {
  /** id of the workbook: another one's sheets can have the same ids */
  readonly book: string;
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** Rows and columns that a result fills, and the decimals of its numbers where they are masses. */
export interface ResultBlock {
  readonly rows: number;
  readonly columns: number;
  readonly places: number | null;
}

export interface CellMessage {
  readonly row: number;
  readonly column: number;
  readonly message: string;
}

/** Every BAR function as the grid's engine takes it; one class serves all, by the name it is made with. */
export const barFunctions = [...WORKSHEET_FUNCTIONS.values()].map(
  (definition): [typeof BaseFunction, IFunctionNames] => [
    functionClass(definition),
    `${NAMESPACE}${definition.name}` as IFunctionNames,
  ],
);

/** What is said of a function of ours; what it does is in the worker alone. */
export type FunctionText = Pick<WorksheetFunction, "name" | "description" | "args">;

/** What the page says of the functions while one is typed. */
export const barFunctionTexts: readonly FunctionText[] = [...WORKSHEET_FUNCTIONS.values()].map(
  ({ name, description, args }) => ({ name: `${NAMESPACE}${name}`, description, args }),
);

function functionClass(definition: WorksheetFunction): typeof BaseFunction {
  return class extends BaseFunction {
    // a wrong count is refused by us, in words
    override minParams = 0;
    override maxParams = MOST_ARGUMENTS;

    override calculate(...args: BaseValueObject[]) {
      const refusal = wrongCount(definition, args);
      const blocks = args.map(blockOf);
      const result: Block =
        refusal === null
          ? definition.call(blocks, surroundings.environment)
          : [[{ error: "#VALUE!", message: refusal }]];
      const place = {
        book: this.unitId ?? "",
        sheet: this.subUnitId ?? "",
        row: this.row,
        column: this.column,
      };
      const unit = definition.massUnit?.(blocks);
      const places = unit === undefined ? null : massPlaces(unit);
      const block = { rows: result.length, columns: result[0]?.length ?? 0, places };
      surroundings.onResult(place, messagesOf(result, place), block);
      return resultOf(result, place);
    }
  };
}

/** Most arguments that any spreadsheet program takes. */
const MOST_ARGUMENTS = 255;

function wrongCount({ name, args }: WorksheetFunction, given: readonly BaseValueObject[]): string | null {
  const missing = args.find((argument, index) => !argument.optional && given[index] === undefined);
  if (missing !== undefined) return `BAR.${name} needs ${missing.name}: ${missing.description}`;
  if (given.length <= args.length) return null;
  const names = args.map((argument) => argument.name).join(", ");
  return `BAR.${name} takes ${args.length} arguments at most, and ${given.length} are given: ${names}`;
}

function blockOf(argument: BaseValueObject): Block | undefined {
  if (argument.isArray()) {
    const array = argument as ArrayValueObject;
    return array.getArrayValue().map((line) => line.map((value) => cellOf(value)));
  }
  return argument.isNull() ? undefined : [[cellOf(argument)]];
}

function cellOf(value: Nullable<BaseValueObject>): Cell {
  if (!value || value.isNull()) return null;
  if (value.isError()) return { error: String((value as ErrorValueObject).getErrorType()) };
  const plain = value.getValue();
  return plain === "" ? null : plain;
}

function messagesOf(block: Block, place: ResultPlace): CellMessage[] {
  const messages: CellMessage[] = [];
  for (const [row, line] of block.entries()) {
    for (const [column, cell] of line.entries()) {
      if (isCellError(cell) && cell.message !== undefined) {
        messages.push({ row: place.row + row, column: place.column + column, message: cell.message });
      }
    }
  }
  return messages;
}

function resultOf(block: Block, place: ResultPlace): BaseValueObject {
  const values = block.map((line) => line.map(valueObject));
  const only = values[0]?.[0];
  if (values.length <= 1 && (values[0]?.length ?? 0) <= 1) return only ?? NullValueObject.create();
  return new ArrayValueObject({
    calculateValueList: values,
    rowCount: values.length,
    columnCount: values[0]?.length ?? 0,
    unitId: place.book,
    sheetId: place.sheet,
    row: place.row,
    column: place.column,
  });
}

function valueObject(cell: Cell): BaseValueObject {
  if (cell === null) return StringValueObject.create("");
  if (isCellError(cell)) return ErrorValueObject.create(errorType(cell.error), cell.message ?? "");
  if (typeof cell === "number") return NumberValueObject.create(cell);
  if (typeof cell === "boolean") return BooleanValueObject.create(cell);
  return StringValueObject.create(cell);
}

function errorType(error: string): ErrorType {
  return Object.values(ErrorType).find((known) => known === error) ?? ErrorType.VALUE;
}
