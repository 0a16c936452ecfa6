import { InputRefused } from "./input-refused";

/** What a file's bytes are read from once more. */
export interface BytesSource {
  /** all that the file holds now, and those of them that are asked for */
  read(start: number, end: number): { readonly length: number; readonly bytes: Uint8Array };
}

/** Bytes of a file that are given back once a large part of them was read, and read again when they are asked for. */
export class BytesAgain {
  readonly length: number;
  #bytes: Uint8Array | null;

  constructor(
    bytes: Uint8Array,
    private readonly source: BytesSource,
    private readonly path: string,
  ) {
    this.#bytes = bytes;
    this.length = bytes.length;
  }

  /** Where they changed at the same length the check sums of the parts tell. */
  get bytes(): Uint8Array {
    this.#bytes ??= this.#read(0, this.length);
    return this.#bytes;
  }

  /** Some of them; where all were let go the others stay so. */
  part(start: number, end: number): Uint8Array {
    return this.#bytes?.subarray(start, end) ?? this.#read(start, end);
  }

  letGo(): void {
    this.#bytes = null;
  }

  #read(start: number, end: number): Uint8Array {
    const { length, bytes } = this.source.read(start, end);
    if (length !== this.length)
      throw new InputRefused(`${this.path} was saved by another program meanwhile: check it again`);
    return bytes;
  }
}
