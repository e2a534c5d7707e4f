import { lend } from '../../actions/lend.ts';
import { move } from '../../actions/move.ts';
import { putBack } from '../../actions/put-back.ts';
import type { PlaceId, ThingId } from '../../domain/brand.ts';
import { parseDay } from '../../domain/day.ts';
import { isStanding, STANDING } from '../../domain/filling.ts';
import { beside, formProblem } from '../../domain/form-problem.ts';
import { sayCount } from '../../domain/measure-words.ts';
import { pathText } from '../../domain/nesting.ts';
import { isProblem } from '../../domain/problem.ts';
import type { Thing } from '../../domain/shelf.ts';
import { titleOf, titleOfId } from '../../domain/title.ts';
import { findCode } from '../../views/find-code.ts';
import { moveListOf } from '../../views/move-list.ts';
import { useLabelTaker } from '../label-taker.ts';
import { type MoveDraft, startMove } from '../move-draft.ts';
import { Button } from '../parts/button.tsx';
import { Choices, Field } from '../parts/field.tsx';
import { Icon } from '../parts/icon.tsx';
import { KeptDraft } from '../parts/kept-draft.tsx';
import { MoveThings } from '../parts/move-things.tsx';
import { SaveProblem } from '../parts/save-problem.tsx';
import { Screen } from '../parts/screen.tsx';
import { ThingPicker } from '../parts/thing-picker.tsx';
import { say } from '../parts/toast.tsx';
import { rememberPlace } from '../recent-places.ts';
import { back, route } from '../router.ts';
import { requestScan } from '../scan-request.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { useDraft } from '../use-draft.ts';
import { useSave } from '../use-save.ts';

/** Moves several things in one go: into a place, to somebody, or back where they usually stand. */
export function MoveScreen(_: object) {
  const asked = route.value.query.toString();
  return <MoveForm key={asked} asked={asked} />;
}

function MoveForm({ asked }: { asked: string }) {
  const deps = useDeps();
  const shelf = useShelf();
  // Opened for other things it is another list; what was typed for these stays with them.
  const draft = useDraft<MoveDraft>(`move${asked && `?${asked}`}`, startMove);
  const { values, set, clear } = draft;
  const save = useSave(values);
  const list = moveListOf(shelf, values.things);
  const things = values.things as readonly ThingId[];
  const isLending = values.how === 'lend';
  const says = (field: string) => beside(save.problem, field);
  const what = things.length === 1 ? titleOfId(shelf, things[0]) : sayCount(things.length, 'thing');

  function done(sentence: string): string {
    clear();
    rememberPlace(deps, isLending ? undefined : values.to);
    back();
    return sentence;
  }

  function submit(): void {
    const until = values.until === '' ? undefined : parseDay(values.until);
    if (isProblem(until)) return save.show(formProblem({ until: until.says }));
    const note = values.note.trim() || undefined;
    if (isLending) {
      void save.run(
        () => lend(deps, { things, holder: values.holder, until, note }),
        () => done(`${what} lent to ${values.holder.trim()}.`),
      );
      return;
    }
    const to = (values.to || undefined) as PlaceId | undefined;
    void save.run(
      (confirmed) => move(deps, { things, to, note, confirmed }),
      () => done(`${what} moved to ${pathText(shelf, to)}.`),
    );
  }

  /** The camera outlives this drawing of the screen: what it brings adds up here. */
  const scanned: string[] = [];
  function gather(thing: Thing): string | undefined {
    if (thing.noun !== 'place' && !isStanding(thing.noun)) return `${titleOf(shelf, thing)} stands nowhere and cannot be moved.`;
    const listed = [...new Set([...values.things, ...scanned])];
    if (thing.noun === 'place' && listed.length > 0) {
      set({ things: listed, to: thing.id, how: 'move' });
      return undefined;
    }
    scanned.push(thing.id);
    set({ things: [...new Set([...listed, thing.id])] });
    return `${titleOf(shelf, thing)} is on the list. Scan the next one, or the place they go to.`;
  }
  const scan = () => requestScan({ purpose: 'Scan what goes, then the place', onThing: gather });
  useLabelTaker((code) => {
    const [found, ...others] = findCode(shelf, code);
    if (!found || others.length > 0) return false;
    say(gather(found.thing) ?? `To ${found.title}.`);
    return true;
  });

  return (
    <Screen
      title="Move or put away"
      actions={
        <Button look="main" disabled={save.isBusy} onClick={submit}>
          {things.length === 0 ? `Choose what to ${isLending ? 'lend' : 'move'}` : `${isLending ? 'Lend' : 'Move'} ${what}`}
        </Button>
      }
    >
      <KeptDraft draft={draft} />
      <SaveProblem save={save} anyway="Put it there all the same" />
      <MoveThings
        things={list.things}
        problem={says('things')}
        onRemove={(id) => set({ things: values.things.filter((each) => each !== id) })}
      />
      <ThingPicker
        label="What goes?"
        nouns={STANDING}
        value=""
        hasScan={false}
        onPick={(id) => set({ things: [...new Set([...values.things, id])] })}
      />
      <div class="button-row">
        <Button onClick={scan}>
          <Icon name="scan" /> {things.length > 0 ? 'Scan another' : 'Scan a label'}
        </Button>
      </div>
      {list.home && (
        <div class="button-row">
          <Button
            disabled={save.isBusy}
            onClick={() =>
              save.run(
                () => putBack(deps, things),
                () => done(`${what} back in ${list.home}.`),
              )
            }
          >
            Put back in {list.home}
          </Button>
        </div>
      )}
      <Choices
        legend="Where to?"
        options={[
          { value: 'move', word: 'to a place' },
          { value: 'lend', word: 'to somebody' },
        ]}
        picked={[isLending ? 'lend' : 'move']}
        onPick={([how]) => set({ how: how ?? 'move' })}
      />
      {isLending ? (
        <>
          <Field
            label="To whom?"
            value={values.holder}
            max={120}
            list={list.holders}
            problem={says('holder')}
            onInput={(holder) => set({ holder })}
          />
          <Field
            label="Back by"
            type="date"
            value={values.until}
            problem={says('until')}
            hint="Left empty, no date is watched."
            onInput={(until) => set({ until })}
          />
        </>
      ) : (
        <ThingPicker label="Place" nouns={['place']} value={values.to} problem={says('to')} onPick={(to) => set({ to })} />
      )}
      <Field label="Note" value={values.note} max={4000} problem={says('note')} onInput={(note) => set({ note })} />
    </Screen>
  );
}
