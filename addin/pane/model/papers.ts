/** Makes pages and sheets of what was found. */
export interface Papers {
  print(kind: "findings" | "questions"): Promise<void>;
  writeFindings(answer?: "replace" | "number"): Promise<void>;
  /** a sheet Standard to look figures up on, or the one of a file */
  writeStandard(file: Uint8Array | null): Promise<void>;
}
