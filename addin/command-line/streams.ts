import { writeSync } from "node:fs";
import { coloured, isColoured, type Weight } from "./heading-colour";

/** Where a command writes: results on one side, progress and notes on the other. */
export interface Streams {
  /** A line of the result; a heading of some weight has its colour where a person looks on. */
  result(line: string, weight?: Weight): void;
  note(line: string): void;
  /** A part of a line that is too long to be held whole. */
  piece(text: string): void;
  /** How far a long job is; only shown where a person looks on, and taken away again by "". */
  progress(text: string): void;
}

const RESULTS = 1;
const NOTES = 2;
/** ms between two tries where the reader is slower than we are */
const PAUSE = 5;
/** of a terminal: from here to the end of the line */
const CLEAR_LINE = "\u001b[K";

/**
 * Collected output: a hundred thousand small writes would cost more than the work. What cannot be written
 * is dropped, so that the files a command makes are made all the same; `failure` says why.
 */
export class ProcessStreams implements Streams {
  /** null, or the code of the first write that failed: EPIPE where the reader has left */
  failure: string | null = null;
  private held: string[] = [];
  private shown = "";
  private size = 0;

  result(line: string, weight?: Weight): void {
    const text = visible(line);
    const isPlain = weight === undefined || !isColoured(process.stdout, process.env);
    this.held.push(isPlain ? text : coloured(text, weight), "\n");
    this.size += line.length + 1;
    if (this.size > 64 * 1024) this.flush();
  }

  note(line: string): void {
    this.flush();
    this.progress("");
    writeAll(NOTES, `${visible(line)}\n`);
  }

  piece(text: string): void {
    this.held.push(visible(text));
    this.size += text.length;
    if (this.size > 64 * 1024) this.flush();
  }

  progress(text: string): void {
    if (!process.stderr.isTTY || text === this.shown) return;
    this.shown = text;
    writeAll(NOTES, `\r${CLEAR_LINE}${visible(text)}`);
  }

  flush(): void {
    if (this.held.length > 0 && this.failure === null) this.failure = writeAll(RESULTS, this.held.join(""));
    this.held = [];
    this.size = 0;
  }
}

/**
 * Control characters and those that turn the writing round, from a cell, would steer the terminal: they
 * are shown as JSON spells them.
 */
function visible(line: string): string {
  return line.replace(
    /[^\P{Cc}\t\n]|[\u202a-\u202e\u2066-\u2069]/gu,
    (unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, "0")}`,
  );
}

/** Null, or the code of the error that stopped it. */
function writeAll(file: number, text: string): string | null {
  const bytes = new TextEncoder().encode(text);
  for (let at = 0; at < bytes.length; ) {
    try {
      at += writeSync(file, bytes, at);
    } catch (error) {
      const code = (error as NodeJS.ErrnoException).code ?? "unknown";
      if (code !== "EAGAIN") return code;
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, PAUSE);
    }
  }
  return null;
}
