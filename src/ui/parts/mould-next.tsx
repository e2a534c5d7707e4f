import { putBack } from '../../actions/put-back.ts';
import type { MouldPage } from '../../views/mould-page.ts';
import { to } from '../router.ts';
import { useDeps } from '../studio.tsx';
import { Button, LinkButton } from './button.tsx';
import { sayOutcome } from './toast.tsx';

/** The likely next action first and biggest; failing it is never more than one tap away. */
export function MouldNext({ page }: { page: MouldPage }) {
  const deps = useDeps();
  const { id, next } = page;
  const failed = <LinkButton href={to(['mould', id, 'failed'])}>Failed</LinkButton>;
  switch (next) {
    case 'instead':
      return (
        <>
          <LinkButton look="main" href={to(['mould', id, 'failed'])}>
            See what to use instead
          </LinkButton>
          <LinkButton href={to(['move'], { things: id })}>Move it out</LinkButton>
        </>
      );
    case 'back':
      return (
        <>
          {page.usual ? (
            <Button look="main" onClick={async () => sayOutcome(await putBack(deps, [id]), `Back in ${page.usual?.path}.`)}>
              It is back
            </Button>
          ) : (
            <LinkButton look="main" href={to(['move'], { things: id })}>
              It is back
            </LinkButton>
          )}
          {failed}
        </>
      );
    case 'inspect':
      return (
        <>
          <LinkButton look="main" href={to(['mould', id, 'inspect'])}>
            Inspect
          </LinkButton>
          <LinkButton href={to(['mould', id, 'run'])}>Log a run</LinkButton>
          {failed}
        </>
      );
    case 'run':
      return (
        <>
          <LinkButton look="main" href={to(['mould', id, 'run'])}>
            Log a run
          </LinkButton>
          {failed}
        </>
      );
    case 'nothing':
      return <LinkButton href={to(['move'], { things: id })}>Move</LinkButton>;
  }
}
