import { InputRefused } from "./input-refused";

/** Bytes of a file that are given back once a large part of them was read, and read again when they are asked for. */
export class BytesAgain {
  readonly #length: number;
  #bytes: Uint8Array | null;

  constructor(
    bytes: Uint8Array,
    private readonly again: () => Uint8Array,
    private readonly path: string,
  ) {
    this.#bytes = bytes;
    this.#length = bytes.length;
  }

  /** Where they changed at the same length the check sums of the parts tell. */
  get bytes(): Uint8Array {
    if (this.#bytes !== null) return this.#bytes;
    const bytes = this.again();
    if (bytes.length !== this.#length)
      throw new InputRefused(`${this.path} was saved by another program meanwhile: check it again`);
    this.#bytes = bytes;
    return bytes;
  }

  letGo(): void {
    this.#bytes = null;
  }
}
