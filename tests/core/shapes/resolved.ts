import { type ResolvedShape, resolveShape, type ShapeQuestion } from "../../../core/shapes/resolve-shape";
import { resolveStandard } from "../../../core/standards";
import type { Standard } from "../../../core/standards/port";
import { isRefusal, type Refusal, refusalText } from "../../../core/units/refusal";

export function standardNamed(id: string): Standard {
  const standard = resolveStandard(id);
  if (isRefusal(standard)) throw new Error(refusalText(standard));
  return standard;
}

type Question = Omit<ShapeQuestion, "standard"> & { readonly standard?: string };

/** A bar of BS 8666:2005 unless said, or its refusal. */
export function asked({ standard = "BS8666:2005", ...question }: Question): ResolvedShape | Refusal {
  return resolveShape({ standard: standardNamed(standard), ...question });
}

/** A bar that must resolve. */
export function resolved(question: Question): ResolvedShape {
  const shape = asked(question);
  if (isRefusal(shape)) throw new Error(refusalText(shape));
  return shape;
}
