import type { Cell } from "../../../core/schedule/sheet";
import { attribute, decodeCellText, decodeXml, findElement, isTrue } from "../xml/xml-text";
import type { ScannedCell } from "./scan-cells";
import { isRichStruck, richText, type SharedStrings } from "./shared-strings";
import type { SheetFormula } from "./sheet-formula";

/** Serial number of 1 January 1970 by date system. */
const FIRST_1970 = 25_569;
const FIRST_1970_OF_1904 = 24_107;

const UNCALCULATED = {
  error: "#N/A",
  message: "the formula has no stored result: open the workbook in a spreadsheet program and save it",
  uncalculated: true,
} as const;

/** Reads what stands inside `c` elements of one text of rows. */
export class ValueReader {
  wasStruck = false;
  wasDate = false;
  private readonly openValue: string;
  private readonly openFormula: string;
  private readonly openInline: string;

  constructor(
    private readonly text: string,
    prefix: string,
    private readonly source: { readonly strings: SharedStrings; readonly from1904: boolean },
  ) {
    this.openValue = `<${prefix}v`;
    this.openFormula = `<${prefix}f`;
    this.openInline = `<${prefix}is`;
  }

  value(cell: ScannedCell): Cell {
    this.wasStruck = false;
    this.wasDate = false;
    if (cell.innerEnd === 0) return null;
    const { text } = this;
    if (cell.type === "inlineStr") return this.inline(cell);
    const open = this.find(this.openValue, cell);
    const hasValue = open >= 0;
    const start = hasValue ? text.indexOf(">", open) + 1 : 0;
    const end = hasValue && text[start - 2] !== "/" ? text.indexOf("<", start) : start;
    if (!hasValue || start === end) {
      const isFormula = this.find(this.openFormula, cell) >= 0;
      // an empty text is a result, where it is written
      return isFormula && (!hasValue || cell.type === "n") ? UNCALCULATED : null;
    }
    switch (cell.type) {
      case "n":
        return this.number(start, end);
      case "s":
        return this.shared(Number(this.plain(start, end)));
      case "b":
        return isTrue(this.plain(start, end).trim());
      case "e":
        return { error: decodeXml(text.slice(start, end)) };
      case "d":
        return this.isoDate(this.plain(start, end));
      default:
        return textOrBlank(decodeCellText(text.slice(start, end)));
    }
  }

  formula(cell: ScannedCell): SheetFormula | null {
    const { text } = this;
    if (cell.innerEnd === 0 || this.find(this.openFormula, cell) < 0) return null;
    const element = findElement(text.slice(cell.innerStart, cell.innerEnd), "f");
    if (element === null) return null;
    const { attributes } = element.tag;
    const group = attribute(attributes, "si");
    const kind = attribute(attributes, "t");
    return {
      text: decodeXml(text.slice(cell.innerStart + element.innerStart, cell.innerStart + element.innerEnd)),
      kind: kind === "array" || kind === "shared" || kind === "dataTable" ? kind : "normal",
      range: attribute(attributes, "ref"),
      group: group === null ? null : Number(group),
    };
  }

  /** Place of a tag inside a cell; the text behind it is not searched. */
  private find(tag: string, { innerStart, innerEnd }: ScannedCell): number {
    if (this.text.startsWith(tag, innerStart)) return innerStart;
    const at = this.text.slice(innerStart, innerEnd).indexOf(tag);
    return at < 0 ? -1 : innerStart + at;
  }

  private plain(start: number, end: number): string {
    return decodeXml(this.text.slice(start, end));
  }

  private number(start: number, end: number): Cell {
    const plain = this.plain(start, end);
    const number = Number(plain);
    return plain.trim() === "" ? null : Number.isFinite(number) ? number : textOrBlank(decodeCellText(plain));
  }

  private shared(index: number): Cell {
    const text = this.source.strings.texts[index];
    if (text === undefined) return { error: "#REF!", message: `the file holds no text number ${index}` };
    this.wasStruck = this.source.strings.struck.has(index);
    return textOrBlank(text);
  }

  private inline(cell: ScannedCell): Cell {
    const open = this.find(this.openInline, cell);
    if (open < 0) return null;
    const inner = this.text.slice(
      this.text.indexOf(">", open) + 1,
      this.text.lastIndexOf("<", cell.innerEnd - 1),
    );
    this.wasStruck = isRichStruck(inner);
    return textOrBlank(richText(inner));
  }

  /** ISO dates become the serial number that every other date is. */
  private isoDate(text: string): Cell {
    const moment = Date.parse(
      /[zZ]$|[+-]\d\d:\d\d$/.test(text) ? text : `${text.includes("T") ? text : `${text}T00:00`}Z`,
    );
    if (Number.isNaN(moment)) return text;
    this.wasDate = true;
    return moment / 86_400_000 + (this.source.from1904 ? FIRST_1970_OF_1904 : FIRST_1970);
  }
}

function textOrBlank(text: string): Cell {
  return text === "" ? null : text;
}
