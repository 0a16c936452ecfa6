/** Work that was not saved, kept by this browser on this machine alone. */
export interface KeptWork {
  readonly name: string;
  readonly bytes: Uint8Array;
  /** ms since 1970 */
  readonly at: number;
}

const DATABASE = "barwright-workbench";
const STORE = "unsaved";
const LOCK = "barwright-unsaved-";

/** The drawer of one page: no other page that is open at the time touches what it keeps. */
export interface Drawer {
  put(work: KeptWork): Promise<void>;
  empty(): Promise<void>;
  /** What pages left behind that are gone, the newest first. */
  leftBehind(): Promise<readonly { readonly work: KeptWork; forget(): Promise<void> }[]>;
}

/** Throws where the browser keeps nothing, such as in a private window. */
export async function openDrawer(): Promise<Drawer> {
  const database = await openDatabase();
  const own = crypto.randomUUID();
  // held as long as the page lives
  void navigator.locks.request(LOCK + own, () => new Promise(() => {}));
  const forget = (key: string) => done(store(database, "readwrite").delete(key));
  return {
    put: async (work) => {
      await done(store(database, "readwrite").put(work, own));
    },
    empty: () => forget(own),
    async leftBehind() {
      const { held = [] } = await navigator.locks.query();
      const open = new Set(held.map(({ name }) => name));
      const keys = (await done(store(database, "readonly").getAllKeys())).map(String);
      const gone = keys.filter((key) => key !== own && !open.has(LOCK + key));
      const works = await Promise.all(
        gone.map(async (key) => ({
          work: (await done(store(database, "readonly").get(key))) as KeptWork,
          forget: () => forget(key),
        })),
      );
      return works.sort((a, b) => b.work.at - a.work.at);
    },
  };
}

function openDatabase(): Promise<IDBDatabase> {
  const request = indexedDB.open(DATABASE, 1);
  request.onupgradeneeded = () => request.result.createObjectStore(STORE);
  return done(request);
}

const store = (database: IDBDatabase, mode: IDBTransactionMode): IDBObjectStore =>
  database.transaction(STORE, mode).objectStore(STORE);

function done<T>(request: IDBRequest<T>): Promise<T>;
function done(request: IDBRequest<undefined>): Promise<void>;
function done(request: IDBRequest): Promise<unknown> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}
