/**
 * Writes the demo studio, Tern Quay Foundry: `node demo-data/make.mjs`, from the top of the repository.
 *
 * Everything in it is invented: people, places, pieces, quantities. The same seed writes the same bytes, and every entry goes
 * through the domain’s own parseEntry before it is written, so that the file is what a backup of a real studio would be.
 *
 *   tern-quay.jsonl   a header line, then one journal entry to a line, oldest first
 *   pictures.json     the drawings, SVG text by the SHA-256 of its bytes
 *
 * What is where: periods, designs, waxes and cabinets hold the tables; shelves, masters, moulds and piles record what stood there
 * when the journal began, old-moulds what had gone by then; work and care are the verbs of a day; story lives the two years; plan, loans,
 * sales, descent and doubts add what happens on days of its own; strokes, motifs, creatures and pictures draw; book gives entries their ids
 * and folds them; studio puts it together.
 */
import { writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';

const here = dirname(fileURLToPath(import.meta.url));

/** Node 20 does not read TypeScript: the script is bundled in memory, with the domain, and run from there. */
const { output } = /** @type {import('vite').Rolldown.RolldownOutput} */ (
  await build({
    configFile: false,
    logLevel: 'warn',
    build: { ssr: join(here, 'written.ts'), write: false, copyPublicDir: false },
    ssr: { noExternal: true },
  })
);
const { journal, pictures } = await import(`data:text/javascript;base64,${Buffer.from(output[0].code).toString('base64')}`);
writeFileSync(join(here, 'tern-quay.jsonl'), journal);
writeFileSync(join(here, 'pictures.json'), pictures);
console.log(`tern-quay.jsonl: ${Buffer.byteLength(journal)} bytes, pictures.json: ${Buffer.byteLength(pictures)} bytes`);
