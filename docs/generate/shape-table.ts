import { cutLength } from "../../core/shapes/cut-length";
import { developedLength } from "../../core/shapes/developed-length";
import { otherReading } from "../../core/shapes/other-reading";
import { type ResolvedShape, resolveShape } from "../../core/shapes/resolve-shape";
import { citationText, resolveStandard, type ShapeDefinition, type Standard } from "../../core/standards";
import { isRefusal, refusalText } from "../../core/units/refusal";
import { exampleDims } from "./example-dims";
import { explainDifference } from "./explain-difference";
import { SHAPE_EXAMPLES, type ShapeExample } from "./shape-examples.data";

const DIAMETERS = [8, 16, 20, 40];
/** mm above which a difference is explained in its own row. */
const TELLING = 5;

/** docs/shapes.md: every BS 8666 code with its printed formula and its geometric length side by side. */
export async function generate(): Promise<Map<string, string>> {
  const older = held(resolveStandard("BS8666:2005"));
  const newer = held(resolveStandard("BS8666:2020"));
  const added = [...newer.shapes.values()].filter((shape) => !older.shapes.has(shape.code));
  const text = [
    "# Shapes of BS 8666: printed formula and geometry",
    "",
    "Two lengths that are never mixed: the printed formula's, which a schedule carries after rounding up to 25 mm,",
    "and the length on the centre line by exact geometry, which the bar takes. Both stand here unrounded, in mm,",
    "for bars with the least legs and sides that the table allows and for bars of 1000 mm sides. The geometry is",
    "checked in the tests against a bar drawn in short chords. `t` and `u` are bend angles; each sloped code states",
    "the equation its angle follows from. Differences above 5 mm are explained in their row.",
    "",
    "The drawings of the table were not seen by the authors: the course of each bar is recalled. Where the drawing",
    "would bear another reading, both are shown. The designer decides.",
    "",
    "## BS 8666:2005",
    ...[...older.shapes.values()].flatMap((shape) => shapeLines(shape, older)),
    "",
    "## Added in BS 8666:2020",
    "",
    "The text of this edition was not seen: formulas and courses of these codes are derived.",
    ...added.flatMap((shape) => shapeLines(shape, newer)),
    "",
  ];
  return new Map([["shapes.md", text.join("\n")]]);
}

function shapeLines(definition: ShapeDefinition, standard: Standard): string[] {
  const { code, words, formula, formulaWhen, minimisedFormula, formulaNote, cite, limits, path } = definition;
  const example = SHAPE_EXAMPLES.find((one) => one.code === code);
  const angles = Object.values(definition.angles ?? {}).map(({ equation }) => `\`${equation}\``);
  return [
    "",
    `### ${code} ${words}`,
    "",
    `- printed formula: ${formula === null ? "none, computed from the drawing" : `\`${formula}\``}`,
    ...(formulaWhen === undefined ? [] : [`- where \`${formulaWhen.limit}\`: \`${formulaWhen.formula}\``]),
    ...(minimisedFormula === undefined ? [] : [`- with least end legs also: \`${minimisedFormula}\``]),
    ...(path === null ? [] : [`- course: \`${path}\``]),
    ...(angles.length === 0 ? [] : [`- angle: ${angles.join(" and ")}`]),
    ...(limits.length === 0 ? [] : [`- limits: ${limits.map((limit) => `\`${limit.text}\``).join(", ")}`]),
    ...(formulaNote === undefined ? [] : [`- note: ${formulaNote}`]),
    `- source: ${citationText(cite)}`,
    ...(example === undefined ? [] : ["", ...tableLines(definition, example, standard)]),
  ];
}

function tableLines(definition: ShapeDefinition, example: ShapeExample, standard: Standard): string[] {
  const other = definition.otherReading;
  const columns = ["d", "dims", "printed", "geometric", "printed less geometric"];
  if (other !== undefined) columns.splice(4, 0, `geometric with ${other.words} (doubtful)`);
  columns.push("why");
  const rows = DIAMETERS.flatMap((diameter) =>
    [example.least, example.thousand].map((texts) => rowLine(definition, texts, diameter, standard)),
  );
  return [`| ${columns.join(" | ")} |`, `|${columns.map(() => " --- ").join("|")}|`, ...rows];
}

function rowLine(
  definition: ShapeDefinition,
  texts: readonly string[],
  diameter: number,
  standard: Standard,
): string {
  const dims = exampleDims(texts, diameter, standard);
  const shape = held(resolveShape({ standard, shape: definition.code, dims, diameter }));
  const printed = held(cutLength(shape));
  const developed = held(developedLength(shape));
  const difference = printed.unrounded - developed.length;
  const letters = definition.dims.flatMap((letter, at) =>
    dims[at] == null ? [] : [`${letter} ${plain(dims[at])}`],
  );
  const cells = [`${diameter}`, letters.join(", "), plain(printed.unrounded), plain(developed.length)];
  if (definition.otherReading !== undefined) cells.push(otherCell(shape));
  cells.push(signed(difference), Math.abs(difference) > TELLING ? explainDifference(shape) : "");
  return `| ${cells.join(" | ")} |`;
}

function otherCell(shape: ResolvedShape): string {
  const other = otherReading(shape);
  return other === null ? "not possible" : plain(other.length);
}

function plain(value: number): string {
  return String(Number(value.toFixed(1)));
}

function signed(value: number): string {
  const text = plain(value);
  return value > 0 && text !== "0" ? `+${text}` : text.replace("-0", value > -0.05 ? "0" : "-0");
}

function held<T>(answer: T): Exclude<T, { definition: { code: string; kind: string } }> {
  if (isRefusal(answer)) throw new Error(refusalText(answer));
  return answer as Exclude<T, { definition: { code: string; kind: string } }>;
}
