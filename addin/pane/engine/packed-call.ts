import type { WorkerAnswer, WorkerRequest } from "./ask-worker";
import type { CheckQuestion, EditedSheet, Engine, OlderRevision } from "./engine";
import {
  type PackedOtherSheets,
  type PackedSheet,
  packOtherSheets,
  packSheet,
  unpackOtherSheets,
  unpackSheet,
} from "./packed-sheet";

/** Calls whose arguments are plain data as they stand. */
type PlainMethod =
  | "bar"
  | "explain"
  | "ahead"
  | "follows"
  | "ownSheet"
  | "marks"
  | "ticket"
  | "trialEdits"
  | "missingFacts"
  | "totals"
  | "findings"
  | "page"
  | "withFiles"
  | "basis"
  | "forget";

/** A call of the engine as plain data, to be sent to a worker. */
export type PackedCall =
  | {
      [Method in PlainMethod]: { readonly call: Method; readonly given: Parameters<Engine[Method]> };
    }[PlainMethod]
  | {
      readonly call: "check";
      readonly question: Omit<CheckQuestion, "sheet" | "shop" | "otherSheets">;
      readonly sheet: PackedSheet;
      readonly shop: PackedSheet | null;
      readonly otherSheets: PackedOtherSheets;
    }
  | { readonly call: "recheck"; readonly edited: Omit<EditedSheet, "sheet">; readonly sheet: PackedSheet }
  | { readonly call: "compare"; readonly sheet: string; readonly older: PackedSheet | Uint8Array };

export type EngineRequest = WorkerRequest<PackedCall>;
export type EngineAnswer = WorkerAnswer<unknown>;

export function packedCheck({ sheet, shop, otherSheets, ...question }: CheckQuestion): PackedCall {
  return {
    call: "check",
    question,
    sheet: packSheet(sheet),
    shop: shop === null ? null : packSheet(shop),
    otherSheets: packOtherSheets(otherSheets),
  };
}

export function packedRecheck({ sheet, ...edited }: EditedSheet): PackedCall {
  return { call: "recheck", edited, sheet: packSheet(sheet) };
}

export function packedCompare(sheet: string, older: OlderRevision): PackedCall {
  return { call: "compare", sheet, older: older instanceof Uint8Array ? older : packSheet(older) };
}

/** Has an engine do what was packed. */
export async function unpackedCall(engine: Engine, packed: PackedCall): Promise<unknown> {
  switch (packed.call) {
    case "check": {
      const { question, sheet, shop, otherSheets } = packed;
      return engine.check({
        ...question,
        sheet: unpackSheet(sheet),
        shop: shop === null ? null : unpackSheet(shop),
        otherSheets: unpackOtherSheets(otherSheets),
      });
    }
    case "recheck":
      return engine.recheck({ ...packed.edited, sheet: unpackSheet(packed.sheet) });
    case "compare": {
      const { sheet, older } = packed;
      return engine.compare(sheet, older instanceof Uint8Array ? older : unpackSheet(older));
    }
    default: {
      const method = engine[packed.call] as (...given: readonly unknown[]) => Promise<unknown>;
      return method.apply(engine, [...packed.given]);
    }
  }
}
