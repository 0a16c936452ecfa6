import type { BarFacts } from "../../bar/bar-facts";
import type { OfKind } from "../../bar/bar-kind";
import type { SheetFacts } from "../../bar/sheet-facts";
import type { ColumnKind } from "../../schedule/bar-row";
import { leastFormer } from "../../shapes/least-former";
import { lacksFormer } from "../../standards/lacks-former";
import { counted } from "../../units/counted";
import { isRefusal } from "../../units/refusal";
import { holdsShapeCodes } from "../holds-shape-codes";
import { defineRule } from "../rule";
import { runsInWords } from "../runs-in-words";
import { sheetRevision } from "../sheet-revision";
import { typedText } from "../typed-text";
import { wordsUnread } from "../words-unread";

const MOST_COLUMNS = 4;

/** What is not checked on a sheet without the column. */
const NEEDED: readonly (readonly [ColumnKind, string])[] = [
  ["shape", "shapes"],
  ["length", "typed lengths"],
  ["mass", "masses"],
  ["former", "the formers that will be used"],
  ["revision", "superseded revisions"],
];

export default defineRule({
  code: "READ104",
  name: "facts-not-held",
  severity: "note",
  docs: {
    summary: "The sheet does not hold facts that some checks need; one note names them all.",
    why: "Silence must not be taken for a pass: what the sheet does not hold was not checked.",
    failing: [{ rows: [{ size: "H16", shape: "00", A: 1000, length: 1000 }] }],
    passing: [
      { rows: [{ size: "H16", shape: "00", A: 1000, length: 1000, mass: 3.16, former: 64, revision: "A" }] },
    ],
  },
  messages: {
    formers:
      "{standard} holds no least former for {rows} of the bars, such as {size}, so their bends and lengths were not checked: write the former that will be used",
    shapeless:
      "{rows} with several dimensions and a blank shape: no bend, end or length of such a bar was checked (rows {at}): write the shape as a path",
    missing: "the sheet does not hold {facts}, so they were not checked",
    columns:
      "{columns} {hold} words in most rows under a heading that is not known, so nothing was read of them: choose what it is in the reading of the sheet, or write another heading",
    ownShapes:
      "{rows} of the shapes, such as {shape}, are no codes of {standard}, so they were not checked (rows {at}): write codes of the standard or paths, or enter the codes on the sheet Standard",
    shapes:
      "{standard} holds no list of shapes, so {rows} of the shapes, such as {shape}, were not checked (rows {at}): write them as paths, or enter the codes on the sheet Standard",
  },
  checkSheet(sheet, context, report) {
    if (sheet.answers.length === 0) return;
    const shapeless = sheet.has("shape") ? sheet.answers.those(isBentWithoutShape) : [];
    if (!holdsShapeCodes(context.standard) && shapeless.length > 0) {
      const at = runsInWords(shapeless.map(({ facts }) => sheet.sheet.top + facts.row.row + 1));
      report({
        messageId: "shapeless",
        outcome: "unsure",
        values: { rows: counted(shapeless.length, "row"), at },
      });
    }
    const isOwnWay = sheet.habits.shapesOwnWay && (sheet.codesMeant(context.standard)?.id ?? null) === null;
    if (!holdsShapeCodes(context.standard) || isOwnWay) {
      const unknown = sheet.answers.those(namesUnknownShape);
      const first = unknown[0]?.facts.typed("shape") ?? null;
      if (first !== null) {
        const at = runsInWords(unknown.map(({ facts }) => sheet.sheet.top + facts.row.row + 1));
        const values = { standard: context.standard.id, rows: unknown.length, shape: typedText(first), at };
        const messageId = holdsShapeCodes(context.standard) ? "ownShapes" : "shapes";
        report({ messageId, outcome: "unsure", values });
      }
    }
    const unread = wordsUnread(sheet);
    if (unread.length > 0) {
      const named = unread.slice(0, MOST_COLUMNS).map((header) => `"${header}"`);
      const columns = `${unread.length === 1 ? "column" : "columns"} ${named.join(", ")}`;
      const more = unread.length > MOST_COLUMNS ? ` and ${unread.length - MOST_COLUMNS} more` : "";
      const hold = unread.length === 1 ? "holds" : "hold";
      report({ messageId: "columns", outcome: "unsure", values: { columns: columns + more, hold } });
    }
    const unmade = sheet.answers.those(lacksLeastFormer);
    const [unbent] = unmade;
    if (unbent !== undefined) {
      const values = { standard: context.standard.id, rows: unmade.length, size: unbent.facts.sizeName };
      report({ messageId: "formers", outcome: "unsure", values });
    }
    const missing = NEEDED.filter(([field]) => !sheet.has(field) && !isHeldElsewhere(field, sheet)).map(
      ([, words]) => words,
    );
    if (!sheet.has("A") && sheet.answers.count(hasSeveralDims) > 0) {
      missing.unshift("the dimensions of the shapes in columns A, B, C");
    }
    if (missing.length === 0) return;
    report({ messageId: "missing", outcome: "unsure", values: { facts: missing.join(", ") } });
  },
});

/** Title block or name of a sheet can say its revision for all rows. */
function isHeldElsewhere(field: ColumnKind, sheet: SheetFacts): boolean {
  if (field !== "revision") return false;
  const { schedule, revision } = sheetRevision(sheet);
  return schedule !== null && revision !== null;
}

function hasSeveralDims({ definition }: BarFacts): boolean {
  return (definition?.dims.length ?? 0) > 1;
}

function lacksLeastFormer(facts: BarFacts): true | null {
  if (!facts.kind.ask(mayLackFormer, facts)) return null;
  const { resolved } = facts;
  return isRefusal(resolved) && lacksFormer(resolved) ? true : null;
}

/** False of a bar whose least former the standard holds. */
function mayLackFormer({ standard, diameter, use, grade }: OfKind): boolean {
  return diameter !== null && isRefusal(leastFormer(standard, diameter, use, grade?.name));
}

function isBentWithoutShape({ row, isPath, definition }: BarFacts): true | null {
  const isShapeless = row.shape === null && definition === null && !isPath;
  return isShapeless && row.dims.filter((dim) => dim !== null).length > 1 ? true : null;
}

function namesUnknownShape(facts: BarFacts): true | null {
  const typed = facts.typed("shape");
  if (typed === null || typedText(typed).trim() === "") return null;
  return facts.definition === null && !facts.isPath ? true : null;
}
