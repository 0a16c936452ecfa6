/** Built-in number formats that differ from General, by id (ECMA-376-1:2016, 18.8.30, from memory). */
const BUILT_IN: ReadonlyMap<number, string> = new Map([
  [1, "0"],
  [2, "0.00"],
  [3, "#,##0"],
  [4, "#,##0.00"],
  [9, "0%"],
  [10, "0.00%"],
  [11, "0.00E+00"],
  [14, "yyyy-mm-dd"],
  [15, "d-mmm-yy"],
  [16, "d-mmm"],
  [17, "mmm-yy"],
  [18, "h:mm AM/PM"],
  [19, "h:mm:ss AM/PM"],
  [20, "h:mm"],
  [21, "h:mm:ss"],
  [22, "yyyy-mm-dd h:mm"],
  [37, "#,##0_);(#,##0)"],
  [38, "#,##0_);(#,##0)"],
  [39, "#,##0.00_);(#,##0.00)"],
  [40, "#,##0.00_);(#,##0.00)"],
  [45, "mm:ss"],
  [46, "[h]:mm:ss"],
  [47, "mm:ss.0"],
  [49, "@"],
]);

/** Format code of a number format id; General where the id is neither the file's nor a known one. */
export function numberFormatCode(id: number, own: ReadonlyMap<number, string>): string {
  const code = own.get(id) ?? BUILT_IN.get(id);
  if (code !== undefined) return code;
  return (id >= 27 && id <= 36) || (id >= 50 && id <= 58) ? "yyyy-mm-dd" : "General";
}

/** True where a format shows its number as a date or a time of day. */
export function isDateFormat(code: string): boolean {
  const bare = code
    .replace(/"[^"]*"/g, "")
    .replace(/[\\_*]./g, "")
    .replace(/\[(?!h+\]|m+\]|s+\])[^\]]*\]/gi, "");
  if (/general/i.test(bare)) return false;
  return /[ymdhs]/i.test(bare.split(";")[0] ?? "");
}

/**
 * What a number looks like under a format of digits and literal text, such as `"("0")"`, `0.00 "m"` or
 * `00`. Undefined where the format is General, a date, a fraction or a scientific one, or shows the
 * number as it is.
 */
export function shownNumber(value: number, code: string): string | undefined {
  if (/^(general|@)?$/i.test(code) || isDateFormat(code)) return undefined;
  const sections = splitSections(code);
  const negative = value < 0;
  const section = (negative ? sections[1] : value === 0 ? sections[2] : sections[0]) ?? sections[0] ?? "";
  if (/\[[<>=]/.test(code)) return undefined;
  const signed = negative && sections[1] === undefined;
  const shown = fillSection(Math.abs(value), section);
  if (shown === undefined) return undefined;
  const text = (signed ? "-" : "") + shown;
  return text === String(value) ? undefined : text;
}

interface Piece {
  readonly literal: boolean;
  readonly text: string;
}

function fillSection(value: number, section: string): string | undefined {
  const pieces = splitLiterals(section);
  const pattern = pieces
    .filter((piece) => !piece.literal)
    .map((piece) => piece.text)
    .join("");
  if (/[eE/?@]|general/i.test(pattern) || !/[0#]/.test(pattern)) return undefined;
  const percent = pattern.includes("%");
  const digits = pattern.replaceAll("%", "");
  const [whole = "", fraction = ""] = digits.split(".");
  const scale = /,+$/.exec(whole)?.[0].length ?? 0;
  const scaled = (percent ? value * 100 : value) / 1000 ** scale;
  const most = fraction.replace(/[^0#]/g, "").length;
  const least = fraction.replace(/[^0]/g, "").length;
  const padded = (whole.match(/0/g) ?? []).length;
  const number = scaled.toLocaleString("en", {
    useGrouping: whole.slice(0, whole.length - scale).includes(","),
    minimumFractionDigits: least,
    maximumFractionDigits: most,
    minimumIntegerDigits: Math.max(1, padded),
  });
  return place(pieces, padded === 0 && number.startsWith("0.") ? number.slice(1) : number);
}

/** The literal pieces about the number and amid the digits of a whole one; amid those of another they stand after it. */
function place(pieces: readonly Piece[], number: string): string {
  if (/^\d+$/.test(number) && pieces.every(({ literal, text }) => literal || /^[0#]+$/.test(text)))
    return amid(pieces, number);
  let before = "";
  let behind = "";
  let seen = false;
  for (const piece of pieces) {
    if (!piece.literal) {
      if (/[0#]/.test(piece.text)) seen = true;
      if (piece.text.includes("%")) behind += "%";
    } else if (seen) behind += piece.text;
    else before += piece.text;
  }
  return (before + number + behind).trim();
}

/** Each digit in its own place from the right; those beyond the places stand in the first. */
function amid(pieces: readonly Piece[], number: string): string {
  let rest = number;
  let shown = "";
  const first = pieces.findIndex(({ literal }) => !literal);
  for (let at = pieces.length - 1; at >= 0; at -= 1) {
    const { literal, text } = pieces[at] as Piece;
    // no sign stands before digits that are not there
    if (literal) shown = at < first || rest !== "" || shown === "" ? text + shown : shown;
    else {
      const taken = at === first ? rest.length : Math.min(rest.length, text.length);
      shown = rest.slice(rest.length - taken) + shown;
      rest = rest.slice(0, rest.length - taken);
    }
  }
  return shown.trim();
}

function splitLiterals(section: string): Piece[] {
  const pieces: Piece[] = [];
  for (const match of section.matchAll(/"([^"]*)"|\\(.)|_.|\*.|\[[^\]]*\]|([0#?.,%eE/@]+)|([\s\S])/g)) {
    if (match[3] !== undefined) pieces.push({ literal: false, text: match[3] });
    else pieces.push({ literal: true, text: match[1] ?? match[2] ?? match[4] ?? "" });
  }
  return pieces;
}

function splitSections(code: string): string[] {
  const sections: string[] = [];
  let section = "";
  for (const match of code.matchAll(/"[^"]*"?|\\.|_.|\*.|;|[\s\S]/g)) {
    if (match[0] === ";") {
      sections.push(section);
      section = "";
    } else section += match[0];
  }
  return [...sections, section];
}
