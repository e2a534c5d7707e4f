import { useEffect, useState } from 'preact/hooks';
import { forgetRescued, type Rescued, rescuedHere } from '../../actions/rescued.ts';
import { sayCount } from '../../domain/measure-words.ts';
import { sayMoment } from '../moment-words.ts';
import { useDeps } from '../studio.tsx';
import '../styles/backup.css';

/** Says that the browser threw the studio's database away, what was put back, and what only a backup can bring. */
export function RescuedNotice(_: object) {
  const deps = useDeps();
  const [rescued, setRescued] = useState<Rescued | undefined>();
  useEffect(() => {
    rescuedHere(deps).then(setRescued, () => undefined);
  }, [deps]);
  if (!rescued) return null;
  const upTo = rescued.last === '' ? '' : `, up to ${sayMoment(rescued.last)},`;
  return (
    <div class="update-line rescued-line" role="alert">
      <p>
        <strong>The browser found its database damaged and threw it away.</strong> {sayCount(rescued.entries, 'entry', 'entries')}
        {upTo} {rescued.entries === 1 ? 'was' : 'were'} put back from the second copy.{' '}
        {rescued.unread > 0 && `${sayCount(rescued.unread, 'part')} of it could not be read. `}Look whether your last ones are there.
        Pictures come back when a backup is opened and joined.
      </p>
      <a class="button button-quiet" href="#/backup">
        Open a backup
      </a>
      <button
        type="button"
        class="button button-quiet"
        onClick={() => {
          setRescued(undefined);
          void forgetRescued(deps);
        }}
      >
        I have read it
      </button>
    </div>
  );
}
