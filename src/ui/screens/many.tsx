import { useState } from 'preact/hooks';
import { recordMany } from '../../actions/record-many.ts';
import { beside } from '../../domain/form-problem.ts';
import { pathText } from '../../domain/nesting.ts';
import { endsInNumber } from '../../domain/numbering.ts';
import { LIKE_MAX } from '../../domain/plans/record.ts';
import { type CountedOn, MANY_OF, nextOf } from '../../domain/plans/record-many.ts';
import { type Thing, thingOf } from '../../domain/shelf.ts';
import { NOUNS_WORD, titleOf } from '../../domain/title.ts';
import { Button } from '../parts/button.tsx';
import { Choices } from '../parts/field.tsx';
import { NoThing } from '../parts/no-thing.tsx';
import { SaveProblem } from '../parts/save-problem.tsx';
import { Screen } from '../parts/screen.tsx';
import { Stepper } from '../parts/stepper.tsx';
import { ThingPicker } from '../parts/thing-picker.tsx';
import { back, goInstead, to } from '../router.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { useSave } from '../use-save.ts';

/** Several more like one that is recorded: how many is the one question, and what counts on is shown before anything is kept. */
export function ManyScreen({ id }: { id: string }) {
  const thing = thingOf(useShelf(), id);
  if (id === '') return <LikeWhich />;
  return thing ? <ManyForm thing={thing} /> : <NoThing word="thing" />;
}

function LikeWhich() {
  return (
    <Screen title="Several like one that is here">
      <ThingPicker label="Like which one?" nouns={MANY_OF} value="" onPick={(id) => goInstead(to(['many', id]))} />
    </Screen>
  );
}

function ManyForm({ thing }: { thing: Thing }) {
  const deps = useDeps();
  const shelf = useShelf();
  const ways = waysOf(thing);
  const [count, setCount] = useState(12);
  const [by, setBy] = useState<CountedOn>(ways[0]?.value ?? 'nothing');
  const save = useSave({ count, by });
  const next = nextOf(shelf, thing, count, by);
  const place = pathText(shelf, thing.noun === 'place' ? thing.in : thing.at);
  const word = count === 1 ? 'one' : String(count);
  function submit(): void {
    void save.run(
      () => recordMany(deps, { like: thing.id, count, by }),
      (entries) => {
        back();
        return `${entries.length} ${NOUNS_WORD[thing.noun]} recorded, each with its own code.`;
      },
    );
  }
  return (
    <Screen
      title={`More like ${titleOf(shelf, thing)}`}
      actions={
        <Button look="main" disabled={save.isBusy} onClick={submit}>
          Record {word} more
        </Button>
      }
    >
      <SaveProblem save={save} />
      <Stepper label="How many more" value={count} low={1} high={LIKE_MAX} leaps={[-10, -5, 5, 10]} onChange={setCount} />
      {beside(save.problem, 'count') && <p class="field-problem">{beside(save.problem, 'count')}</p>}
      {ways.length > 1 && (
        <Choices legend="What counts on" options={ways} picked={[by]} onPick={([picked]) => setBy(picked ?? 'nothing')} />
      )}
      <div class="card" role="status">
        {next.length > 0 && (
          <p>
            <strong>{next.length === 1 ? next[0] : `${next[0]} … ${next.at(-1)}`}</strong>
          </p>
        )}
        <p>
          Each gets a label code of its own{place ? ` and stands in ${place}` : ''}. Everything else is taken over from{' '}
          {titleOf(shelf, thing)}; what happened to it is not.
        </p>
      </div>
    </Screen>
  );
}

/** The likeliest first: a name of its own counts on, a size only where it is a number. */
function waysOf(thing: Thing): readonly { readonly value: CountedOn; readonly word: string }[] {
  const size = 'size' in thing ? thing.size : undefined;
  return [
    ...(thing.name ? [{ value: 'name' as const, word: 'the name' }] : []),
    ...(endsInNumber(size) ? [{ value: 'size' as const, word: 'the size' }] : []),
    { value: 'nothing', word: 'nothing: they are alike' },
  ];
}
