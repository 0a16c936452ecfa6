import { toMillimetres } from "../../units/convert-length";
import { exactProduct } from "../../units/exact-product";
import { defineRefusal, isRefusal, type Refusal } from "../../units/refusal";
import type { Cited } from "../citation";
import type { Bar, FormerQuestion } from "../port";
import { fitsCondition } from "./fits-condition";
import { multipleBase } from "./multiple-base";
import { nearestBars } from "./nearest-bars";
import { resolveGrade } from "./resolve-grade";
import { rowCitation } from "./row-citation";
import type { FormerRow, StandardTables } from "./standard-tables";
import { COATING_WORDS, USE_WORDS } from "./words.data";

const diameterUnread = defineRefusal(
  "former-diameter",
  "value",
  `{diameter} mm is no bar diameter: {standard} answers for diameters above 0, such as those of {nearest}`,
);
const useNotHeld = defineRefusal(
  "use-not-held",
  "not-held",
  `use "{typed}" is none of {standard}: it distinguishes {held}`,
);
const coatingUnread = defineRefusal(
  "coating-unread",
  "value",
  `coating "{typed}" is not known: write none, galvanized or epoxy`,
);
const noFormers = defineRefusal(
  "formers-none",
  "not-held",
  `{standard} prints no formers: give the former yourself, or add the document that the yard bends by, as in {standard}+EC2:2004`,
);
const formerNotHeld = defineRefusal(
  "former-not-held",
  "not-held",
  `{standard} holds no former for a bar of {diameter} mm ({described}): give the former yourself, or ask the designer`,
);

/** The first former row, of the first table, that speaks of the bar; mm. */
export function findFormer(
  question: FormerQuestion,
  tables: StandardTables,
  bars: readonly Bar[],
): Cited<number> | Refusal {
  const { diameter } = question;
  if (tables.formers.length === 0) return noFormers({ standard: tables.id });
  if (!(diameter > 0)) {
    return diameterUnread({ diameter, standard: tables.id, nearest: nearestBars(bars, 0) });
  }
  const use = resolveUse(question.use, tables);
  if (isRefusal(use)) return use;
  const coating = COATING_WORDS[question.coating?.trim().toLowerCase() || "none"];
  if (coating === undefined) return coatingUnread({ typed: question.coating ?? "" });
  const grade = resolveGrade(question.grade, use, tables);
  if (isRefusal(grade)) return grade;
  for (const { cite, rows } of tables.formers) {
    const row = rows.find(
      (one) => isCoated(one, coating) && fitsCondition(one, { diameter, use, grade }, bars),
    );
    if (row !== undefined) {
      return { value: formerOf(row, diameter, tables, bars), cite: rowCitation(cite, row) };
    }
  }
  const coated = coating === "none" ? "uncoated" : coating;
  const described = `${coated}, use ${use}${grade === null ? "" : `, grade ${grade}`}`;
  return formerNotHeld({ standard: tables.id, described, diameter });
}

function formerOf(row: FormerRow, diameter: number, tables: StandardTables, bars: readonly Bar[]): number {
  if (row.former !== undefined) return toMillimetres(row.former, tables.unit);
  return exactProduct(row.perDiameter ?? 0, multipleBase(diameter, tables, bars));
}

/** The standard's own name of a use; "stirrup" and "tie" are links. */
export function resolveUse(typed: string, { id, uses }: StandardTables): string | Refusal {
  const wanted = typed.trim().toLowerCase() || "main";
  const use = uses.find((held) => held === wanted) ?? uses.find((held) => held === USE_WORDS[wanted]);
  return use ?? useNotHeld({ typed, standard: id, held: uses.join(", ") });
}

function isCoated({ coatings }: FormerRow, coating: string): boolean {
  return coatings === undefined ? coating === "none" : coatings.includes(coating);
}
