import { copySpills } from "./copy-spills";
import type { Grid } from "./create-grid";
import { watchEntryColumn } from "./entry-column";
import { searchFunctions } from "./function-search";
import { watchGridKeys } from "./grid-keys";
import { growSheets } from "./grow-sheets";
import { numberSigns } from "./local-number";
import { scrollByTouch } from "./touch-scroll";

/** Keys, copying, entering and room as users of sheets know them. To be called once a workbook is open. */
export function watchHands(grid: Grid, container: HTMLElement): void {
  watchGridKeys(grid, container);
  watchEntryColumn(grid);
  copySpills(grid);
  growSheets(grid);
  searchFunctions(grid);
  scrollByTouch(container);
  const signs = numberSigns();
  if (signs.decimal === ",") {
    void import(/* webpackChunkName: "later-comma" */ "./decimal-comma").then(({ takeDecimalComma }) =>
      takeDecimalComma(grid, signs),
    );
  }
}
