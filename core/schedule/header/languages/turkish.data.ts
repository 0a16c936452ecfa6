import type { LanguageWords } from "../language-words";

/** Column headings, Turkish. */
export const TURKISH: LanguageWords = {
  language: "Turkish",
  provenance: "common practice",
  columns: [
    { kind: "former", words: ["bukum capi", "mandrel capi", "merdane capi"] },
    { kind: "member", words: ["eleman", "yapi elemani", "aciklama", "imalat"] },
    { kind: "mark", words: ["poz no", "poz", "poz numarasi", "demir no"] },
    { kind: "size", words: ["cap", "demir capi", "donati capi", "capi"] },
    {
      kind: "members",
      words: ["benzer", "benzer adedi", "benzer adet", "benzer eleman", "eleman adedi", "benzer sayisi"],
    },
    { kind: "total", words: ["toplam adet", "toplam"] },
    { kind: "length", words: ["boy", "boyu", "birim boy", "tek boy", "kesim boyu", "uzunluk", "demir boyu"] },
    { kind: "totalLength", words: ["toplam boy", "toplam uzunluk"] },
    { kind: "shape", words: ["sekil", "bukum", "bukum sekli", "demir sekli", "kroki", "acinim"] },
    { kind: "mass", words: ["agirlik", "toplam agirlik"] },
    { kind: "unitMass", words: ["birim agirlik"] },
    { kind: "grade", words: ["celik sinifi", "sinif"] },
    { kind: "spacing", words: ["aralik"] },
    { kind: "pour", words: ["beton dokumu", "dokum no", "dokum etabi", "beton dokum no"] },
    { kind: "pour", words: ["etap"], weak: true },
    { kind: "remark", words: ["aciklamalar", "notlar", "dusunceler"] },
    { kind: "member", words: ["yapi elemani", "poz tanimi", "yeri"] },
  ],
  parts: {
    count: ["adet", "adedi", "sayi", "sayisi", "miktar", "ad"],
    member: ["eleman", "elemani", "elemanda", "elemanlar"],
    total: ["toplam", "genel", "top"],
    length: ["boy", "boyu", "boylar", "uzunluk", "uzunlugu", "uzunluklar"],
    mass: ["agirlik", "agirligi"],
    size: ["cap", "capi"],
    per: ["basina"],
    one: ["birim", "tek", "bir"],
    metre: ["metretul", "mtul"],
    bar: ["demir", "donati", "cubuk", "kesim"],
  },
  rows: [
    { use: "total", words: ["toplami", "toplamı", "yekun"] },
    { use: "members-said", words: ["adet", "takim"] },
    { use: "running-metres", words: ["mtul", "m.tul", "metretul"] },
    { use: "carried", words: ["nakli yekun", "devir", "nakil", "devreden"] },
    { use: "subtotal", words: ["ara toplam", "sayfa toplami"] },
  ],
};
