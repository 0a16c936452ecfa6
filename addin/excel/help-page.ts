import { encodeXml } from "../../core/units/encode-xml";
import type { FunctionMetadata, FunctionParameter } from "../functions/functions-metadata";

/** The page that Excel's function wizard opens for help: each function under its own name. */
export function helpPage(functions: readonly FunctionMetadata[]): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Barwright: worksheet functions</title>
<link rel="stylesheet" href="help.css">
<link rel="icon" href="data:,">
</head>
<body>
<h1>Worksheet functions</h1>
<p>Every argument takes a cell or a range. Columns of as many rows give as many rows; one row serves all. A refusal is an error in its own cell: rest the pointer on the cell, or select the sign beside it, to read why.</p>
<p>Figures do not take the place of the bending machine's plate and manual, the standard in force, or the designer.</p>
${functions.map(section).join("\n")}
</body>
</html>
`;
}

function section({ id, description, parameters }: FunctionMetadata): string {
  const list = parameters.map((one) => (one.optional ? `[${one.name}]` : one.name)).join(", ");
  return `<h2 id="${encodeXml(id)}">BAR.${encodeXml(id)}</h2>
<p><code>=BAR.${encodeXml(id)}(${encodeXml(list)})</code></p>
<p>${encodeXml(description)}.</p>
<dl>
${parameters.map(definition).join("\n")}
</dl>`;
}

function definition({ name, description, optional }: FunctionParameter): string {
  return `<dt>${encodeXml(name)}${optional ? " (may be left out)" : ""}</dt><dd>${encodeXml(description)}</dd>`;
}
