import { answerBatch, PATH, type Request } from "./batch";
import { FunctionCalls } from "./function-calls";
import { type HostEvent, type SavedWorkbook, Workbook } from "./workbook";

const MESSAGE = { request: 1, answer: 2, event: 3 };
const EVENT_CATEGORY = 65_536;
/** Excel on the web refuses a larger request or answer. */
const PAYLOAD_LIMIT = 5 * 1024 * 1024;

export interface NativeBridge {
  sendMessageToHost(text: string): void;
  /** set by the library */
  onMessageFromHost?(text: string): void;
}

export interface Traffic {
  readonly bytesOut: number;
  readonly bytesBack: number;
  readonly failed: string | null;
}

interface LibraryMessage {
  readonly id: number;
  readonly message: { readonly body: Request | string };
}

/**
 * A small Excel that speaks the native bridge of the real Office.js 1.1.110. It proves names,
 * arguments, batching, load and sync, events and limits; it proves nothing of Excel's calculation,
 * spilling or drawing, and refuses what it does not emulate by name.
 */
export class FakeExcel {
  readonly workbook: Workbook;
  readonly functions: FunctionCalls;
  /** requests of the library that touched the workbook, in order */
  readonly requests: Traffic[] = [];
  readonly bridge: NativeBridge = { sendMessageToHost: (text) => this.receive(text) };
  /** the requirement sets that the host says it supports */
  readonly sets: Record<string, string> = {
    ExcelApi: "1.17",
    ExcelApiOnline: "1.1",
    SharedRuntime: "1.2",
    CustomFunctionsRuntime: "1.4",
    CustomFunctions: "1.9",
    AddinCommands: "1.3",
    Settings: "1.1",
    DialogApi: "1.2",
    RibbonApi: "1.2",
  };
  /** codes of the errors that the next requests are answered with; "silence" never answers */
  readonly failures: (string | null)[] = [];
  private readonly services: Readonly<Record<string, object>>;
  private events: HostEvent[] = [];
  private isAnswering = false;

  constructor(saved?: SavedWorkbook) {
    this.workbook = new Workbook((event) => this.hear(event));
    this.functions = new FunctionCalls((entries) =>
      this.post({ id: null, type: MESSAGE.event, message: { entries } }),
    );
    this.services = {
      "Microsoft.InternalService.AddinInternalService": { NotifyActionHandlerReady: () => undefined },
      "Microsoft.Telemetry.TelemetryService": { SendTelemetryEvent: () => undefined },
      "Microsoft.ExcelServices.CustomFunctions": this.functions.service,
    };
    if (saved !== undefined) this.workbook.open(saved);
  }

  /** Changes the workbook as its user would: events say that it was not the add-in. */
  byUser(change: (workbook: Workbook) => void): void {
    change(this.workbook);
    this.workbook.closeUndoStep();
  }

  private receive(text: string): void {
    const { id, message } = JSON.parse(text) as LibraryMessage;
    const body = typeof message.body === "string" ? (JSON.parse(message.body) as Request) : message.body;
    const failure = this.touchesWorkbook(body) ? (this.failures.shift() ?? null) : null;
    if (failure === "silence") return;
    const answer = failure === null ? this.answer(text, body) : refused(failure, "fake host: told to fail");
    const back = JSON.stringify(answer.body);
    const isTooLong = back.length > PAYLOAD_LIMIT;
    const sent = isTooLong
      ? refused("ResponsePayloadSizeLimitExceeded", "The response payload size has exceeded the limit.")
      : answer;
    if (this.touchesWorkbook(body)) {
      this.requests.push({ bytesOut: text.length, bytesBack: back.length, failed: codeOf(sent.body) });
    }
    this.post({ id, type: MESSAGE.answer, message: { headers: {}, ...sent } });
    this.flushEvents();
  }

  private answer(text: string, body: Request): { statusCode: number; body: object } {
    if (text.length > PAYLOAD_LIMIT) {
      return refused("RequestPayloadSizeLimitExceeded", "The request payload size has exceeded the limit.");
    }
    const host = { workbook: this.workbook, services: this.services, references: this.workbook.references };
    this.isAnswering = true;
    this.workbook.changedBy = "ThisLocalAddin";
    try {
      return { statusCode: 200, body: answerBatch(host, body) };
    } finally {
      this.isAnswering = false;
      this.workbook.changedBy = "Unknown";
      this.workbook.closeUndoStep();
    }
  }

  private touchesWorkbook(body: Request): boolean {
    const paths = Object.values(body.ObjectPaths);
    return (
      paths.some((path) => path.ObjectPathType === PATH.global) &&
      !paths.some((path) => path.ObjectPathType === PATH.service)
    );
  }

  private hear(event: HostEvent): void {
    this.events.push(event);
    if (!this.isAnswering) this.flushEvents();
  }

  private flushEvents(): void {
    const waiting = this.events;
    this.events = [];
    for (const event of waiting) {
      const entry = {
        messageCategory: EVENT_CATEGORY,
        messageType: event.type,
        targetId: event.target,
        message: JSON.stringify(event.payload),
        isRemoteOverride: false,
      };
      this.post({ id: null, type: MESSAGE.event, message: { entries: [entry] } });
    }
  }

  private post(message: object): void {
    const text = JSON.stringify({ flags: 0, ...message });
    queueMicrotask(() => this.bridge.onMessageFromHost?.(text));
  }
}

function refused(code: string, message: string): { statusCode: number; body: object } {
  return { statusCode: 400, body: { error: { code, message } } };
}

function codeOf(body: object): string | null {
  const known = body as { Error?: { Code: string }; error?: { code: string } };
  return known.Error?.Code ?? known.error?.code ?? null;
}
