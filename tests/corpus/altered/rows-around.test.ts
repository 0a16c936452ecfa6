import { alterationCases } from "./alteration-cases";
import { ROWS_AROUND } from "./rows-around";

alterationCases("rows above, between and after the bars", ROWS_AROUND, { "member and drawing": 2 });
