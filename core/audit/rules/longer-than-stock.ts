import type { BarFacts } from "../../bar/bar-facts";
import { LONGEST_ROLLED } from "../../bar/identities.data";
import { isFromCoil } from "../../bar/is-from-coil";
import { lengthsMeant } from "../../bar/lengths-meant";
import { saying } from "../../bar/said-words";
import type { Cited } from "../../standards/citation";
import { resolveStandard } from "../../standards/index";
import { isRefusal } from "../../units/refusal";
import { isLapped } from "../lap-said";
import { defineRule } from "../rule";

const CLOSE = 1e-6;

/** mm that mills roll to order */
const ROLLED_TO_ORDER = LONGEST_ROLLED.value;

const saysCoupled = saying(/coupl|muffe|\bweld/);

export default defineRule({
  code: "SUPPLY101",
  name: "longer-than-stock",
  severity: "doubtful",
  limits: ["stockLength"],
  docs: {
    summary: "The bar is longer than the stock length and no lap or coupler is named.",
    why: "It must be ordered specially, or split and lapped, and where only the designer can say. Mills roll up to about 18 m to order, so up to there a length that no yard has written down as its own is a note.",
    failing: [
      { rows: [{ size: "H20", shape: "00", A: 14000, length: 14000 }] },
      { rows: [{ size: "H20", shape: "00", A: 20000, length: 20000 }] },
    ],
    passing: [{ rows: [{ size: "H20", shape: "00", A: 12000, length: 12000 }] }],
  },
  messages: {
    stated: 'length {length} is over the {most} that {cell} says ("{typed}"), and no lap is named',
    unit: "length {length} is longer than any bar that is rolled: {meant} may be meant, in another unit or with its point misplaced; correct the cell, or ask the designer",
    unitOrLess:
      "length {length} is longer than any bar that is rolled: {meant} or {less} may be meant, in another unit or with its point misplaced; correct the cell, or ask the designer",
    order:
      "length {length} is over the usual stock length {stock}: to be ordered, or lapped where the designer says",
    cropped:
      "a piece of {length} is longer than the {usable} that the longest stock gives, {stock} less the end crop: order longer stock, or ask the designer for a lap",
    longer:
      "length {length} is over the stock length {stock}, and no lap is named: ask the designer where to lap",
  },
  checkRow(facts, context, report) {
    const { lengthInForce: length, diameter } = facts;
    if (length === null || diameter === null) return;
    const stockLength = stockOf(facts, context.limits.stockLengthOf(diameter));
    const { statedLength: stated, lapsIncluded } = facts.sheet.habits;
    const usable = (stockLength?.value ?? Infinity) - context.limits.endCrop;
    const limit = Math.min(stated?.most ?? Infinity, usable);
    if (length <= limit + CLOSE || facts.lengthJudgement.kind === "slip") return;
    const isOfCoil = isFromCoil(facts);
    if (isLapped(facts) || facts.inWords(saysCoupled)) return;
    const [meant, less] = lapsIncluded ? [] : lengthsMeant(facts);
    if (meant !== undefined) {
      const values = { length: { mm: length }, meant: { mm: meant }, less: { mm: less ?? 0 } };
      report({
        messageId: less === undefined ? "unit" : "unitOrLess",
        outcome: "unsure",
        at: "length",
        values,
      });
      return;
    }
    if (stated !== null && length > stated.most + CLOSE && !(isOfCoil && length > ROLLED_TO_ORDER)) {
      report({
        messageId: "stated",
        outcome: "unsure",
        ...(lapsIncluded ? { severity: "note" as const } : {}),
        at: "length",
        values: {
          ...{ length: { mm: length }, most: { mm: stated.most } },
          ...{ cell: stated.cell, typed: stated.typed },
        },
      });
      return;
    }
    if (stockLength === null || length <= usable + CLOSE || isOfCoil) return;
    const isOwn = stockLength.cite.provenance === "own";
    // bars of that length are to be had, as the sheet itself says
    if (stated !== null && !isOwn) return;
    const mayBeOrdered = !isOwn && (length <= ROLLED_TO_ORDER || lapsIncluded);
    const isCropped = length <= stockLength.value + CLOSE;
    report({
      messageId: isCropped ? "cropped" : mayBeOrdered ? "order" : "longer",
      ...(mayBeOrdered ? { severity: "note" as const } : {}),
      at: "length",
      values: { length: { mm: length }, stock: { mm: stockLength.value }, usable: { mm: usable } },
      cite: stockLength.cite,
    });
  },
});

/** Bars that are all of another document are rolled in that one's lengths; the yard's own stand before. */
function stockOf({ sheet }: BarFacts, inForce: Cited<number> | null): Cited<number> | null {
  const { standardMeant } = sheet.habits;
  if (standardMeant === null || inForce?.cite.provenance === "own") return inForce;
  const meant = resolveStandard(standardMeant.id);
  return isRefusal(meant) ? inForce : meant.supply.stockLength;
}
