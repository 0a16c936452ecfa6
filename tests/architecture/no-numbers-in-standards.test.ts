import { readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";
import { describe, expect, it } from "vitest";

const root = fileURLToPath(new URL("../../core/standards", import.meta.url));
const files = readdirSync(root, { recursive: true, encoding: "utf8" })
  .filter((name) => name.endsWith(".ts"))
  .map((name) => join(root, name));

/** Numbers of grammar and of plain angles; every other number is somebody's table. */
const ALLOWED = new Set([0, 1, 2, 45, 90, 135, 180, 360]);

describe("numbers in core/standards", () => {
  it.each(files.filter((file) => !file.endsWith(".data.ts")).map(named))("%s holds none", (_, file) => {
    expect(numbersIn(readFileSync(file, "utf8"))).toEqual([]);
  });

  it.each(files.filter((file) => file.endsWith(".data.ts")).map(named))(
    "%s holds literals only",
    (_, file) => {
      expect(behaviourIn(readFileSync(file, "utf8"))).toEqual([]);
    },
  );

  it("finds a number in a formula", () => {
    expect(numbersIn("export const least = (d: number) => (d > 16 ? 7 : 4) * d;")).toEqual(["16", "7", "4"]);
    expect(numbersIn("const turn = 90; const half = d / 2; const text = `25 mm`;")).toEqual([]);
  });

  it("finds behaviour in a data file", () => {
    expect(behaviourIn("export const A = 2 * 3.5;")).toEqual(["2 * 3.5"]);
    expect(behaviourIn("export const A = [1].map(String);")).toEqual(["[1].map(String)"]);
    expect(behaviourIn("export const A = { f: () => 4 };")).toEqual(["() => 4"]);
    expect(behaviourIn('import { A } from "./a";')).toEqual(['import { A } from "./a";']);
    expect(behaviourIn('import type { A } from "./a"; export const B: A = { t: -5, u: Infinity };')).toEqual(
      [],
    );
  });
});

function named(file: string): [string, string] {
  return [relative(root, file), file];
}

function numbersIn(source: string): string[] {
  return textsOf(source, (node) => ts.isNumericLiteral(node) && !ALLOWED.has(Number(node.text)));
}

function behaviourIn(source: string): string[] {
  return textsOf(source, isBehaviour);
}

function isBehaviour(node: ts.Node): boolean {
  if (ts.isImportDeclaration(node)) return node.importClause?.isTypeOnly !== true;
  if (ts.isPrefixUnaryExpression(node)) {
    return node.operator !== ts.SyntaxKind.MinusToken || !ts.isNumericLiteral(node.operand);
  }
  return (
    ts.isFunctionLike(node) ||
    ts.isCallExpression(node) ||
    ts.isNewExpression(node) ||
    ts.isBinaryExpression(node) ||
    ts.isConditionalExpression(node) ||
    ts.isTemplateExpression(node) ||
    ts.isPropertyAccessExpression(node) ||
    ts.isClassLike(node) ||
    ts.isPostfixUnaryExpression(node)
  );
}

/** Texts of the outermost nodes that match. */
function textsOf(source: string, matches: (node: ts.Node) => boolean): string[] {
  const file = ts.createSourceFile("source.ts", source, ts.ScriptTarget.ES2022, true);
  const texts: string[] = [];
  const visit = (node: ts.Node): void => {
    if (matches(node)) texts.push(node.getText(file));
    else ts.forEachChild(node, visit);
  };
  visit(file);
  return texts;
}
