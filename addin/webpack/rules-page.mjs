import { readdir, readFile } from "node:fs/promises";
import webpack from "webpack";
import { inAddin } from "./paths.mjs";

const NAME = "RulesPage";
const PAGES = inAddin("../docs/rules/");
const FILE = "rules.html";

/** Adds the pages of all rules as one file beside the page, so that they open from a finding without a network. */
export class RulesPage {
  apply(compiler) {
    const { RawSource } = webpack.sources;
    compiler.hooks.thisCompilation.tap(NAME, (compilation) => {
      const stage = webpack.Compilation.PROCESS_ASSETS_STAGE_ADDITIONAL;
      compilation.hooks.processAssets.tapPromise({ name: NAME, stage }, async () => {
        const names = (await readdir(PAGES)).filter((name) => name.endsWith(".md") && name !== "README.md");
        const texts = await Promise.all(names.map((name) => readFile(PAGES + name, "utf8")));
        compilation.emitAsset(FILE, new RawSource(rulesPage(texts)));
        compilation.emitAsset("rules.css", new RawSource(await readFile(inAddin("pane/rules.css"))));
        compilation.contextDependencies.add(PAGES);
      });
    });
  }
}

const HEADINGS = { "## Speaks": "Told of rows like these", "## Silent": "Not told of rows like these" };

/** One HTML page of the Markdown pages that `npm run generate` writes, each under its rule's code. */
export function rulesPage(texts) {
  const rules = texts
    .map((text) => ({ code: /^([A-Z]+\d+), /m.exec(text)?.[1] ?? "", html: htmlOf(text) }))
    .sort((one, other) => one.code.localeCompare(other.code, "en"));
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'self'; img-src data:">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Barwright: what is asked of a schedule</title>
<link rel="stylesheet" href="rules.css">
<link rel="icon" href="data:,">
</head>
<body>
<main>
<p class="all"><a href="${FILE}">All rules</a></p>
${rules.map(({ code, html }) => `<article id="${code}">\n${html}\n</article>`).join("\n")}
</main>
</body>
</html>
`;
}

/** Headings, lists, tables, quotes and paragraphs: no more stands on a rule's page. */
function htmlOf(text) {
  const blocks = text.trim().split(/\n{2,}/);
  return blocks.map(blockOf).join("\n");
}

function blockOf(block) {
  const lines = block.split("\n");
  const [first] = lines;
  if (first.startsWith("# ")) return `<h1>${inline(first.slice(2).replaceAll("-", " "))}</h1>`;
  if (first.startsWith("## ")) return `<h2>${HEADINGS[first] ?? inline(first.slice(3))}</h2>`;
  if (first.startsWith("- "))
    return `<ul>${lines.map((line) => `<li>${inline(line.slice(2))}</li>`).join("")}</ul>`;
  if (first.startsWith("> "))
    return `<blockquote>${inline(lines.map((line) => line.slice(2)).join(" "))}</blockquote>`;
  if (first.startsWith("|")) return tableOf(lines);
  return `<p>${inline(lines.join(" "))}</p>`;
}

function tableOf([head, , ...rows]) {
  const row = (line, tag) =>
    `<tr>${line
      .replace(/^\|\s?|\s?\|$/g, "")
      .split(" | ")
      .map((cell) => `<${tag}>${inline(cell.trim())}</${tag}>`)
      .join("")}</tr>`;
  return `<div class="sheet" tabindex="0" role="group" aria-label="Example rows"><table><thead>${row(head, "th")}</thead><tbody>${rows.map((line) => row(line, "td")).join("")}</tbody></table></div>`;
}

const inline = (text) =>
  text
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replace(/`([^`]*)`/g, "<code>$1</code>")
    .replace(
      /\{(\w+)\}/g,
      (_, name) => `<var>${name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)}</var>`,
    );
