import { correct } from '../../actions/correct.ts';
import { dropPhotos } from '../../actions/drop-photos.ts';
import type { Sha256, ThingId } from '../../domain/brand.ts';
import { beside } from '../../domain/form-problem.ts';
import { isProblem } from '../../domain/problem.ts';
import { type Thing, thingOf } from '../../domain/shelf.ts';
import { NOUN_WORD, titleOf } from '../../domain/title.ts';
import { addressOf } from '../address.ts';
import { changedFields, type Typed, typedFields } from '../form-values.ts';
import { FORMS } from '../forms.ts';
import { Button, LinkButton } from '../parts/button.tsx';
import { FormField } from '../parts/form-field.tsx';
import { KeptDraft } from '../parts/kept-draft.tsx';
import { Empty } from '../parts/note.tsx';
import { PhotoField } from '../parts/photos.tsx';
import { SaveProblem } from '../parts/save-problem.tsx';
import { Screen } from '../parts/screen.tsx';
import { goInstead } from '../router.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { useDraft } from '../use-draft.ts';
import { useSave } from '../use-save.ts';
import { inUnits, useUnits } from '../use-units.ts';

interface EditDraft {
  readonly typed: Typed;
  /** How the form began: only what differs is written down. */
  readonly begun: Typed;
  readonly pictures: readonly Sha256[];
}

/** Puts the fields of anything right. Only what was changed is written down. */
export function EditScreen({ id }: { id: string }) {
  const thing = thingOf(useShelf(), id);
  if (thing) return <EditForm thing={thing} />;
  return (
    <Screen title="Edit">
      <Empty
        title="This is not recorded here"
        actions={
          <LinkButton look="main" href="#/where">
            Look for it
          </LinkButton>
        }
      />
    </Screen>
  );
}

function EditForm({ thing }: { thing: Thing }) {
  const deps = useDeps();
  const units = useUnits();
  const shelf = useShelf();
  const { noun } = thing;
  const editors = [...FORMS[noun].main, ...FORMS[noun].more];
  const draft = useDraft<EditDraft>(inUnits(`edit:${thing.id}`, units), () => {
    const typed = typedFields(editors, thing as unknown as Readonly<Record<string, unknown>>, units);
    return { typed, begun: typed, pictures: [] };
  });
  const { values, set, clear } = draft;
  const save = useSave(values.typed);

  function submit(): void {
    const fields = changedFields(editors, values.typed, values.begun, units);
    if (isProblem(fields)) return save.show(fields);
    void save.run(
      () => correct(deps, { of: thing.id as ThingId, fields, pictures: values.pictures, units }),
      (entries) => {
        clear();
        goInstead(addressOf(thing));
        return entries.length > 0 ? 'Put right.' : 'Nothing was different, so nothing was written down.';
      },
    );
  }

  function dropDraft(): void {
    clear();
    void dropPhotos(deps, values.pictures);
    goInstead(addressOf(thing));
  }

  return (
    <Screen
      title={`Edit ${NOUN_WORD[noun]}`}
      actions={
        <>
          <Button look="main" disabled={save.isBusy} onClick={submit}>
            Save
          </Button>
          <Button onClick={dropDraft}>Leave as it was</Button>
        </>
      }
    >
      <h2 class="form-title">{titleOf(shelf, thing)}</h2>
      <KeptDraft draft={draft} pictures={values.pictures} />
      <SaveProblem save={save} />
      {editors.map((editor) => (
        <FormField
          key={editor.field}
          noun={noun}
          editor={editor}
          value={values.typed[editor.field] ?? ''}
          problem={beside(save.problem, editor.field) ?? beside(save.problem, editor.field.split('.')[0] ?? '')}
          onChange={(value) => set({ typed: { ...values.typed, [editor.field]: value } })}
        />
      ))}
      <PhotoField pictures={values.pictures} onChange={(pictures) => set({ pictures })} />
    </Screen>
  );
}
