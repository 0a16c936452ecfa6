import ts from "typescript";

/** What the pane shows of a rule's docs. */
const SHOWN = new Set(["summary", "why"]);

/**
 * Loader: takes the examples out of an audit rule's `docs`. They are for the pages in docs/rules and for
 * tests; no page of the add-in shows them, and they are most of the rules' text.
 */
export default function withoutRuleExamples(source) {
  const file = ts.createSourceFile("rule.ts", source, ts.ScriptTarget.ES2022, true);
  const docs = findDocs(file)?.initializer;
  if (docs === undefined || !ts.isObjectLiteralExpression(docs)) return source;
  const kept = docs.properties.filter((property) => SHOWN.has(property.name?.getText()));
  return `${source.slice(0, docs.pos)}{ ${kept.map((property) => property.getText()).join(", ")} }${source.slice(docs.end)}`;
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
