import type { Severity } from "../../../../core/audit/finding";

/** Each severity in a word and in what it means, so that no colour has to say it alone. */
export const SEVERITY_WORDS: Readonly<Record<Severity, { readonly word: string; readonly meaning: string }>> =
  {
    unsafe: { word: "Unsafe", meaning: "somebody may be hurt, a bar may crack, or steel may be missing" },
    unbendable: { word: "Unbendable", meaning: "cannot be made as scheduled" },
    "off-standard": {
      word: "Off standard",
      meaning: "the standard would refuse it, or the row contradicts itself",
    },
    doubtful: { word: "Doubtful", meaning: "probably a slip" },
    note: { word: "Note", meaning: "worth knowing" },
  };
