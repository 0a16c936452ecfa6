import { itemNotFound } from "./host-error";

/** Stands for Office's null objects. */
export const NULL_OBJECT = Object.freeze({ isNull: true });

/** A collection of host objects, found by key (a name or an id). */
export class Collection<Item extends object> {
  constructor(
    readonly list: readonly Item[],
    private readonly keys: (item: Item) => readonly string[],
    methods: object = {},
  ) {
    Object.assign(this, methods);
  }

  get Count(): number {
    return this.list.length;
  }

  GetCount(): number {
    return this.list.length;
  }

  GetItem(key: string): Item {
    const found = this.find(key);
    if (found === undefined) throw itemNotFound();
    return found;
  }

  Indexer(key: string): Item {
    return this.GetItem(key);
  }

  GetItemOrNullObject(key: string): Item | typeof NULL_OBJECT {
    return this.find(key) ?? NULL_OBJECT;
  }

  GetItemAt(index: number): Item {
    const item = this.list[index];
    if (item === undefined) throw itemNotFound();
    return item;
  }

  GetFirst(): Item {
    return this.GetItemAt(0);
  }

  private find(key: string): Item | undefined {
    const wanted = String(key).toUpperCase();
    return this.list.find((item) => this.keys(item).some((own) => own.toUpperCase() === wanted));
  }
}
