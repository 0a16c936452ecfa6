import { formula } from "../../core/shapes/formula";
import { noValues, placeOf } from "../../core/shapes/shape-values";
import type { Standard } from "../../core/standards";
import { isRefusal, refusalText } from "../../core/units/refusal";

/** mm of example dims that are written over r, d, P and P(links); null for an empty text. */
export function exampleDims(
  texts: readonly string[],
  diameter: number,
  standard: Standard,
): (number | null)[] {
  const values = noValues();
  values[placeOf("d")!] = diameter;
  values[placeOf("r")!] = found(standard.formulaRadius(diameter, "main")).value;
  values[placeOf("P")!] = found(standard.endLeg(diameter, "main")).value.outside;
  values[placeOf("P(links)")!] = found(standard.endLeg(diameter, "link")).value.outside;
  return texts.map((text) => (text === "" ? null : formula(text).evaluate(values)));
}

function found<T>(answer: T): Exclude<T, { definition: unknown }> {
  if (isRefusal(answer)) throw new Error(refusalText(answer));
  return answer as Exclude<T, { definition: unknown }>;
}
