import type { LanguageWords } from "../language-words";

/** Column headings, Portuguese. */
export const PORTUGUESE: LanguageWords = {
  language: "Portuguese",
  provenance: "common practice",
  columns: [
    {
      kind: "former",
      words: ["pino", "pino de dobra", "pino de dobramento", "diametro do pino", "diametro do mandril"],
    },
    { kind: "mark", words: ["pos n", "no da barra", "no da posicao"] },
    { kind: "size", words: ["bitola", "bit", "bitola nominal", "ø nominal"] },
    {
      kind: "members",
      words: ["no pecas", "repeticoes", "no de repeticoes", "elementos iguais", "vezes"],
    },
    {
      kind: "each",
      words: ["quant por elemento", "quantidade por elemento", "barras por elemento", "no por peca"],
    },
    {
      kind: "total",
      words: ["quantidade total", "quant total", "no total", "no de barras", "no de ferros"],
    },
    {
      kind: "length",
      words: [
        "c unit",
        "compr unitario",
        "comprimento unitario",
        "compr de corte",
        "comprimento de corte",
        "comp unit",
        "comp unitario",
        "compr",
        "comp",
      ],
    },
    { kind: "totalLength", words: ["c total", "compr total", "comp total", "comprimento acumulado"] },
    { kind: "mass", words: ["massa total", "peso do aco"] },
    { kind: "unitMass", words: ["massa linear", "massa unitaria", "peso linear"] },
    { kind: "spacing", words: ["espacamento", "afastamento"] },
    { kind: "grade", words: ["tipo de aco", "classe", "categoria"] },
    {
      kind: "pour",
      words: ["betonagem", "concretagem", "fase de betonagem", "etapa de concretagem", "fase de concretagem"],
    },
    { kind: "pour", words: ["fase", "etapa"], weak: true },
  ],
  parts: {
    count: ["quantidade", "quant", "qtd", "qtde"],
    member: ["elemento", "elementos", "elem", "peca", "pecas"],
    total: ["total", "totais"],
    length: ["comprimento", "comprimentos", "compr", "comp"],
    mass: ["peso", "massa"],
    size: ["bitola", "diametro"],
    per: ["por"],
    one: ["unitario", "unitaria", "unitarios", "unitarias", "unit"],
    metre: ["metro"],
    bar: [
      "iguais",
      "varao",
      "varoes",
      "barra",
      "barras",
      "ferro",
      "ferros",
      "aco",
      "corte",
      "do",
      "da",
      "dos",
      "das",
      "de",
    ],
  },
};
