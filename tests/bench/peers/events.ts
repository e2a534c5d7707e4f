type Listener = (...values: unknown[]) => void;

/** Node's EventEmitter as far as PouchDB uses it: browsers have none, and PouchDB leaves it to whoever bundles it. */
export default class EventEmitter {
  private lists: Map<string, Listener[]> | undefined;

  /** Made when first asked for: PouchDB's classes do not call this one's constructor. */
  private get heard(): Map<string, Listener[]> {
    this.lists ??= new Map();
    return this.lists;
  }

  on(name: string, listener: Listener): this {
    this.heard.set(name, [...(this.heard.get(name) ?? []), listener]);
    return this;
  }

  addListener(name: string, listener: Listener): this {
    return this.on(name, listener);
  }

  once(name: string, listener: Listener): this {
    const wrapped: Listener = (...values) => {
      this.removeListener(name, wrapped);
      listener(...values);
    };
    return this.on(name, wrapped);
  }

  removeListener(name: string, listener: Listener): this {
    this.heard.set(
      name,
      (this.heard.get(name) ?? []).filter((each) => each !== listener),
    );
    return this;
  }

  removeAllListeners(name?: string): this {
    if (name === undefined) this.heard.clear();
    else this.heard.delete(name);
    return this;
  }

  emit(name: string, ...values: unknown[]): boolean {
    const listeners = this.heard.get(name) ?? [];
    for (const listener of listeners) listener.apply(this, values);
    return listeners.length > 0;
  }

  listeners(name: string): readonly Listener[] {
    return this.heard.get(name) ?? [];
  }

  listenerCount(name: string): number {
    return this.heard.get(name)?.length ?? 0;
  }

  setMaxListeners(): this {
    return this;
  }
}

// PouchDB lends itself the methods it finds by their keys, and a class hides its own.
for (const key of Object.getOwnPropertyNames(EventEmitter.prototype)) {
  if (key !== 'constructor' && key !== 'heard') Object.defineProperty(EventEmitter.prototype, key, { enumerable: true });
}
