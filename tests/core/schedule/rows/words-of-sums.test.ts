import { describe, expect, it } from "vitest";
import { plainWords } from "../../../../core/schedule/cells/row-words";
import { totalKind } from "../../../../core/schedule/rows/sum-rows";

const kind = (label: string) => totalKind([plainWords(label)], true);

/** labels of sums as offices write them, by language from memory */
const SUMS: readonly string[] = [
  ...["Total (kg)", "Page 2 total", "Sheet total kg", "Summe Blatt 2", "Seite 3 Summe", "Total page 2 (kg)"],
  ...["Totale foglio 2", "Suma hoja 2", "Total da folha 3", "Totaal blad 4 kg", "Sivu 2 yhteensä kg"],
  ...["Suma strony 2", "Strana 2 celkem kg", "Oldal összesen", "Sida 2 summa", "Side 3 i alt kg"],
  ...[
    "Ukupno list 2",
    "Общо лист 3",
    "Итого по листу 2, кг",
    "Лист 2 итого",
    "Аркуш 2 разом",
    "Sayfa 2 toplamı",
  ],
  ...["Lapas 2 kopā", "Leht 2 kokku", "Iš viso lape 2", "Σύνολο σελίδας 2", 'סה"כ עמוד 2', "جمع صفحه ۲"],
  ...[
    "إجمالى",
    "اجمالي الصفحة 2",
    "รวมหน้า 2",
    "本页合计",
    "第2页合计",
    "2頁小計",
    "頁計",
    "페이지계",
    "소계",
  ],
  ...[
    "Cộng trang 2",
    "Jumlah halaman 2",
    "योग",
    "कुल योग",
    "სულ",
    "სულ, კგ",
    "ჯამი",
    "Ընդամենը",
    "Cəmi",
    "Барлығы",
  ],
  ...["Jami", "Gjithsej", "Вкупно", "Samtals", "Total paġna 2", "Нийт", "जम्मा"],
  ...["মোট", "Усяго", "एकूण"],
];

const CARRIED: readonly string[] = [
  ...["Carried forward", "Brought forward kg", "Übertrag", "A reporter", "Suma y sigue", "A transportar"],
  ...["A riportare", "Transport", "Do przeniesienia", "K přenosu", "Prijenos", "Перенос", "Nakli yekun"],
  ...[
    "Siirto",
    "Överförs",
    "转下页",
    "次頁へ繰越",
    "이월",
    "Mang sang",
    "ยกไป",
    "منقول",
    "להעברה",
    "Átvitel",
  ],
];

describe("words of sums", () => {
  it.each(SUMS)("should take %s beside numbers for a sum", (label) => {
    expect(["total", "subtotal"]).toContain(kind(label));
  });

  it.each(CARRIED)("should take %s for a sum that is carried", (label) => {
    expect(kind(label)).toBe("carried");
  });

  it.each(["Beam B1 (2 no.)", "Sumatra Road", "Fundament FM-1, 4 шт", "設計", "Totem pole base, 2 of"])(
    "should take %s for no sum",
    (label) => {
      expect(kind(label)).toBeNull();
    },
  );
});
