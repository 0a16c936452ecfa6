import { type AuditSettings, auditSettings, DEFAULT_SETTINGS } from "./audit-settings";

type Part = keyof typeof auditSettings.shape;

const PARTS = Object.keys(auditSettings.shape) as Part[];
/** What the user loses where a part cannot be read. */
const LOST: Readonly<Record<Part, string>> = {
  rulesOff: "every rule is run",
  limits: "no limit is changed",
  waivers: "no finding is waived",
  readings: "no column is corrected",
};

/**
 * The settings that a workbook keeps as a text. A part that cannot be read takes its default, and
 * `problem` says which and why; the others hold. Never throws; null or blank are the defaults.
 *
 * @example settingsFromText('{"limits":{"hoist":900}}').limits.hoist // 900
 */
export function settingsFromText(text: string | null): AuditSettings {
  if (text === null || text.trim() === "") return DEFAULT_SETTINGS;
  const found = objectIn(text);
  if (found === null) {
    return { ...DEFAULT_SETTINGS, problem: `they are no JSON object, so ${Object.values(LOST).join(", ")}` };
  }
  const { unread, silences, ...stored } = found;
  // the name of waivers in workbooks of before
  if (silences !== undefined) stored["waivers"] = joined(silences, stored["waivers"]);
  if (typeof unread === "string") {
    return { ...DEFAULT_SETTINGS, problem: `${unread}. Until then ${Object.values(LOST).join(", ")}` };
  }
  const whole = auditSettings.safeParse(stored);
  return whole.success ? whole.data : partByPart(stored);
}

function joined(old: unknown, waivers: unknown): unknown {
  return Array.isArray(old) && Array.isArray(waivers) ? [...old, ...waivers] : (waivers ?? old);
}

/** The text to keep: only what differs from the defaults; null where nothing does. */
export function settingsToText(settings: AuditSettings): string | null {
  const limits = Object.entries(settings.limits).flatMap(([name, limit]) =>
    limit === null ? [] : [[name, withoutBlanks(limit)]],
  );
  const kept = {
    ...(settings.rulesOff.length === 0 ? {} : { rulesOff: settings.rulesOff.map(withoutBlanks) }),
    ...(limits.length === 0 ? {} : { limits: Object.fromEntries(limits) }),
    ...(settings.waivers.length === 0 ? {} : { waivers: settings.waivers.map(withoutBlanks) }),
    ...(settings.readings.length === 0 ? {} : { readings: settings.readings }),
  };
  return Object.keys(kept).length === 0 ? null : JSON.stringify(kept);
}

/** Without what nobody said, which is read as blank again. */
function withoutBlanks(decision: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  return Object.fromEntries(
    Object.entries(decision).filter(([name, value]) => value !== "" || !OPTIONAL.has(name)),
  );
}

const OPTIONAL: ReadonlySet<string> = new Set(["reason", "by", "date"]);

function partByPart(stored: Readonly<Record<string, unknown>>): AuditSettings {
  const wrong: string[] = [];
  const kept: Partial<Record<Part, unknown>> = {};
  for (const part of PARTS) {
    const read = auditSettings.shape[part].safeParse(stored[part]);
    if (read.success) {
      kept[part] = read.data;
      continue;
    }
    const issue = read.error.issues[0];
    const place = [part, ...(issue?.path ?? [])].join(".");
    wrong.push(`${place}: ${issue?.message ?? "unreadable"}, so ${LOST[part]}`);
  }
  return { ...DEFAULT_SETTINGS, ...(kept as Partial<AuditSettings>), problem: wrong.join("; ") };
}

function objectIn(text: string): Record<string, unknown> | null {
  try {
    const value: unknown = JSON.parse(text);
    const isObject = typeof value === "object" && value !== null && !Array.isArray(value);
    return isObject ? (value as Record<string, unknown>) : null;
  } catch {
    return null;
  }
}
