import { isRefusal, type Refusal, refusalText } from "../../core/units/refusal";
import { InputRefused } from "./input-refused";

/** The answer of a job; where it refuses, the command ends with the reason. */
export function answerOf<Answer>(answer: Answer | Refusal): Answer {
  if (isRefusal(answer)) throw new InputRefused(refusalText(answer));
  return answer;
}
