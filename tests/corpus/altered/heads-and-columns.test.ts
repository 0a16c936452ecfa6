import { alterationCases } from "./alteration-cases";
import { HEADS_AND_COLUMNS } from "./heads-and-columns";

alterationCases("heads and columns written otherwise", HEADS_AND_COLUMNS, {
  "a column without a head": 2,
  "a column of ticks": 1,
});
