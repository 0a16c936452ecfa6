/** Words that an office writes into a summary, in the language of the country. */
export interface WordsOfSums {
  readonly title: string;
  readonly total: string;
  readonly waste: string;
  readonly withWaste: string;
  readonly size: string;
  readonly count: string;
  readonly length: string;
  readonly mass: string;
  readonly member: string;
  readonly note: string;
}

// from memory
const WORDS: Readonly<Record<string, string>> = {
  en: "Summary of reinforcement|TOTAL|Waste 3 %|Grand total incl. waste|Bar size|No. of bars|Total length|Weight|Member|Weights are theoretical.",
  de: "Stahlzusammenstellung|Summe|Verschnitt 3 %|Gesamt inkl. Verschnitt|Ø mm|Stück|Gesamtlänge|Gewicht|Bauteil|Gewichte theoretisch.",
  fr: "Récapitulatif des aciers|Total|Chutes 3 %|Total général avec chutes|Diamètre|Nombre de barres|Longueur totale|Poids|Élément|Poids théoriques.",
  es: "Resumen de acero|Total|Desperdicio 3 %|Total general con desperdicio|Diámetro|N° de barras|Longitud total|Peso|Elemento|Pesos teóricos.",
  pt: "Resumo do aço|Total|Perdas 3 %|Total geral com perdas|Bitola|Quantidade|Comprimento total|Peso|Elemento|Pesos teóricos.",
  it: "Riepilogo armature|Totale|Sfrido 3 %|Totale generale con sfrido|Diametro|N. barre|Lunghezza totale|Peso|Elemento|Pesi teorici.",
  nl: "Samenvatting wapening|Totaal|Snijverlies 3 %|Totaal incl. snijverlies|Diameter|Aantal|Totale lengte|Gewicht|Onderdeel|Gewichten theoretisch.",
  pl: "Zestawienie zbiorcze|Razem|Odpady 3 %|Ogółem z odpadami|Średnica|Liczba|Długość całkowita|Masa|Element|Masy teoretyczne.",
  cs: "Rekapitulace výztuže|Celkem|Prořez 3 %|Celkem s prořezem|Profil|Počet kusů|Délka celkem|Hmotnost|Prvek|Hmotnosti teoretické.",
  hu: "Vaskivonat összesítő|Összesen|Hulladék 3 %|Mindösszesen hulladékkal|Átmérő|Darab|Összes hossz|Tömeg|Elem|Elméleti tömegek.",
  ro: "Extras centralizator|Total|Pierderi 3 %|Total general cu pierderi|Diametru|Bucăți|Lungime totală|Masa|Element|Mase teoretice.",
  hr: "Rekapitulacija armature|Ukupno|Otpad 3 %|Sveukupno s otpadom|Profil|Komada|Ukupna dužina|Masa|Element|Teorijske mase.",
  tr: "Donatı özeti|TOPLAM|Fire 3 %|Fire dahil genel toplam|Çap|Adet|Toplam boy|Ağırlık|Eleman|Ağırlıklar teoriktir.",
  ru: "Ведомость расхода стали|Итого|Отходы 3 %|Всего с отходами|Диаметр|Кол-во|Общая длина|Масса|Элемент|Масса теоретическая.",
  el: "Σύνοψη οπλισμού|Σύνολο|Φύρα 3 %|Γενικό σύνολο με φύρα|Διάμετρος|Τεμάχια|Συνολικό μήκος|Βάρος|Στοιχείο|Θεωρητικά βάρη.",
  sv: "Sammanställning armering|Summa|Spill 3 %|Totalt inkl. spill|Diameter|Antal|Total längd|Vikt|Byggdel|Teoretiska vikter.",
  fi: "Teräsyhteenveto|Yhteensä|Hukka 3 %|Kaikki yhteensä|Halkaisija|Kpl|Kokonaispituus|Paino|Rakenneosa|Teoreettiset painot.",
  id: "Rekapitulasi besi|Total|Waste 3 %|Total termasuk waste|Diameter|Jumlah|Panjang total|Berat|Elemen|Berat teoretis.",
  vi: "Bảng tổng hợp cốt thép|Tổng cộng|Hao hụt 3 %|Tổng cộng kể cả hao hụt|Đường kính|Số lượng|Tổng chiều dài|Khối lượng|Cấu kiện|Khối lượng lý thuyết.",
  ja: "鉄筋集計表|合計|ロス 3 %|総計|径|本数|総延長|質量|部材|質量は理論値。",
  ko: "철근 집계표|합계|할증 3 %|총계|규격|수량|총길이|중량|부재|이론 중량.",
  zh: "钢筋汇总表|合计|损耗 3 %|总计|直径|根数|总长|重量|构件|重量为理论值。",
  ar: "ملخص التسليح|الإجمالي|هالك 3 %|الإجمالي العام|القطر|العدد|الطول الكلي|الوزن|العنصر|الأوزان نظرية.",
  he: 'סיכום ברזל|סה"כ|פחת 3 %|סה"כ כללי|קוטר|כמות|אורך כולל|משקל|אלמנט|משקל תיאורטי.',
};

const COUNTRIES: Readonly<Record<string, string>> = {
  de: "Germany Austria Switzerland",
  fr: "France Algeria Tunisia Morocco Senegal",
  es: "Spain Mexico Colombia Argentina Peru Chile Ecuador Bolivia Uruguay Panama",
  pt: "Portugal Brazil",
  it: "Italy",
  nl: "Netherlands Belgium",
  pl: "Poland",
  cs: "Czechia Czech Slovakia",
  hu: "Hungary",
  ro: "Romania",
  hr: "Croatia Serbia Slovenia",
  tr: "Turkey Türkiye",
  ru: "Russia Kazakhstan",
  el: "Greece",
  sv: "Sweden",
  fi: "Finland",
  id: "Indonesia",
  vi: "Vietnam",
  ja: "Japan",
  ko: "Korea South_Korea",
  zh: "China",
  ar: "Egypt Saudi Iraq",
  he: "Israel",
};

const ENGLISH = /\b(?:length|mark|weight|qty|shape|bars?|each|size)\b/giu;

/** The words of a country, or English ones where the heads are English or its language is not here. */
export function wordsOfSums(country: string, heads: string): WordsOfSums {
  const name = country.replace("South Korea", "South_Korea").split(" ")[0] as string;
  const own = Object.keys(COUNTRIES).find((language) =>
    (COUNTRIES[language] as string).split(" ").includes(name),
  );
  const isEnglish = (heads.match(ENGLISH) ?? []).length > 1;
  const words = (WORDS[own === undefined || isEnglish ? "en" : own] as string).split("|");
  const [title, total, waste, withWaste, size, count, length, mass, member, note] = words as [
    string,
    ...string[],
  ];
  return { title, total, waste, withWaste, size, count, length, mass, member, note } as WordsOfSums;
}
