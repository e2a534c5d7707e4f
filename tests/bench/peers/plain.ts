import { addRows, done, openPlainTables, readRows } from '../plain.ts';
import { type Peer, type Row, TABLES } from './peer.ts';

/** No library: one object a row, no index but its id. */
export const plain: Peer = {
  name: 'plain IndexedDB',
  async open(name) {
    const db = await openPlainTables(name, TABLES);
    const things = () => readRows(db, 'things') as Promise<Row[]>;
    return {
      add: (table, rows) => addRows(db, table, rows),
      things,
      find: async (word) => (await things()).filter((row) => row.text.includes(word)).length,
      async log(entry, mould) {
        const transaction = db.transaction(TABLES, 'readwrite', { durability: 'strict' });
        transaction.objectStore('entries').put(entry);
        transaction.objectStore('things').put(mould);
        await done(transaction);
      },
      close: async () => db.close(),
    };
  },
};
