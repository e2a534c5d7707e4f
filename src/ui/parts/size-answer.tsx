import { RING_CAUTION } from '../../domain/size/ring.ts';
import type { Units } from '../../domain/units.ts';
import { sayFine } from '../../views/size-page.ts';
import type { WhichSize } from '../../views/which-size.ts';
import { Facts } from './facts.tsx';
import { Caution } from './note.tsx';
import { Shape } from './shape.tsx';

/** A size told in every system, and beside the sizes of its design. */
export function SizeAnswer({ answer, units }: { answer: WhichSize; units: Units }) {
  const { ring, noRing, ladder, casts, nearest } = answer;
  return (
    <section class="card size-answer" aria-live="polite">
      {casts && <p>{casts}</p>}
      {nearest && (
        <p>
          <strong>{nearest}</strong>
        </p>
      )}
      {ring && (
        <>
          <Facts
            facts={[
              { name: 'ISO', says: ring.iso },
              { name: 'US, Canada', says: ring.us ?? 'below 0' },
              { name: 'UK', says: ring.uk ?? 'below A' },
              { name: 'Japan', says: ring.japan ?? 'below 1' },
              { name: 'Inside', says: `${sayFine(ring.diameterMm, units)} across, ${sayFine(ring.circumferenceMm, units)} around` },
            ]}
          />
          <Caution>{RING_CAUTION}</Caution>
        </>
      )}
      {noRing && <p>{noRing}</p>}
      {ladder.length > 0 && (
        <ul class="rungs">
          {ladder.map(({ label, says, isNearest }) => (
            <li key={label} class={isNearest ? 'rung rung-near' : 'rung'}>
              {isNearest && <Shape name="yes" size={18} />}
              <span>{label}</span>
              <span>{says}</span>
            </li>
          ))}
        </ul>
      )}
      {ladder.length === 0 && !ring && !noRing && (
        <p>Choose a design or mould whose sizes have their lengths written down, to see which it is nearest to.</p>
      )}
    </section>
  );
}
