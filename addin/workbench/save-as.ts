const WORKBOOK = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** Hands bytes to the browser's own download, which writes them where its user keeps such files. */
export function saveAs(bytes: Uint8Array, name: string): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([bytes as Uint8Array<ArrayBuffer>], { type: WORKBOOK }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
