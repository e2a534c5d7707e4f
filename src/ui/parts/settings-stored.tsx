import { useState } from 'preact/hooks';
import { measureStored, type Stored } from '../../actions/stored.ts';
import { sayCount, sayNumber } from '../../domain/measure-words.ts';
import { NOUNS } from '../../domain/noun.ts';
import { problem } from '../../domain/problem.ts';
import { NOUN_WORD, NOUNS_WORD } from '../../domain/title.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { Button } from './button.tsx';
import { sayProblem } from './toast.tsx';

const size = (bytes: number) => (bytes < 1e6 ? `${sayNumber(bytes / 1e3, 1)} kB` : `${sayNumber(bytes / 1e6, 1)} MB`);

/** What is stored, how many of each kind, and on a tap how much room entries and pictures take. */
export function StoredCard() {
  const deps = useDeps();
  const { things } = useShelf();
  const [stored, setStored] = useState<Stored | 'counting' | undefined>();
  const measure = () => {
    setStored('counting');
    measureStored(deps).then(setStored, () => {
      setStored(undefined);
      sayProblem(problem('The storage could not be read.', 'Nothing was changed. Load the page again and try once more.'));
    });
  };
  const counted = stored === 'counting' ? undefined : stored;
  return (
    <section class="card">
      <h2>What is stored</h2>
      <p>
        {NOUNS.filter((noun) => things[noun].size > 0)
          .map((noun) => sayCount(things[noun].size, NOUN_WORD[noun], NOUNS_WORD[noun]))
          .join(', ') || 'Nothing yet.'}
      </p>
      {counted && (
        <dl class="facts">
          <dt>Entries</dt>
          <dd>
            {sayNumber(counted.entries.count)}, {size(counted.entries.bytes)}
          </dd>
          <dt>Pictures</dt>
          <dd>
            {sayNumber(counted.pictures.count)}, {size(counted.pictures.bytes)}
            {counted.pictures.absent > 0 && `; ${sayNumber(counted.pictures.absent)} more are not on this device`}
          </dd>
        </dl>
      )}
      <Button disabled={stored === 'counting'} onClick={measure}>
        {stored === 'counting' ? 'Counting…' : 'Count how much room it takes'}
      </Button>
    </section>
  );
}
