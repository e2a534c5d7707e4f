type Listener = (...values: unknown[]) => void;

/** Node's EventEmitter as far as PouchDB uses it: browsers have none, and PouchDB leaves it to whoever bundles it. */
export default class EventEmitter {
  private readonly heard = new Map<string, Listener[]>();

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

  listenerCount(name: string): number {
    return this.heard.get(name)?.length ?? 0;
  }

  setMaxListeners(): this {
    return this;
  }
}
