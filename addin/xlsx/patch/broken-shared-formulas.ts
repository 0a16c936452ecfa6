import { translateFormulaToA1, translateFormulaToR1C1 } from "@borgar/fx/xlsx";
import { addressAt } from "../../../core/schedule/cell-address";
import type { ScannedCell } from "../read/scan-cells";
import { encodeXml } from "../xml/encode-xml";
import { attribute, decodeXml, findElement, type XmlElement } from "../xml/xml-text";

/**
 * A shared formula is written in its first cell only. Where that cell is overwritten, the others get
 * the formula written out, each for its own place.
 */
export class BrokenSharedFormulas {
  /** group to the formula in relative notation */
  private readonly groups = new Map<string, string>();

  /** Takes note of a formula that is being replaced. */
  note(text: string, cell: ScannedCell, formula: XmlElement): void {
    const group = attribute(formula.tag.attributes, "si");
    if (attribute(formula.tag.attributes, "t") !== "shared" || group === null) return;
    const written = decodeXml(
      text.slice(cell.innerStart + formula.innerStart, cell.innerStart + formula.innerEnd),
    );
    if (written !== "") {
      this.groups.set(group, translateFormulaToR1C1(`=${written}`, addressAt(cell.row, cell.column)));
    }
  }

  /** Inside of a cell whose formula leant on a replaced one; null where it did not. */
  restored(text: string, cell: ScannedCell): string | null {
    if (this.groups.size === 0 || cell.innerEnd === 0) return null;
    const inner = text.slice(cell.innerStart, cell.innerEnd);
    if (!inner.includes("shared")) return null;
    const formula = findElement(inner, "f");
    if (formula === null || formula.innerStart < formula.innerEnd) return null;
    const relative = this.groups.get(attribute(formula.tag.attributes, "si") ?? "");
    if (relative === undefined) return null;
    const placed = translateFormulaToA1(relative, addressAt(cell.row, cell.column)).replace(/^=/, "");
    const { prefix } = formula.tag;
    return `${inner.slice(0, formula.start)}<${prefix}f>${encodeXml(placed)}</${prefix}f>${inner.slice(formula.end)}`;
  }
}
