import type { CabinetFront } from '../../views/fronts.ts';
import { to } from '../router.ts';
import { LinkButton } from './button.tsx';
import { FrontList } from './front-list.tsx';
import { TakeList } from './take-list.tsx';

/** All drawers of a cabinet as a list, readable at any size. */
export function CabinetList({ cabinet, hrefOf }: { cabinet: CabinetFront; hrefOf: (id: string) => string }) {
  return (
    <section aria-label={`All of ${cabinet.name}`}>
      <h2 class="section">All of {cabinet.name}</h2>
      {cabinet.loose > 0 && (
        <p>
          <a class="button" href={to(['place', cabinet.id])}>
            {cabinet.loose} in the cabinet, in no drawer
          </a>
        </p>
      )}
      <FrontList fronts={cabinet.fronts} hrefOf={(front) => hrefOf(front.id)} />
      <p class="button-row">
        <LinkButton href={to(['draw', cabinet.id])}>Change the drawing</LinkButton>
        <LinkButton href={to(['place', cabinet.id])}>About {cabinet.name}</LinkButton>
        {cabinet.fronts.length > 0 && <TakeList shown={{ of: 'drawers', cabinet }} />}
      </p>
    </section>
  );
}
