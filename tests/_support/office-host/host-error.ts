/** An error that Excel itself would answer, by its code. */
export class HostError extends Error {
  constructor(
    readonly code: string,
    message: string,
  ) {
    super(message);
  }
}

export const invalidArgument = () =>
  new HostError("InvalidArgument", "The argument is invalid or missing or has an incorrect format.");

export const itemNotFound = () => new HostError("ItemNotFound", "The requested resource doesn't exist.");

/** Said of every part of Excel that the fake host leaves out, so that no test passes by accident. */
export const notEmulated = (what: string) =>
  new HostError("ApiNotFound", `fake host: ${what} is not emulated`);
