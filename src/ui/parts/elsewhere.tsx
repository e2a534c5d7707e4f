import type { Fronts } from '../../views/fronts.ts';
import { to } from '../router.ts';
import { FrontList } from './front-list.tsx';

/** Places outside the cabinets: benches and boxes, who has what away, and what has no place at all. */
export function Elsewhere({ fronts }: { fronts: Fronts }) {
  const away = fronts.elsewhere.filter(({ kind }) => kind === 'away');
  const near = fronts.elsewhere.filter(({ kind }) => kind !== 'away');
  const hrefOf = ({ id }: { id: string }) => to(['place', id]);
  return (
    <>
      {near.length > 0 && (
        <section>
          <h2 class="section">In no cabinet</h2>
          <FrontList fronts={near} hrefOf={hrefOf} />
        </section>
      )}
      {away.length > 0 && (
        <section>
          <h2 class="section">Away</h2>
          <FrontList fronts={away} hrefOf={hrefOf} />
        </section>
      )}
      {fronts.nowhere > 0 && (
        <section>
          <h2 class="section">Standing nowhere</h2>
          <p>
            <a class="button" href={to(['place', 'nowhere'])}>
              {fronts.nowhere} recorded without a place
            </a>
          </p>
        </section>
      )}
    </>
  );
}
