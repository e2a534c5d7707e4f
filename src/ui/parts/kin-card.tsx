import { kinSummary } from '../../views/lineage-page.ts';
import { to } from '../router.ts';
import { useShelf } from '../studio.tsx';
import { LinkButton } from './button.tsx';
import { DoubtNote } from './doubt-note.tsx';
import { LineagePreview } from './lineage-preview.tsx';
import { SizeCard } from './size-card.tsx';

/** What a thing's page says of its lineage, of the size its castings come out at, and of doubts about it. */
export function KinCard({ id }: { id: string }) {
  const shelf = useShelf();
  const summary = kinSummary(shelf, id);
  return (
    <>
      <DoubtNote id={id} />
      {summary && (
        <section class="card">
          <h2>Lineage</h2>
          <p>{summary.says}</p>
          <p>{summary.counts}</p>
          <LineagePreview id={id} />
          <div class="button-row">
            <LinkButton href={to(['lineage', id])}>See its lineage</LinkButton>
            {shelf.things.mould.has(id as never) && <LinkButton href={to(['trace', id])}>Trace its waxes</LinkButton>}
          </div>
        </section>
      )}
      <SizeCard id={id} />
    </>
  );
}
