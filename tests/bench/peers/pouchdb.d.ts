declare module 'pouchdb-browser' {
  /** The part of PouchDB's interface that the bench uses. */
  export default class PouchDB {
    constructor(name: string, options?: { auto_compaction?: boolean; revs_limit?: number });
    bulkDocs(docs: readonly object[]): Promise<readonly { ok?: boolean; error?: boolean }[]>;
    allDocs(options: { include_docs: boolean }): Promise<{ rows: readonly { doc: object }[] }>;
    get(id: string): Promise<{ _rev: string }>;
    put(doc: object): Promise<{ ok: boolean }>;
    close(): Promise<void>;
  }
}
