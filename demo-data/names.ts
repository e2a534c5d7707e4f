/** Ids by key. Asking for one that is not there is a slip in the script, so it throws. */
export class Names {
  private readonly ids = new Map<string, string>();

  set(key: string | number, id: string): void {
    this.ids.set(String(key), id);
  }

  of(key: string | number): string {
    const id = this.ids.get(String(key));
    if (id === undefined) throw new Error(`nothing called ${key}`);
    return id;
  }

  has(key: string | number): boolean {
    return this.ids.has(String(key));
  }

  keyOf(id: string): string {
    for (const [key, each] of this.ids) if (each === id) return key;
    throw new Error(`no key for ${id}`);
  }

  entries(): readonly (readonly [string, string])[] {
    return [...this.ids];
  }
}
