import { type ColumnsSaid, columnsSaid } from "../../core/schedule";
import { isRefusal, refusalText } from "../../core/units/refusal";
import { InputRefused } from "./input-refused";

/** What --read says of columns: `--read "D=total, F=length in cm"`, several times for several sheets. */
export function columnsGiven(texts: readonly string[]): readonly ColumnsSaid[] {
  return texts.map((text) => {
    const said = columnsSaid(text);
    if (isRefusal(said)) throw new InputRefused(`--read: ${refusalText(said)}`);
    return said;
  });
}
