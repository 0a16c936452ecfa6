import type { LanguageWords } from "../language-words";

/** Column headings, Japanese. */
export const JAPANESE: LanguageWords = {
  language: "Japanese",
  cite: { document: "column headings of bar schedules in Japanese", provenance: "common practice" },
  columns: [
    { kind: "member", words: ["部材", "部位", "部材名"] },
    { kind: "mark", words: ["番号", "鉄筋番号", "符号", "記号", "加工番号", "鉄筋記号"] },
    { kind: "size", words: ["径", "鉄筋径", "呼び名"] },
    { kind: "grade", words: ["鋼種", "材質"] },
    { kind: "members", words: ["部材数", "箇所", "箇所数"] },
    { kind: "each", words: ["一箇所当り", "本数 箇所", "員数 箇所"] },
    { kind: "total", words: ["総本数", "総数", "総数量", "本数 計", "員数 計", "数量 計"] },
    { kind: "length", words: ["切断長", "切断長さ", "加工長", "単長", "一本長さ"] },
    { kind: "shape", words: ["形状", "加工形状"] },
    { kind: "mass", words: ["重量", "質量", "総重量", "総質量", "合計重量"] },
    { kind: "totalLength", words: ["総長", "総延長", "総長さ", "延長", "合計長さ"] },
    { kind: "former", words: ["曲げ内法直径", "曲げ直径", "折曲げ内法直径", "曲げ内径"] },
    { kind: "remark", words: ["備考"] },
    { kind: "unitMass", words: ["単位重量", "単位質量", "単重"] },
    { kind: "spacing", words: ["ピッチ", "間隔"] },
  ],
  parts: {
    count: ["本数", "数量", "員数"],
    member: ["部材", "箇所"],
    total: ["総", "合計", "全"],
    length: ["長さ", "切断長"],
    mass: ["質量", "重量"],
    size: ["径", "呼び名", "直径"],
    per: ["当り", "当たり", "毎"],
    one: ["一", "各", "単"],
    bar: ["鉄筋", "本"],
  },
  rows: [
    { use: "total", words: ["計", "合計", "総計", "総重量"] },
    { use: "subtotal", words: ["小計"] },
    { use: "members-said", words: ["箇所", "ヶ所", "か所", "カ所", "ケ所", "個所", "基", "台"] },
    { use: "running-metres", words: ["延m"] },
    { use: "carried", words: ["次頁へ", "次頁へ繰越", "前頁より", "前頁より繰越", "繰越"] },
    { use: "subtotal", words: ["頁計"] },
  ],
};
