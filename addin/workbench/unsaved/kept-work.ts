import type { LoggedEdit } from "./edit-log";

/** A file with work that was not saved, kept by this browser on this machine alone. */
export interface KeptFile {
  readonly name: string;
  readonly bytes: Uint8Array;
  /** ms since 1970 */
  readonly at: number;
}

/** What is to be done again on the file. */
export interface KeptWork extends KeptFile {
  readonly edits: readonly LoggedEdit[];
}

interface KeptEdits {
  readonly edits: readonly LoggedEdit[];
  readonly at: number;
}

const DATABASE = "barwright-workbench";
const FILES = "unsaved";
const EDITS = "edits";
const LOCK = "barwright-unsaved-";

/** The drawer of one page: no other page that is open at the time touches what it keeps. */
export interface Drawer {
  /** Keeps a file in place of all that was kept. */
  begin(file: KeptFile): Promise<void>;
  add(edits: readonly LoggedEdit[], at: number): Promise<void>;
  empty(): Promise<void>;
  /** What pages left behind that are gone, the newest first. */
  leftBehind(): Promise<readonly { readonly work: KeptWork; forget(): Promise<void> }[]>;
}

/** Throws where the browser keeps nothing, such as in a private window. */
export async function openDrawer(): Promise<Drawer> {
  const database = await openDatabase();
  const own = crypto.randomUUID();
  let count = 0;
  // held as long as the page lives
  void navigator.locks.request(LOCK + own, () => new Promise(() => {}));
  const write = (act: (files: IDBObjectStore, edits: IDBObjectStore) => void): Promise<void> => {
    const transaction = database.transaction([FILES, EDITS], "readwrite");
    act(transaction.objectStore(FILES), transaction.objectStore(EDITS));
    return new Promise((resolve, reject) => {
      transaction.oncomplete = () => resolve();
      transaction.onabort = () => reject(transaction.error);
    });
  };
  const forget = (key: string): Promise<void> =>
    write((files, edits) => {
      files.delete(key);
      edits.delete(editsOf(key));
    });
  const read = (store: string): IDBObjectStore => database.transaction(store).objectStore(store);
  return {
    begin: (file) =>
      write((files, edits) => {
        files.put(file, own);
        edits.delete(editsOf(own));
      }),
    add: (edits, at) =>
      write((_, kept) => {
        count += 1;
        kept.put({ edits, at } satisfies KeptEdits, [own, count]);
      }),
    empty: () => forget(own),
    async leftBehind() {
      const { held = [] } = await navigator.locks.query();
      const open = new Set(held.map(({ name }) => name));
      const keys = (await done(read(FILES).getAllKeys())).map(String);
      const gone = keys.filter((key) => key !== own && !open.has(LOCK + key));
      const works = await Promise.all(
        gone.map(async (key) => {
          const file = (await done(read(FILES).get(key))) as KeptFile;
          const batches = (await done(read(EDITS).getAll(editsOf(key)))) as KeptEdits[];
          const at = batches.at(-1)?.at ?? file.at;
          const work = { ...file, edits: batches.flatMap(({ edits }) => edits), at };
          return { work, forget: () => forget(key) };
        }),
      );
      return works.sort((a, b) => b.work.at - a.work.at);
    },
  };
}

/** The keys of a file's edits: the file's own key and a number. */
const editsOf = (key: string): IDBKeyRange => IDBKeyRange.bound([key], [key, Infinity]);

async function openDatabase(): Promise<IDBDatabase> {
  const request = indexedDB.open(DATABASE, 2);
  request.onupgradeneeded = () => {
    const { result } = request;
    for (const store of [FILES, EDITS]) {
      if (!result.objectStoreNames.contains(store)) result.createObjectStore(store);
    }
  };
  const database = await new Promise<IDBDatabase>((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
    // a page of an older build holds it
    request.onblocked = () => reject(new Error("another page keeps its work in the older way: close it"));
  });
  database.onversionchange = () => database.close();
  return database;
}

function done<T>(request: IDBRequest<T>): Promise<T>;
function done(request: IDBRequest): Promise<unknown> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}
