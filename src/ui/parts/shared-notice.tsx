import { useEffect, useState } from 'preact/hooks';
import { countShared } from '../../actions/shared-pictures.ts';
import { sayCount } from '../../domain/measure-words.ts';
import { route } from '../router.ts';

/** Says that shared pictures still wait, when the app was closed before anybody said what they are of. */
export function SharedNotice(_: object) {
  const [count, setCount] = useState(0);
  const here = route.value.parts[0];
  useEffect(() => {
    countShared().then(setCount, () => undefined);
  }, [here]);
  if (count === 0 || here === 'shared' || here === 'scan') return null;
  return (
    <p class="update-line" role="status">
      {sayCount(count, 'shared picture')} still {count === 1 ? 'waits' : 'wait'} for you to say what {count === 1 ? 'it is' : 'they are'}{' '}
      of.
      <a class="button button-quiet" href="#/shared">
        Look at {count === 1 ? 'it' : 'them'}
      </a>
    </p>
  );
}
