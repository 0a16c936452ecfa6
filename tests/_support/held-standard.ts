import type { Standard } from "../../core/standards/index";
import { resolveStandard } from "../../core/standards/index";
import { isRefusal, type Refusal, refusalText } from "../../core/units/refusal";

/** The standard of an id; a test that asks for one not held fails with its words. */
export function heldStandard(id: string): Standard {
  return answered(resolveStandard(id));
}

/** The answer; fails the test with the refusal's words. */
export function answered<T>(answer: T | Refusal): T {
  if (isRefusal(answer)) throw new Error(refusalText(answer));
  return answer;
}

/** The refusal's kind and words; fails the test where an answer came. */
export function refused(answer: unknown): { kind: string; text: string } {
  if (!isRefusal(answer)) throw new Error(`answered ${JSON.stringify(answer)}`);
  return { kind: answer.kind, text: refusalText(answer) };
}
