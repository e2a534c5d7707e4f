import { createRxDatabase, type RxCollection, type RxJsonSchema } from 'rxdb';
import { getRxStorageDexie } from 'rxdb/plugins/storage-dexie';
import type { Peer, Row } from './peer.ts';

const schema: RxJsonSchema<Row> = {
  version: 0,
  primaryKey: 'id',
  type: 'object',
  properties: { id: { type: 'string', maxLength: 24 }, kind: { type: 'string' }, text: { type: 'string' } },
  required: ['id', 'kind', 'text'],
};

/** Documents of one `bulkInsert`, as in RxDB's own measurements. */
const AT_ONCE = 500;

export const rx: Peer = {
  name: 'rxdb 17.6.0 on Dexie 4.4.7',
  async open(name) {
    const db = await createRxDatabase({ name, storage: getRxStorageDexie(), multiInstance: false, eventReduce: true });
    const tables: { entries: RxCollection<Row>; things: RxCollection<Row> } = await db.addCollections({
      entries: { schema },
      things: { schema },
    });
    return {
      async add(table, rows) {
        for (let from = 0; from < rows.length; from += AT_ONCE) {
          const { error } = await tables[table].bulkInsert(rows.slice(from, from + AT_ONCE));
          if (error.length > 0) throw new Error('rxdb refused a document');
        }
      },
      things: async () => (await tables.things.find().exec()).map((document) => document.toJSON()),
      find: async (word) => (await tables.things.find({ selector: { text: { $regex: word } } }).exec()).length,
      async log(entry, mould) {
        await Promise.all([tables.entries.insert(entry), tables.things.upsert(mould)]);
      },
      async close() {
        await db.close();
      },
    };
  },
};
