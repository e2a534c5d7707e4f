import { measure } from '../../actions/measure.ts';
import { beside } from '../../domain/form-problem.ts';
import { sayCount } from '../../domain/measure-words.ts';
import { isProblem } from '../../domain/problem.ts';
import { type Thing, thingOf } from '../../domain/shelf.ts';
import { titleOf } from '../../domain/title.ts';
import { readingLines } from '../../views/size-page.ts';
import { addressOf } from '../address.ts';
import { dimensionNames, type MeasureDraft, measureCommand, measured, startMeasure } from '../measure-draft.ts';
import { Button } from '../parts/button.tsx';
import { Facts } from '../parts/facts.tsx';
import { Field } from '../parts/field.tsx';
import { KeptDraft } from '../parts/kept-draft.tsx';
import { NoThing } from '../parts/no-thing.tsx';
import { OnDay } from '../parts/on-day.tsx';
import { SaveProblem } from '../parts/save-problem.tsx';
import { Screen } from '../parts/screen.tsx';
import { goInstead } from '../router.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { useDraft } from '../use-draft.ts';
import { useSave } from '../use-save.ts';
import { inUnits, useUnits } from '../use-units.ts';
import '../styles/size.css';

/** Caliper readings of named dimensions, and a weight. */
export function MeasureScreen({ id }: { id: string }) {
  const thing = thingOf(useShelf(), id);
  return thing && thing.noun !== 'place' ? <MeasureForm thing={thing} /> : <NoThing word="thing" />;
}

function MeasureForm({ thing }: { thing: Thing }) {
  const deps = useDeps();
  const shelf = useShelf();
  const units = useUnits();
  const draft = useDraft<MeasureDraft>(inUnits(`measure:${thing.id}`, units), () => startMeasure(shelf, thing));
  const { values, set, clear } = draft;
  const save = useSave(measured(values));
  const says = (field: string) => beside(save.problem, field);
  const put = (list: readonly string[], at: number, value: string) => list.map((each, i) => (i === at ? value : each));
  const before = readingLines(shelf, thing.id, units);

  function submit(): void {
    const command = measureCommand(thing.id, values, units, deps.today());
    if (isProblem(command)) return save.show(command);
    void save.run(
      (confirmed) => measure(deps, { ...command, confirmed }),
      () => {
        clear();
        goInstead(addressOf(thing));
        return command.sizes.length > 0 ? `${sayCount(command.sizes.length, 'reading')} written down.` : 'The weight is written down.';
      },
    );
  }

  return (
    <Screen
      title="Measure it"
      actions={
        <Button look="main" disabled={save.isBusy} onClick={submit}>
          Write it down
        </Button>
      }
    >
      <h2 class="form-title">{titleOf(shelf, thing)}</h2>
      <KeptDraft draft={draft} />
      <SaveProblem save={save} anyway="The reading is right" />
      {values.names.map((name, at) => (
        <fieldset key={at} class="measure-line">
          <legend class="unseen">Dimension {at + 1}</legend>
          <Field
            label="What was measured"
            max={60}
            value={name}
            list={dimensionNames(shelf, values.names)}
            problem={says(`name ${at}`)}
            onInput={(typed) => set({ names: put(values.names, at, typed) })}
          />
          <Field
            label={`Reading${name.trim() ? `: ${name.trim()}` : ''}`}
            keys="decimal"
            unit={units.length}
            value={values.readings[at] ?? ''}
            problem={says(`size ${at}`)}
            onInput={(typed) => set({ readings: put(values.readings, at, typed) })}
          />
        </fieldset>
      ))}
      {says('sizes') && <p class="field-problem">{says('sizes')}</p>}
      <Button class="measure-more" onClick={() => set({ names: [...values.names, ''], readings: [...values.readings, ''] })}>
        Another dimension
      </Button>
      <Field
        label="Weight"
        keys="decimal"
        unit={units.mass}
        value={values.weight}
        problem={says('grams')}
        onInput={(weight) => set({ weight })}
      />
      <Field label="Note" lines={2} max={4000} value={values.note} problem={says('note')} onInput={(note) => set({ note })} />
      <OnDay today={deps.today()} value={values.on} problem={says('on')} onChange={(on) => set({ on })} />
      {before.length > 0 && (
        <section class="card">
          <h2>Until now</h2>
          <Facts facts={before} />
        </section>
      )}
      <p class="field-hint">
        Measure at the same places as on what it came from, under the same names: each pair of readings tells how much your rubber, wax and
        metal shrink.
      </p>
    </Screen>
  );
}
