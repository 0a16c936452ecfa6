import { type Area, overlaps } from "./area";
import { Collection, NULL_OBJECT } from "./collection";
import type { SheetHome, StoredConditionalFormat } from "./homes";
import { itemNotFound, notEmulated } from "./host-error";

/** A sheet's conditional formats that meet `areas`; the last one added comes first, as in Excel. */
export function conditionalFormats(sheet: SheetHome, areas: readonly Area[]): Collection<ConditionalFormat> {
  const meets = (format: StoredConditionalFormat) =>
    format.areas.some((one) => areas.some((other) => overlaps(one, other)));
  const found = sheet.conditional.filter(meets).map((format) => new ConditionalFormat(sheet, format));
  return new Collection(found, (format) => [format.Id], {
    Add(type: string) {
      if (type !== "Custom") throw notEmulated(`conditional format of type ${type}`);
      sheet.guardFormats();
      const format = {
        id: `{CF-${sheet.book.nextId()}}`,
        type,
        areas,
        formula: "",
        fill: "",
        font: "",
        stopIfTrue: false,
      };
      sheet.book.journal(() => sheet.conditional.splice(sheet.conditional.indexOf(format), 1));
      sheet.conditional.unshift(format);
      return new ConditionalFormat(sheet, format);
    },
    ClearAll() {
      for (const format of found) format.Delete();
    },
  });
}

export class ConditionalFormat {
  private readonly rule: CustomRule;

  constructor(
    private readonly sheet: SheetHome,
    private readonly stored: StoredConditionalFormat,
  ) {
    this.rule = new CustomRule(sheet, stored);
  }

  get Id(): string {
    return this.stored.id;
  }

  get Type(): string {
    return this.stored.type;
  }

  get Custom(): CustomRule {
    if (this.Type !== "Custom") throw itemNotFound();
    return this.rule;
  }

  get CustomOrNullObject(): CustomRule | typeof NULL_OBJECT {
    return this.Type === "Custom" ? this.rule : NULL_OBJECT;
  }

  get Priority(): number {
    return this.sheet.conditional.indexOf(this.stored);
  }

  set Priority(place: number) {
    const list = this.sheet.conditional;
    const before = this.Priority;
    list.splice(place, 0, ...list.splice(before, 1));
    this.sheet.book.journal(() => list.splice(before, 0, ...list.splice(place, 1)));
  }

  get StopIfTrue(): boolean {
    return this.stored.stopIfTrue;
  }

  set StopIfTrue(stop: boolean) {
    this.stored.stopIfTrue = stop;
  }

  Delete(): void {
    this.sheet.guardFormats();
    const list = this.sheet.conditional;
    const place = list.indexOf(this.stored);
    if (place < 0) return;
    this.sheet.book.journal(() => list.splice(place, 0, this.stored));
    list.splice(place, 1);
  }
}

class CustomRule {
  readonly Rule: { Formula: string };
  readonly Format: { Fill: { Color: string }; Font: { Color: string } };

  constructor(sheet: SheetHome, stored: StoredConditionalFormat) {
    this.Rule = {
      get Formula() {
        return stored.formula;
      },
      set Formula(formula: string) {
        sheet.guardFormats();
        stored.formula = formula;
      },
    };
    const fill = {
      get Color() {
        return stored.fill;
      },
      set Color(color: string) {
        stored.fill = color;
      },
    };
    const font = {
      get Color() {
        return stored.font;
      },
      set Color(color: string) {
        stored.font = color;
      },
    };
    this.Format = { Fill: fill, Font: font };
  }
}
