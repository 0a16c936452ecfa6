/** Memory that another thread can look into, where the host lets threads share any; else of this thread alone. */
export function memoryOfThreads(bytes: number): ArrayBufferLike {
  return typeof SharedArrayBuffer === "undefined" ? new ArrayBuffer(bytes) : new SharedArrayBuffer(bytes);
}
