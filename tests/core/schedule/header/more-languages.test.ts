import { describe, expect, it } from "vitest";
import { recogniseHeader } from "../../../../core/schedule/header/recognise-header";
import { readSchedule } from "../../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../../core/schedule/sheet";
import { resolveStandard } from "../../../../core/standards/index";
import type { Standard } from "../../../../core/standards/port";

const standard = resolveStandard("BS8666:2005") as Standard;

/** mark, size, count, length, total length, mass, shape, remark: from memory of each language */
const HEADS: readonly (readonly [string, readonly string[]])[] = [
  [
    "Georgian",
    [
      "პოზ.",
      "დიამეტრი, მმ",
      "რაოდენობა, ც",
      "სიგრძე, მმ",
      "საერთო სიგრძე, მ",
      "მასა, კგ",
      "ესკიზი",
      "შენიშვნა",
    ],
  ],
  [
    "Armenian",
    [
      ...["Դիրք", "Տրամագիծ, մմ", "Քանակ, հատ", "Երկարություն, մմ", "Ընդհանուր երկարություն, մ"],
      ...["Զանգված, կգ", "Էսքիզ", "Ծանոթություն"],
    ],
  ],
  [
    "Azerbaijani",
    ["Mövqe", "Diametr, mm", "Sayı", "Uzunluq, mm", "Ümumi uzunluq, m", "Kütləsi, kq", "Eskiz", "Qeyd"],
  ],
  [
    "Kazakh",
    [
      "Белгі",
      "Диаметрі, мм",
      "Саны",
      "Ұзындығы, мм",
      "Жалпы ұзындығы, м",
      "Жалпы массасы, кг",
      "Нобай",
      "Ескерту",
    ],
  ],
  [
    "Uzbek",
    [
      "Belgi",
      "Diametri, mm",
      "Soni",
      "Uzunligi, mm",
      "Umumiy uzunligi, m",
      "Og'irligi, kg",
      "Shakli",
      "Izoh",
    ],
  ],
  ["Mongolian", ["Дугаар", "Голч, мм", "Тоо", "Урт, мм", "Нийт урт, м", "Жин, кг", "Хэлбэр", "Тайлбар"]],
  [
    "Albanian",
    [
      "Pozicioni",
      "Diametri (mm)",
      "Copë",
      "Gjatësia (mm)",
      "Gjatësia totale (m)",
      "Pesha (kg)",
      "Skica",
      "Shënime",
    ],
  ],
  [
    "Macedonian",
    [
      "Позиција",
      "Дијаметар",
      "Парчиња",
      "Должина (mm)",
      "Вкупна должина (m)",
      "Тежина (kg)",
      "Скица",
      "Забелешка",
    ],
  ],
  [
    "Icelandic",
    ["Númer", "Þvermál", "Fjöldi", "Lengd (mm)", "Heildarlengd (m)", "Þyngd (kg)", "Form", "Athugasemd"],
  ],
  ["Bengali", ["চিহ্ন", "ব্যাস", "সংখ্যা", "দৈর্ঘ্য (mm)", "মোট দৈর্ঘ্য (m)", "মোট ওজন (kg)", "আকৃতি", "মন্তব্য"]],
  ["Nepali", ["चिन्ह", "व्यास", "संख्या", "लम्बाइ (mm)", "जम्मा लम्बाइ (m)", "जम्मा तौल (kg)", "आकार", "कैफियत"]],
  [
    "Belarusian",
    [
      "Пазіцыя",
      "Дыяметр, мм",
      "Колькасць",
      "Даўжыня, мм",
      "Агульная даўжыня, м",
      "Маса, кг",
      "Эскіз",
      "Заўвага",
    ],
  ],
];

/** by hand: 20 x 2.5 x 0.888 = 44.4, 10 x 4 x 1.58 = 63.2, 30 x 1.2 x 0.395 = 14.22; 122 kg */
const BARS: readonly (readonly Cell[])[] = [
  ["1", 12, 20, 2500, 50, 44.4],
  ["2", 16, 10, 4000, 40, 63.2],
  ["3", 8, 30, 1200, 36, 14.22],
];

describe("headings of further languages", () => {
  it.each(HEADS)("%s: each role is named by its word", (_language, heads) => {
    const kinds = heads.map((head) => recogniseHeader(head)?.kind);
    expect(kinds).toEqual(["mark", "size", "total", "length", "totalLength", "mass", "shape", "remark"]);
  });

  it.each(HEADS)("%s: a small list is read", (language, heads) => {
    const reading = readSchedule(
      sheetFromRows(language, [[...heads], ...BARS.map((bar) => [...bar])]),
      standard,
    );
    const bars = reading.bars.map(({ size, total, length, mass }) => [size?.diameter, total, length, mass]);
    expect(bars).toEqual([
      [12, 20, 2500, 44.4],
      [16, 10, 4000, 63.2],
      [8, 30, 1200, 14.22],
    ]);
    expect(reading.held).toBeNull();
  });

  // by language: steel, spacing, abbreviations and a unit as offices write them
  it.each([
    ["Gew. (kg)", "mass"],
    ["Stahl", "grade"],
    ["Einzelmasse kg", "pieceMass"],
    ["kg/fm", "unitMass"],
    ["celk. délka", "totalLength"],
    ["třída oceli", "grade"],
    ["acélminőség", "grade"],
    ["Top. boy (m)", "totalLength"],
    ["стомана", "grade"],
    ["aant.", "total"],
    ["længde", "length"],
    ["samlet længde (m)", "totalLength"],
    ["Общий вес, кг", "mass"],
    ["סוג פלדה", "grade"],
    ["رتبة الحديد", "grade"],
    ["نوع میلگرد", "grade"],
    ["mutu baja", "grade"],
    ["鋼號", "grade"],
    ["kogupikkus", "totalLength"],
    ["EA", "total"],
  ])("should take %s for %s", (head, kind) => {
    expect(recogniseHeader(head)?.kind).toBe(kind);
  });
});
