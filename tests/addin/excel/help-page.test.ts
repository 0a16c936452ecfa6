import { JSDOM } from "jsdom";
import { expect, test } from "vitest";
import { helpPage } from "../../../addin/excel/help-page";
import { functionsMetadata } from "../../../addin/functions/functions-metadata";

const BASE = "https://bars.example.com";

test("the help page has a place for each address that functions.json gives", async () => {
  const { functions } = await functionsMetadata(BASE);
  const { document } = new JSDOM(helpPage(functions)).window;
  for (const { id, helpUrl, description, parameters } of functions) {
    const heading = document.getElementById(new URL(helpUrl).hash.slice(1));
    expect(heading?.textContent).toBe(`BAR.${id}`);
    expect(document.body.textContent).toContain(description);
    for (const { description: words } of parameters) expect(document.body.textContent).toContain(words);
  }
});

test("the help page shows marks of HTML as they are", () => {
  const parameters = [{ name: "a", description: "under <1 & over", type: "any" }];
  const page = helpPage([
    { id: "X.Y", name: "X.Y", description: "a < b", helpUrl: "", parameters, result: {} },
  ]);
  const { document } = new JSDOM(page).window;
  expect(document.body.textContent).toContain("under <1 & over");
  expect(document.querySelector("h2")?.id).toBe("X.Y");
});
