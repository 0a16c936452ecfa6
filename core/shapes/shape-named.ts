import type { ShapeDefinition, Standard } from "../standards/port";
import { defineRefusal, isRefusal, type Refusal } from "../units/refusal";
import { standardsWithShape } from "./standards-with-shape";

export type NamedShape =
  | { readonly kind: "code"; readonly definition: ShapeDefinition }
  | { readonly kind: "path"; readonly text: string };

const shapeBlank = defineRefusal(
  "shape-blank",
  "value",
  "the shape is blank: give a code of {standard} such as {example}, or a path such as 500 +90 1200",
);
const shapeNotHeld = defineRefusal(
  "shape-not-held",
  "not-held",
  `shape "{typed}" is no code of {standard}, which holds {held}{elsewhere}; nor is it a path, which has a turn such as +90: {remedy}`,
);

const PATH_LIKE = /(?:^|\s)[-+]\s?\d|(?:^|\s)-?hook(?!90\/|135\/|180\/)/i;
const remembered = new WeakMap<Standard, Map<string | number, NamedShape | Refusal>>();

/**
 * What a typed shape is: a code (a number is one: 0 is "00", and 1 is "01" where no code is 1) or a path (a text with a turn or
 * a hook). "00" is a straight bar in every standard. Refuses a code that the standard does not hold.
 */
export function shapeNamed(standard: Standard, typed: string | number): NamedShape | Refusal {
  let answers = remembered.get(standard);
  if (answers === undefined) {
    answers = new Map();
    remembered.set(standard, answers);
  }
  const known = answers.get(typed);
  if (known !== undefined) return known;
  const answer = read(standard, typed);
  if (isRefusal(answer) || answer.kind === "path") return answer;
  answers.set(typed, answer);
  return answer;
}

function read(standard: Standard, typed: string | number): NamedShape | Refusal {
  const text = String(typed).trim();
  const example = [...standard.shapes.keys()].find((code) => code !== "00") ?? "00";
  if (text === "") return shapeBlank({ standard: standard.id, example });
  const isDigit = /^\d$/.test(text) && !standard.shapes.has(text);
  const code = isDigit ? `0${text}` : text.toUpperCase();
  const definition = standard.shapes.get(code);
  if (definition !== undefined) return { kind: "code", definition };
  if (typeof typed === "string" && PATH_LIKE.test(text)) return { kind: "path", text };
  return notHeld(standard, text, code);
}

const LIST = new Intl.ListFormat("en-GB", { type: "conjunction" });

function notHeld(standard: Standard, typed: string, code: string): Refusal {
  const codes = [...standard.shapes.keys()];
  const near = /^\d\d$/.test(code) ? codes.filter((held) => held[0] === code[0]) : [];
  const pathsOnly = codes.every((held) => held === "00");
  const held = pathsOnly ? "straight bars (00) and paths only" : (near.length > 0 ? near : codes).join(", ");
  const others = standardsWithShape(code, standard);
  const elsewhere =
    others.length === 0 ? "" : `, though ${LIST.format(others)} ${others.length === 1 ? "has" : "have"} it`;
  const remedy = pathsOnly ? "write the bar as a path" : "choose one of these or write the bar as a path";
  return shapeNotHeld({ typed, standard: standard.id, held, elsewhere, remedy });
}
