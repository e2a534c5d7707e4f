import PouchDB from 'pouchdb-browser';
import type { Peer, Row } from './peer.ts';

/** Documents written in one `bulkDocs`, which its guide advises for many. Its users report some hundreds to a few thousand at a time as the quickest. */
const AT_ONCE = 1000;

export const pouch: Peer = {
  name: 'pouchdb-browser 9.0.0',
  async open(name) {
    const options = { auto_compaction: true };
    const tables = { entries: new PouchDB(`${name}-entries`, options), things: new PouchDB(`${name}-things`, options) };
    const document = ({ id, ...row }: Row) => ({ _id: id, ...row });
    const things = async () => {
      const { rows } = await tables.things.allDocs({ include_docs: true });
      return rows.map(({ doc }) => doc as unknown as Row);
    };
    return {
      async add(table, rows) {
        for (let from = 0; from < rows.length; from += AT_ONCE) {
          const written = await tables[table].bulkDocs(rows.slice(from, from + AT_ONCE).map(document));
          if (written.some(({ error }) => error)) throw new Error('pouchdb refused a document');
        }
      },
      things,
      find: async (word) => (await things()).filter((row) => row.text.includes(word)).length,
      async log(entry, mould) {
        const { _rev } = await tables.things.get(mould.id);
        await Promise.all([tables.entries.put(document(entry)), tables.things.put({ ...document(mould), _rev })]);
      },
      async close() {
        await Promise.all([tables.entries.close(), tables.things.close()]);
      },
    };
  },
};
