/** Where a command writes: results on one side, progress and notes on the other. */
export interface Streams {
  result(line: string): void;
  note(line: string): void;
}

/** Collected output: a hundred thousand small writes would cost more than the work. */
export class ProcessStreams implements Streams {
  private held: string[] = [];
  private size = 0;

  result(line: string): void {
    this.held.push(line, "\n");
    this.size += line.length + 1;
    if (this.size > 64 * 1024) this.flush();
  }

  note(line: string): void {
    this.flush();
    process.stderr.write(`${line}\n`);
  }

  flush(): void {
    if (this.held.length > 0) process.stdout.write(this.held.join(""));
    this.held = [];
    this.size = 0;
  }
}
