import { createStore } from 'tinybase';
import { createIndexedDbPersister } from 'tinybase/persisters/persister-indexed-db';
import type { Peer, Row } from './peer.ts';

export const tiny: Peer = {
  name: 'tinybase 10.0.1 with its IndexedDB persister',
  async open(name) {
    const store = createStore();
    const persister = createIndexedDbPersister(store, name);
    await persister.load();
    const put = (table: string, { id, ...cells }: Row) => store.setRow(table, id, cells);
    return {
      async add(table, rows) {
        store.transaction(() => {
          for (const row of rows) put(table, row);
        });
        await persister.save();
      },
      things: async () => Object.entries(store.getTable('things')).map(([id, cells]) => ({ id, ...cells }) as Row),
      async find(word) {
        let count = 0;
        store.forEachRow('things', (id) => {
          if (String(store.getCell('things', id, 'text')).includes(word)) count += 1;
        });
        return count;
      },
      async log(entry, mould) {
        store.transaction(() => {
          put('entries', entry);
          put('things', mould);
        });
        await persister.save();
      },
      async close() {
        await persister.destroy();
      },
    };
  },
};
