import { settingsFromText, settingsToText } from "../../../core/audit/settings-text";
import { hasShopName } from "../../../core/shop/has-shop-name";
import { SETTING_NAMES } from "../../workbook/setting-names";
import type { SheetSummary } from "../../workbook/workbook-port";
import type { PaneHost } from "./pane-host";
import type { PaneState } from "./pane-state";
import { sheetRenamed } from "./settings-edits";
import { sheetListChange } from "./sheet-list";

/** The workbook's sheets as they come, go, move and are renamed, hidden or shown. */
export class FollowedSheets {
  /** every sheet of the workbook, hidden ones among them */
  all: readonly SheetSummary[] = [];

  constructor(private readonly host: PaneHost) {}

  /** Sheets came, went, moved or have other names: the pane follows, and what is known of a sheet stays its own. */
  async changed(): Promise<void> {
    const now = await this.host.patience.wait(this.host.workbook.sheets());
    const { renamed, gone, isSame } = sheetListChange(this.all, now);
    if (isSame) return;
    this.all = now;
    const { sheet } = this.host.state();
    for (const [from, to] of renamed) await this.#followRename(from, to);
    for (const name of [...gone, ...renamed.keys()]) this.host.judge.gone(name);
    this.host.set(this.inSight());
    this.host.judge.basisChanged();
    if (
      sheet === null ||
      !this.host.state().sheets.some(({ name }) => name === (renamed.get(sheet) ?? sheet))
    ) {
      await this.leaveSheet(sheet, gone);
      return;
    }
    const called = renamed.get(sheet);
    if (called === undefined) return;
    const hadView = this.host.state().view !== null;
    this.host.set({ sheet: called, looked: null });
    if (hadView) await this.host.judge.upToDate(called);
  }

  /** Reads hidden sheets as others, or leaves them out again. */
  readHidden(readsHidden: boolean): void {
    this.host.set({ readsHidden });
    this.host.set(this.inSight());
    this.host.judge.basisChanged();
    if (!this.host.state().sheets.some(({ name }) => name === this.host.state().sheet)) {
      void this.host.quietly(() => this.leaveSheet(null, []));
    }
  }

  /** The sheet was deleted or hidden: the pane turns to the one that the user sees. */
  async leaveSheet(sheet: string | null, gone: readonly string[]): Promise<void> {
    const active = await this.host.patience.wait(this.host.workbook.activeSheet());
    const { sheets } = this.host.state();
    const next = sheets.some(({ name }) => name === active) ? active : (sheets[0]?.name ?? null);
    this.host.set({ sheet: null, view: null, bar: null });
    if (next !== null) await this.host.chooseSheet(next);
    if (sheet === null) return;
    this.host.say(
      `Sheet ${sheet} was ${gone.includes(sheet) ? "deleted" : "hidden"}: this is ${next ?? "no sheet"}`,
    );
  }

  async #followRename(from: string, to: string): Promise<void> {
    const fixes = this.host.state().fixes.map((fix) => (fix.sheet === from ? { ...fix, sheet: to } : fix));
    this.host.set({ fixes });
    const kept = await this.host.patience.wait(this.host.workbook.setting(SETTING_NAMES.audit));
    const settings = settingsFromText(kept);
    if (kept === null || settings.problem !== undefined) return;
    const text = settingsToText(sheetRenamed(from, to)(settings));
    if (text !== settingsToText(settings)) await this.host.workbook.saveSetting(SETTING_NAMES.audit, text);
  }

  /** What the pane offers of the workbook's sheets. */
  inSight(): Pick<PaneState, "sheets" | "hidden" | "shopSheet"> {
    const sheets = this.all.filter(({ visible }) => visible || this.host.state().readsHidden);
    const hidden = this.all.filter(({ visible }) => !visible).map(({ name }) => name);
    const shopSheet = this.all.find(({ name }) => hasShopName(name))?.name ?? null;
    return { sheets, hidden, shopSheet };
  }
}
