/** Raised where a command cannot do what it was asked: one line for standard error, exit code 2. */
export class InputRefused extends Error {
  override readonly name = "InputRefused";
}
