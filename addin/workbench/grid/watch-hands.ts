import { watchGoingTo } from "./bring-into-view";
import { copySpills } from "./copy-spills";
import type { Grid } from "./create-grid";
import { watchEntryColumn } from "./entry-column";
import { searchFunctions } from "./function-search";
import { watchGridKeys } from "./grid-keys";
import { growSheets } from "./grow-sheets";
import { numberSigns } from "./local-number";
import { showMasses } from "./show-masses";
import { scrollByTouch } from "./touch-scroll";

/** Keys, copying, entering and room as users of sheets know them. To be called once a workbook is open. */
export function watchHands(grid: Grid, container: HTMLElement, tell: (words: string) => void): void {
  watchGridKeys(grid, container);
  watchGoingTo(grid);
  watchEntryColumn(grid);
  copySpills(grid);
  growSheets(grid);
  searchFunctions(grid);
  scrollByTouch(container);
  const signs = numberSigns();
  showMasses(grid, signs.decimal);
  void import(/* webpackChunkName: "later-paste" */ "./paste-numbers").then(({ readPastedNumbers }) =>
    readPastedNumbers(grid, signs, tell),
  );
  if (signs.decimal === ",") {
    void import(/* webpackChunkName: "later-comma" */ "./decimal-comma").then(({ takeDecimalComma }) =>
      takeDecimalComma(grid, signs),
    );
  }
}
