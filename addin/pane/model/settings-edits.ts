import type { AuditSettings, Decided, Waiver } from "../../../core/audit/audit-settings";
import type { ColumnCorrection } from "../../../core/schedule/read-options";
import type { FindingView } from "../engine/audit-view";

/** One decision of the user on how the workbook is checked. */
export type SettingsEdit = (settings: AuditSettings) => AuditSettings;

/** Accepts a rule's finding for its row, or for the sheet as a whole, with the reason given. */
export function waive({ code, sheet, waiverKey: key }: FindingView, decided: Decided): SettingsEdit {
  const said: Waiver = { code, sheet, key, ...trimmed(decided) };
  return (settings) => ({ ...settings, waivers: [...others(settings, said), said] });
}

/** Takes a waiver back. */
export function unwaive(gone: Pick<Waiver, "code" | "sheet" | "key">): SettingsEdit {
  return (settings) => ({ ...settings, waivers: others(settings, gone) });
}

export function turnRuleOff(code: string, decided: Decided): SettingsEdit {
  return (settings) => ({
    ...settings,
    rulesOff: [...otherRules(settings, code), { code, ...trimmed(decided) }],
  });
}

export function turnRuleOn(code: string): SettingsEdit {
  return (settings) => ({ ...settings, rulesOff: otherRules(settings, code) });
}

export function changeLimit(
  name: keyof AuditSettings["limits"],
  value: number,
  decided: Decided,
): SettingsEdit {
  return (settings) => ({
    ...settings,
    limits: { ...settings.limits, [name]: { value, ...trimmed(decided) } },
  });
}

/** Takes the limit back to what the Shop sheet or the standard says. */
export function takeLimitBack(name: keyof AuditSettings["limits"]): SettingsEdit {
  return (settings) => ({ ...settings, limits: { ...settings.limits, [name]: null } });
}

function trimmed({ reason, by, date }: Decided): Decided {
  return { reason: reason.trim(), by: by.trim(), date: date.trim() };
}

function otherRules({ rulesOff }: AuditSettings, code: string) {
  return rulesOff.filter((each) => each.code !== code);
}

/** Says what a column of a sheet is, or takes an earlier correction of it back. */
export function correctColumn(
  sheet: string,
  column: string,
  correction: Omit<ColumnCorrection, "column"> | null,
): SettingsEdit {
  return changeReading(sheet, ({ columns = [], ...rest }) => {
    const kept = columns.filter((each) => each.column !== column);
    return { ...rest, columns: correction === null ? kept : [...kept, { column, ...correction }] };
  });
}

/** Has a guess stand, by its cell or its kind, or takes that back. */
export function confirmGuess(sheet: string, guess: string, isConfirmed: boolean): SettingsEdit {
  return changeReading(sheet, ({ confirmed = [], ...rest }) => {
    const kept = confirmed.filter((each) => each !== guess);
    return { ...rest, confirmed: isConfirmed ? [...kept, guess] : kept };
  });
}

/** What is kept of a sheet stays its own under a new name. */
export function sheetRenamed(from: string, to: string): SettingsEdit {
  const moved = <Kept extends { readonly sheet: string }>(kept: Kept): Kept =>
    kept.sheet === from ? { ...kept, sheet: to } : kept;
  return (settings) => ({
    ...settings,
    waivers: settings.waivers.map(moved),
    readings: settings.readings.map(moved),
  });
}

type Reading = AuditSettings["readings"][number];

function changeReading(sheet: string, change: (reading: Reading) => Reading): SettingsEdit {
  return (settings) => {
    const changed = change(settings.readings.find((each) => each.sheet === sheet) ?? { sheet });
    const rest = settings.readings.filter((each) => each.sheet !== sheet);
    const isEmpty = !changed.columns?.length && !changed.confirmed?.length && changed.grade === undefined;
    return { ...settings, readings: isEmpty ? rest : [...rest, changed] };
  };
}

function others(
  { waivers }: AuditSettings,
  { code, sheet, key }: Pick<Waiver, "code" | "sheet" | "key">,
): Waiver[] {
  return waivers.filter((each) => each.code !== code || each.sheet !== sheet || each.key !== key);
}
