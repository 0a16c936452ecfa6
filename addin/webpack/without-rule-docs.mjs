import ts from "typescript";

/**
 * Loader: takes the `docs` out of an audit rule. They are for the pages in docs/rules and for tests; no
 * page of the add-in shows them, and they are a third of the rules' text.
 */
export default function withoutRuleDocs(source) {
  const file = ts.createSourceFile("rule.ts", source, ts.ScriptTarget.ES2022, true);
  const docs = findDocs(file);
  if (docs === undefined) return source;
  const after = source[docs.end] === "," ? docs.end + 1 : docs.end;
  return source.slice(0, docs.pos) + source.slice(after);
}

function findDocs(node) {
  if (ts.isCallExpression(node) && node.expression.getText() === "defineRule") {
    const [definition] = node.arguments;
    if (definition !== undefined && ts.isObjectLiteralExpression(definition)) {
      return definition.properties.find((property) => property.name?.getText() === "docs");
    }
  }
  return ts.forEachChild(node, findDocs);
}
