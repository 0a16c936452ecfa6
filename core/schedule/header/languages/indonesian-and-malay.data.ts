import type { LanguageWords } from "../language-words";

/** Column headings, Indonesian and Malay. */
export const INDONESIAN_AND_MALAY: LanguageWords = {
  language: "Indonesian and Malay",
  provenance: "common practice",
  columns: [
    { kind: "grade", words: ["mutu", "mutu baja", "gred"] },
    { kind: "mark", words: ["tanda", "no tulangan", "kode"] },
    { kind: "member", words: ["uraian", "lokasi", "elemen"] },
    { kind: "size", words: ["diameter", "ukuran", "diameter tulangan", "tulangan"] },
    { kind: "total", words: ["jumlah batang"] },
    { kind: "length", words: ["panjang", "panjang potong"] },
    { kind: "totalLength", words: ["panjang total", "total panjang"] },
    { kind: "shape", words: ["bentuk"] },
    { kind: "mass", words: ["berat", "berat total"] },
    { kind: "unitMass", words: ["berat per m", "berat satuan", "berat jenis"] },
    { kind: "pour", words: ["pengecoran", "tahap cor", "tahap pengecoran", "zona cor"] },
    { kind: "pour", words: ["tahap"], weak: true },
    { kind: "remark", words: ["keterangan", "catatan"] },
    { kind: "mark", words: ["kode tulangan", "no besi", "tipe"] },
    { kind: "shape", words: ["bentuk besi", "gambar", "sketsa"] },
    { kind: "spacing", words: ["jarak"] },
    { kind: "remark", words: ["ket"] },
  ],
  parts: {
    count: ["jumlah", "jml", "bilangan", "bil", "buah", "bh"],
    member: ["elemen", "anggota"],
    total: ["keseluruhan"],
    length: ["panjang", "pjg"],
    mass: ["berat", "jisim"],
    size: ["saiz"],
    per: ["per", "dalam"],
    one: ["tiap", "setiap", "satu"],
    metre: ["meter"],
    bar: ["batang", "btg", "besi", "tulangan", "potong"],
  },
  rows: [
    { use: "members-said", words: ["bh", "buah", "jml", "jumlah", "bil"] },
    { use: "running-metres", words: ["meter lari", "m lari"] },
    { use: "carried", words: ["dibawa ke hadapan", "dibawa ke depan"] },
    { use: "subtotal", words: ["sub jumlah", "jumlah kecil"] },
  ],
};
