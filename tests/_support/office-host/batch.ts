import { Collection, NULL_OBJECT } from "./collection";
import { HostError, notEmulated } from "./host-error";
import type { Workbook } from "./workbook";

/** Kinds of object path and of action in a request of Office.js 1.1.110, found by watching it. */
export const PATH = { global: 1, service: 2, method: 3, property: 4, indexer: 5, reference: 6, nothing: 7 };
const ACTION = { instantiate: 1, query: 2, call: 3, set: 4, trace: 5 };

interface Arguments {
  readonly Arguments?: readonly unknown[];
  readonly ReferencedObjectPathIds?: readonly number[];
}

interface ObjectPath {
  readonly Name: string;
  readonly ObjectPathType: number;
  readonly ParentObjectPathId?: number;
  readonly ArgumentInfo?: Arguments;
}

interface Action {
  readonly Id: number;
  readonly ActionType: number;
  readonly Name: string;
  readonly ObjectPathId: number;
  readonly ArgumentInfo?: Arguments;
  readonly QueryInfo?: { readonly Select?: readonly string[]; readonly Expand?: readonly string[] };
}

export interface Request {
  readonly Actions: readonly Action[];
  readonly ObjectPaths: Readonly<Record<string, ObjectPath>>;
}

type HostObject = Record<string, unknown>;

export interface BatchHost {
  readonly workbook: Workbook;
  readonly services: Readonly<Record<string, object>>;
  /** objects that the library keeps between requests */
  readonly references: Map<string, object>;
}

/** Runs one request of the library against the workbook and gives the body of the answer. */
export function answerBatch(host: BatchHost, request: Request): object {
  const paths = new PathReader(host, request);
  const results: object[] = [];
  for (const [index, action] of request.Actions.entries()) {
    try {
      results.push({ ActionId: action.Id, Value: perform(host, paths, action) });
    } catch (error) {
      const known = error instanceof HostError ? error : crash(error);
      const refusal = {
        Code: known.code,
        Message: known.message,
        ActionIndex: index,
        HttpStatusCode: 400,
        Location: "",
      };
      return { Error: refusal, Results: results, TraceIds: [] };
    }
  }
  const traces = request.Actions.filter((action) => action.ActionType === ACTION.trace);
  return { Results: results, TraceIds: traces.map((action) => action.Id) };
}

function perform(host: BatchHost, paths: PathReader, action: Action): unknown {
  if (action.ActionType === ACTION.trace) return null;
  const target = paths.resolve(action.ObjectPathId);
  switch (action.ActionType) {
    case ACTION.instantiate:
      return target === NULL_OBJECT ? null : identity(host, target);
    case ACTION.query:
      return read(host, target, [...(action.QueryInfo?.Select ?? []), ...(action.QueryInfo?.Expand ?? [])]);
    case ACTION.call: {
      if (target === NULL_OBJECT) return null;
      const answer = method(target, action.Name)(...paths.argumentsOf(action.ArgumentInfo));
      const isObject = typeof answer === "object" && answer !== null && !Array.isArray(answer);
      return isObject ? identity(host, answer as HostObject) : (answer ?? null);
    }
    case ACTION.set: {
      if (target === NULL_OBJECT) throw new HostError("InvalidObjectPath", "a null object cannot be changed");
      if (!(action.Name in target)) throw notEmulated(`setting ${nameOf(target)}.${action.Name}`);
      target[action.Name] = paths.argumentsOf(action.ArgumentInfo)[0];
      return null;
    }
    default:
      throw notEmulated(`action type ${action.ActionType}`);
  }
}

class PathReader {
  private readonly known = new Map<number, HostObject>();

  constructor(
    private readonly host: BatchHost,
    private readonly request: Request,
  ) {}

  resolve(id: number): HostObject {
    const known = this.known.get(id);
    if (known !== undefined) return known;
    const path = this.request.ObjectPaths[id];
    if (path === undefined) throw notEmulated(`object path ${id}`);
    const found = this.find(path);
    this.known.set(id, found);
    return found;
  }

  argumentsOf(info: Arguments | undefined): unknown[] {
    return (info?.Arguments ?? []).map((value, index) => {
      const reference = info?.ReferencedObjectPathIds?.[index];
      return reference ? this.resolve(reference) : value;
    });
  }

  private find(path: ObjectPath): HostObject {
    const parent = path.ParentObjectPathId ? this.resolve(path.ParentObjectPathId) : null;
    if (parent === NULL_OBJECT) return NULL_OBJECT as unknown as HostObject;
    const given = this.argumentsOf(path.ArgumentInfo);
    switch (path.ObjectPathType) {
      case PATH.global:
        return this.host.workbook as unknown as HostObject;
      case PATH.service: {
        const service = this.host.services[path.Name];
        if (service === undefined) throw notEmulated(`service ${path.Name}`);
        return service as HostObject;
      }
      case PATH.method:
        return method(parent as HostObject, path.Name)(...given) as HostObject;
      case PATH.property:
        if (!(path.Name in (parent as HostObject))) throw notEmulated(`${nameOf(parent)}.${path.Name}`);
        return (parent as HostObject)[path.Name] as HostObject;
      case PATH.indexer:
        return method(parent as HostObject, "Indexer")(...given) as HostObject;
      case PATH.reference: {
        const kept = this.host.references.get(path.Name);
        if (kept !== undefined) return kept as HostObject;
        throw new HostError("InvalidReference", "This reference is not valid for the current operation.");
      }
      case PATH.nothing:
        return NULL_OBJECT as unknown as HostObject;
      default:
        throw notEmulated(`path type ${path.ObjectPathType}`);
    }
  }
}

/** The loaded properties of an object, in the shape the library expects; nested ones are parted by "/". */
function read(host: BatchHost, target: object, wanted: readonly string[]): unknown {
  if (target === NULL_OBJECT) return null;
  if (target instanceof Collection) {
    const inner = wanted.map((path) => path.replace(/^items\/?/i, "")).filter((path) => path !== "");
    const ofItems = inner.filter((path) => !/^count$/i.test(path));
    return {
      ...(inner.length > ofItems.length ? { Count: target.Count } : {}),
      _Items: target.list.map((item) => read(host, item, ofItems)),
    };
  }
  const answer: HostObject = identity(host, target as HostObject);
  const nested = new Map<string, string[]>();
  for (const path of wanted) {
    const [head = "", ...rest] = path.split("/");
    const name = head.charAt(0).toUpperCase() + head.slice(1);
    if (!(name in target)) throw notEmulated(`loading ${nameOf(target)}.${name}`);
    const value = (target as HostObject)[name];
    if (rest.length === 0 && !isHostObject(value, name)) answer[name] = value ?? null;
    else nested.set(name, [...(nested.get(name) ?? []), ...(rest.length > 0 ? [rest.join("/")] : [])]);
  }
  for (const [name, paths] of nested) {
    answer[name] = read(host, (target as HostObject)[name] as object, paths);
  }
  return answer;
}

/** Objects that go over the bridge as they are: a setting's value, a protection's options. */
const PLAIN_OBJECTS = ["Value", "Options"];

function isHostObject(value: unknown, name: string): boolean {
  return (
    typeof value === "object" && value !== null && !Array.isArray(value) && !PLAIN_OBJECTS.includes(name)
  );
}

function identity(host: BatchHost, target: HostObject): HostObject {
  const reference = target["_ReferenceId"];
  if (typeof reference === "string") host.references.set(reference, target);
  return {
    ...(target["Id"] === undefined ? {} : { Id: target["Id"] }),
    ...(reference === undefined ? {} : { _ReferenceId: reference }),
  };
}

function method(target: HostObject, name: string): (...given: unknown[]) => unknown {
  const found = target[name];
  if (typeof found !== "function") throw notEmulated(`${nameOf(target)}.${name}()`);
  return found.bind(target) as (...given: unknown[]) => unknown;
}

function nameOf(target: object | null): string {
  return target?.constructor?.name ?? "nothing";
}

function crash(error: unknown): HostError {
  console.error(error);
  return new HostError("GeneralException", `fake host crashed: ${String(error)}`);
}
