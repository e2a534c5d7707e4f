import type { MouldPage } from '../../views/mould-page.ts';
import { drawerAddress } from '../drawer-address.ts';
import { to } from '../router.ts';
import { LinkButton } from './button.tsx';

/** Where a mould stands, whether it is due back, and its usual place. */
export function MouldWhere({ page }: { page: MouldPage }) {
  const { stands, usual, until } = page;
  return (
    <section class="card">
      <h2>Where it stands</h2>
      {stands ? (
        <p>
          <a class="place-link" href={drawerAddress(stands.id, stands.front, page.id)}>
            {stands.holder ? `With ${stands.holder}` : stands.path}
          </a>
        </p>
      ) : (
        <p>Nobody has said where it stands.</p>
      )}
      {until && (
        <p class={until.isLate ? 'field-problem' : undefined}>
          {until.isLate ? `It was due back on ${until.says}.` : `Due back by ${until.says}.`}
        </p>
      )}
      {usual && (
        <p>
          Usual place:{' '}
          <a class="place-link" href={to(['place', usual.id])}>
            {usual.path}
          </a>
        </p>
      )}
      {stands?.since && <p class="field-hint">Since {stands.since}.</p>}
      <LinkButton href={to(['move'], { things: page.id })}>{stands ? 'Move or put away' : 'Say where it stands'}</LinkButton>
    </section>
  );
}
