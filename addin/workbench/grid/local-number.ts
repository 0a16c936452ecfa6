/** By which signs a place writes numbers. */
export interface NumberSigns {
  readonly decimal: string;
  readonly group: string;
}

export function numberSigns(locale?: string): NumberSigns {
  const parts = new Intl.NumberFormat(locale, { useGrouping: true }).formatToParts(1_234_567.5);
  const sign = (kind: string): string => parts.find(({ type }) => type === kind)?.value ?? "";
  return { decimal: sign("decimal"), group: spaces(sign("group")) };
}

/** A number typed by the signs of a place, spelt with a point; null where it is no such number, or spelt so already. */
export function pointNumber(typed: string, { decimal, group }: NumberSigns): string | null {
  const text = spaces(typed.trim());
  const minus = /^[+-]/.exec(text)?.[0] ?? "";
  const [whole = "", fraction, ...more] = text.slice(minus.length).split(decimal);
  if (more.length > 0 || (fraction !== undefined && !/^\d+$/.test(fraction))) return null;
  const [first = "", ...groups] = group === "" ? [whole] : whole.split(group);
  const isGrouped = /^\d{1,3}$/.test(first) && groups.every((digits) => /^\d{3}$/.test(digits));
  if (groups.length === 0 ? !/^\d+$/.test(first) : !isGrouped) return null;
  const point = `${minus}${first}${groups.join("")}${fraction === undefined ? "" : `.${fraction}`}`;
  return point === text ? null : point;
}

/** A number as the place writes it in a cell without a format. */
export function localNumber(value: number, { decimal }: NumberSigns): string {
  return String(Number(value.toPrecision(15))).replace(".", decimal);
}

/** A blank is typed where a narrow one is printed. */
const spaces = (text: string): string => text.replace(/[\u00a0\u202f]/g, " ");
