import type { LanguageWords } from "../language-words";

/** Column headings, Spanish and Portuguese. */
export const SPANISH_AND_PORTUGUESE: LanguageWords = {
  language: "Spanish and Portuguese",
  cite: {
    document: "column headings of bar schedules in Spanish and Portuguese",
    provenance: "common practice",
  },
  columns: [
    { kind: "member", words: ["elemento", "miembro", "ubicacion", "peca", "elementos"] },
    { kind: "mark", words: ["marca", "posicion", "posicao"] },
    { kind: "size", words: ["diametro", "calibre", "bitola", "ø"] },
    { kind: "grade", words: ["grado", "acero", "aco", "clase"] },
    { kind: "members", words: ["n elementos", "no de elementos", "numero de elementos"] },
    { kind: "each", words: ["por elemento", "cantidad por elemento"] },
    { kind: "length", words: ["longitud unitaria", "compr unit"] },
    { kind: "shape", words: ["forma", "tipo de doblado", "esquema", "formato"] },
    { kind: "mass", words: ["peso", "masa", "peso total", "massa"] },
    { kind: "unitMass", words: ["peso unitario", "peso/m", "peso lineal"] },
    { kind: "totalLength", words: ["longitud total", "comprimento total", "largo total"] },
    { kind: "remark", words: ["observaciones", "observacoes", "notas", "obs"] },
  ],
  parts: {},
};
