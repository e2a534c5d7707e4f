import { record } from '../../actions/record.ts';
import { isStanding } from '../../domain/filling.ts';
import { beside } from '../../domain/form-problem.ts';
import { sayCount } from '../../domain/measure-words.ts';
import { NOUNS, type Noun } from '../../domain/noun.ts';
import { LIKE_MAX, namesFor } from '../../domain/plans/record.ts';
import { isProblem } from '../../domain/problem.ts';
import { type Shelf, thingOf } from '../../domain/shelf.ts';
import { NOUN_WORD, NOUNS_WORD, titleOf } from '../../domain/title.ts';
import type { Units } from '../../domain/units.ts';
import { addressOf } from '../address.ts';
import { typedFields } from '../form-values.ts';
import { FORMS } from '../forms.ts';
import { type NewDraft, newCommand } from '../new-draft.ts';
import { Button, LinkButton } from '../parts/button.tsx';
import { Field } from '../parts/field.tsx';
import { FormField } from '../parts/form-field.tsx';
import { KeptDraft } from '../parts/kept-draft.tsx';
import { Empty } from '../parts/note.tsx';
import { PhotoField } from '../parts/photos.tsx';
import { SaveProblem } from '../parts/save-problem.tsx';
import { Screen } from '../parts/screen.tsx';
import { Stepper } from '../parts/stepper.tsx';
import { ThingPicker } from '../parts/thing-picker.tsx';
import { rememberPlace } from '../recent-places.ts';
import { goInstead, route, to } from '../router.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { useDraft } from '../use-draft.ts';
import { useSave } from '../use-save.ts';
import { inUnits, useUnits } from '../use-units.ts';

/** Records a new thing of any kind; a name and a place are enough, the rest is folded away. */
export function NewScreen({ noun }: { noun: string }) {
  const known = NOUNS.find((each) => each === noun);
  const asked = route.value.query.toString();
  return known ? <NewForm key={asked} noun={known} asked={asked} /> : <WhatNew />;
}

function WhatNew() {
  return (
    <Screen title="Record something new">
      <Empty title="What is it?">
        <div class="sheet-list">
          {NOUNS.map((noun) => (
            <LinkButton key={noun} href={to(['new', noun])}>
              {/^[aeiou]/.test(NOUN_WORD[noun]) ? 'An' : 'A'} {NOUN_WORD[noun]}
            </LinkButton>
          ))}
          <LinkButton href="#/many">Several like one that is here</LinkButton>
        </div>
      </Empty>
    </Screen>
  );
}

/** What the address asks for: a code read from a label, a place, a design, a thing to copy. */
function startNew(shelf: Shelf, noun: Noun, units: Units): NewDraft {
  const { query } = route.value;
  const editors = [...FORMS[noun].main, ...FORMS[noun].more];
  const like = thingOf(shelf, query.get('like') ?? undefined);
  const { code: _, ...fields } = (like?.noun === noun ? like : {}) as Readonly<Record<string, unknown>>;
  const asked = Object.fromEntries(editors.flatMap(({ field }) => (query.has(field) ? [[field, query.get(field) ?? '']] : [])));
  return {
    typed: { ...typedFields(editors, fields, units), ...asked },
    at: query.get('at') ?? like?.at ?? '',
    amount: '',
    count: 1,
    pictures: [],
  };
}

/** To what was recorded; a casting that became a master only to be moulded goes on to the mould. */
function nextAddress(noun: Noun, id: string, { typed }: NewDraft): string {
  if (noun !== 'master' || route.value.query.get('next') !== 'mould') return addressOf({ noun, id: id as never });
  const named = ['design', 'size'].flatMap((field) => (typed[field] ? [[field, typed[field]]] : []));
  return to(['new', 'mould'], { ...Object.fromEntries(named), master: id });
}

function NewForm({ noun, asked }: { noun: Noun; asked: string }) {
  const deps = useDeps();
  const shelf = useShelf();
  const units = useUnits();
  // A form opened for another label or place is another form; what was typed into this one stays with it.
  const draft = useDraft<NewDraft>(inUnits(`new:${noun}${asked && `?${asked}`}`, units), () => startNew(shelf, noun, units));
  const { values, set, clear } = draft;
  const save = useSave({ ...values.typed, ...values, pieces: values.amount, grams: values.amount });
  const { main, more } = FORMS[noun];
  const says = (field: string) => beside(save.problem, field);
  const word = NOUN_WORD[noun];
  const offPile = thingOf(shelf, route.value.query.get('off') ?? undefined);
  const pile = offPile?.noun === 'injectedWax' || offPile?.noun === 'casting' ? offPile : undefined;
  const isMoreOpen = more.some(({ field }) => (values.typed[field] ?? '') !== '' || beside(save.refused, field));

  const names = namesFor(shelf, noun, values.typed['name']?.trim() || undefined, values.count);

  // Whoever comes from a drawer has the thing in hand and its name in mind.
  const field = (editor: (typeof main)[number], index?: number) => (
    <FormField
      key={editor.field}
      noun={noun}
      editor={editor}
      value={values.typed[editor.field] ?? ''}
      problem={says(editor.field) ?? says(editor.field.split('.')[0] ?? '')}
      autoFocus={index === 0 && route.value.query.has('at')}
      onChange={(value) => set({ typed: { ...values.typed, [editor.field]: value } })}
    />
  );

  function submit(): void {
    const command = newCommand(noun, values, units);
    if (isProblem(command)) return save.show(command);
    void save.run(
      (confirmed) => record(deps, { ...command, off: pile?.id, confirmed }),
      (entries) => {
        clear();
        rememberPlace(deps, values.at);
        const [first] = entries;
        if (first) goInstead(nextAddress(noun, first.id, values));
        return values.count > 1 ? `${values.count} ${NOUNS_WORD[noun]} recorded, each with its own code.` : `The ${word} is recorded.`;
      },
    );
  }

  return (
    <Screen
      title={`New ${word}`}
      actions={
        <Button look="main" disabled={save.isBusy} onClick={submit}>
          {values.count > 1 ? `Record ${values.count} ${NOUNS_WORD[noun]}` : `Record the ${word}`}
        </Button>
      }
    >
      <KeptDraft draft={draft} pictures={values.pictures} />
      <SaveProblem save={save} anyway="Record it all the same" />
      {pile && (
        <p class="field-hint">
          One piece is taken off {titleOf(shelf, pile)}, of which {sayCount(pile.pieces, 'piece is', 'pieces are')} on hand.
        </p>
      )}
      {main.map((editor, index) => field(editor, index))}
      {isStanding(noun) && (
        <ThingPicker label="Where it stands" nouns={['place']} value={values.at} problem={says('at')} onPick={(at) => set({ at })} />
      )}
      {(noun === 'injectedWax' || noun === 'casting') && (
        <Field label="Pieces" keys="numeric" value={values.amount} problem={says('pieces')} onInput={(amount) => set({ amount })} />
      )}
      {noun === 'wax' && (
        <Field
          label="In the tub now"
          keys="decimal"
          unit={units.mass}
          value={values.amount}
          problem={says('grams')}
          onInput={(amount) => set({ amount })}
        />
      )}
      <PhotoField pictures={values.pictures} onChange={(pictures) => set({ pictures })} />
      <details class="more" open={isMoreOpen}>
        <summary>More about it</summary>
        {more.map((editor) => field(editor))}
        <Stepper
          label={`How many ${NOUNS_WORD[noun]} like this one`}
          value={values.count}
          low={1}
          high={LIKE_MAX}
          leaps={[5, -5]}
          onChange={(count) => set({ count })}
        />
        {names.length > 1 && names[0] && (
          <p class="field-hint">
            They are called {names[0]} … {names.at(-1)}.
          </p>
        )}
        {says('count') && <p class="field-problem">{says('count')}</p>}
      </details>
    </Screen>
  );
}
