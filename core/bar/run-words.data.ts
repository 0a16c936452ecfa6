import type { Cited } from "../standards/citation";

/** Words that stand before the run which bars are spread over, lower case: "@ 200 over 4000", "c/20 em 420". */
export const RUN_WORDS: Cited<readonly string[]> = {
  value: [
    ...["over", "across", "along", "in a width of", "in width", "width", "height", "run", "length"],
    ...["em", "en", "auf", "über", "sur", "largeur", "longueur", "hauteur", "su", "larghezza", "altezza"],
    ...["largura", "altura", "ancho", "largo", "breite", "länge", "höhe", "breedte", "lengte", "hoogte"],
    ...["πλάτος", "ύψος", "μήκος", "на", "по", "длина", "ширина", "высота", "на длине", "na", "po"],
    ...[
      "på",
      "över",
      "leveydelle",
      "matkalla",
      "boyunca",
      "genişlik",
      "lnet",
      "dağıtım boyu",
      "pada",
      "sepanjang",
      "lebar",
      "trên",
    ],
    ...[
      "larg",
      "long",
      "lung",
      "lungh",
      "tratto",
      "tramo",
      "recorrido",
      "trecho",
      "range",
      "extent",
      "bredde",
    ],
    ...[
      "bredd",
      "längd",
      "szer",
      "dług",
      "délka",
      "šířka",
      "dĺžka",
      "boy",
      "dài",
      "rộng",
      "ช่วง",
      "ยาว",
      "ความกว้าง",
    ],
    ...["طول", "عرض", "布筋长度", "分布长度", "布置范围", "分布范围", "範囲", "範囲内", "配筋範囲"],
    ...["על", "באורך", "ברוחב", "לאורך", "לרוחב", "לגובה", "בגובה"],
    ...["على", "بعرض", "بطول", "范围", "范围内", "区間", "구간"],
  ],
  cite: { document: "remarks in bar schedules by country", provenance: "common practice" },
};

/** Words that stand before the spacing of bars, lower case: "every 200", "alle 15 cm", "step 150". */
export const SPACING_WORDS: Cited<readonly string[]> = {
  value: [
    ...[
      "at",
      "every",
      "spacing",
      "spaced",
      "spcg",
      "cada",
      "sep",
      "separación",
      "esp",
      "espaç",
      "espaçamento",
    ],
    ...["tous les", "espacement", "ogni", "passo", "a passo", "alle", "abstand", "co", "rozstaw", "po", "à"],
    ...["h\\.o\\.h", "hoh", "om de", "cc", "k/k", "avstand", "kas", "ara", "aralık", "jarak", "bước", "cách"],
    ...[
      "каждые",
      "шаг",
      "крок",
      "с шагом",
      "через",
      "ανά",
      "كل",
      "مسافة",
      "فاصله",
      "间距",
      "間距",
      "間隔",
      "ピッチ",
      "간격",
    ],
    ...["ระยะ", "כל", "a"],
  ],
  cite: { document: "remarks in bar schedules by country", provenance: "common practice" },
};

/** Words that stand behind the spacing of bars, lower case, as patterns: "200 crs", "150 c/c". */
export const SPACING_BEHIND: Cited<readonly string[]> = {
  value: ["crs", "ctrs?", "cts", "centres", "centers", "c\\s*/\\s*[cs]", "o\\.?c\\.?"],
  cite: { document: "remarks in bar schedules in English", provenance: "common practice" },
};
