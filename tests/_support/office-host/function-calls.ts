/** How a worksheet function answered, as the library told the host. */
export interface FunctionAnswer {
  readonly ok: boolean;
  readonly value: unknown;
  /** the library's own number: 1 not available, 2 thrown, 7 invalid value */
  readonly errorCode?: number;
}

const INVOKE = 1000;
const CANCEL = 1001;
const FLAG = { cancelable: 1, streaming: 2, allowErrors: 4 };

export interface FunctionEntry {
  readonly messageCategory: 1;
  readonly messageType: number;
  readonly targetId: "";
  readonly message: string;
}

/** An error cell as Excel hands it to a function that allows errors. */
export const errorArgument = (code: string) => ({ type: "CustomFunctionError", code });

/** The calls of worksheet functions that wait for their answers. */
export class FunctionCalls {
  private readonly waiting = new Map<number, (answer: FunctionAnswer) => void>();
  private next = 1;
  /** what the library enabled on start; null until it has said that it is ready */
  isReady = false;

  constructor(private readonly send: (entries: readonly FunctionEntry[]) => void) {}

  /** Calls a function once for each list of arguments, all in one message as a recalculation does. */
  callMany(id: string, argumentLists: readonly (readonly unknown[])[]): Promise<FunctionAnswer[]> {
    const calls = argumentLists.map((given) => ({ id: this.next++, given }));
    const answers = Promise.all(
      calls.map((call) => new Promise<FunctionAnswer>((resolve) => this.waiting.set(call.id, resolve))),
    );
    this.send(calls.map((call) => entry(INVOKE, [call.id, id, call.given, "Sheet1!A1", FLAG.allowErrors])));
    return answers;
  }

  async call(id: string, ...given: readonly unknown[]): Promise<FunctionAnswer> {
    const [answer] = await this.callMany(id, [given]);
    return answer as FunctionAnswer;
  }

  /** Sends a call and takes it back at once, as Excel does when the user changes the cell again. */
  callAndCancel(id: string, ...given: readonly unknown[]): number {
    const call = this.next++;
    this.send([entry(INVOKE, [call, id, given, "Sheet1!A1", FLAG.allowErrors | FLAG.cancelable])]);
    this.send([entry(CANCEL, { invocationId: call })]);
    return call;
  }

  /** The service that the library reports to. */
  readonly service = {
    _SetOsfControlContainerReadyForCustomFunctions: () => {
      this.isReady = true;
    },
    _GetEnabledFeatures: () => [],
    SetInvocationArrayResults: (results: readonly [number, boolean, unknown, number?][]) => {
      for (const [id, ok, value, errorCode] of results) {
        this.waiting.get(id)?.({ ok, value, ...(ok || errorCode === undefined ? {} : { errorCode }) });
        this.waiting.delete(id);
      }
    },
  };
}

function entry(messageType: number, message: unknown): FunctionEntry {
  return { messageCategory: 1, messageType, targetId: "", message: JSON.stringify(message) };
}
