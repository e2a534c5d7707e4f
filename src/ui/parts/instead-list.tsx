import type { InsteadPage, Substitute } from '../../views/instead-page.ts';
import { drawerAddress } from '../drawer-address.ts';
import { to } from '../router.ts';
import { LinkButton } from './button.tsx';
import { Picture } from './picture.tsx';
import { StateMarks } from './states.tsx';

/** What to use in place of a failed mould, the best first, each with the way to its drawer. */
export function InsteadList({ page }: { page: InsteadPage }) {
  return (
    <section aria-label="What to use instead">
      <h2 class="section">Use instead</h2>
      <p>{page.says}</p>
      <Rows of={page.moulds} />
      <Rows of={page.lastResort} heading="Only as a last resort" />
      <Rows of={page.masters} heading="To make a new mould from" />
    </section>
  );
}

function Rows({ of, heading }: { of: readonly Substitute[]; heading?: string }) {
  if (of.length === 0) return null;
  return (
    <>
      {heading && <h3 class="section">{heading}</h3>}
      <ul class="list">
        {of.map((each) => (
          <Row key={each.id} each={each} />
        ))}
      </ul>
    </>
  );
}

function Row({ each }: { each: Substitute }) {
  const { at } = each;
  return (
    <li class="card instead">
      <div class="instead-what">
        {each.picture && <Picture sha={each.picture} alt="" />}
        <span class="row-words">
          <a class="row-title" href={each.noun === 'mould' ? to(['mould', each.id]) : to(['thing', each.id])}>
            {each.title}
          </a>
          <span class="row-detail">{each.detail}</span>
          <span class="row-marks">
            <StateMarks states={each.states} of={each.id} />
          </span>
        </span>
      </div>
      {at ? (
        <LinkButton href={drawerAddress(at.id, at.front, each.id)}>Show {at.path}</LinkButton>
      ) : (
        <p>Nobody has said where it stands.</p>
      )}
    </li>
  );
}
