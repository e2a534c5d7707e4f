import { setStudioFigures } from '../../actions/studio-figures.ts';
import type { Code } from '../../domain/brand.ts';
import { beside } from '../../domain/form-problem.ts';
import { payloadOf } from '../../domain/label-qr.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { useDraft } from '../use-draft.ts';
import { useSave } from '../use-save.ts';
import { Button, LinkButton } from './button.tsx';
import { Choices, Field } from './field.tsx';
import { ProblemNote } from './note.tsx';
import { SaveProblem } from './save-problem.tsx';

const FORMS = [
  { value: 'code', word: 'The bare code' },
  { value: 'link', word: 'A link to the address' },
] as const;
type Form = (typeof FORMS)[number]['value'];
/** Shown when the studio has no mould yet. */
const SAMPLE = 'M0000079' as Code;

/** What a label’s square says: the code alone, or a link that opens this app at the thing. */
export function LabelsCard() {
  const deps = useDeps();
  const { studio, things } = useShelf();
  const {
    values,
    set,
    clear,
    problem: lost,
  } = useDraft<{ address: string; form: Form | '' }>('label-address', () => ({
    address: studio.labelAddress ?? '',
    form: '',
  }));
  const save = useSave({ ...values, labelAddress: values.address });
  const form = values.form || (studio.usesLinks ? 'link' : 'code');
  const [first] = things.mould.values();
  const says = payloadOf(first?.code ?? SAMPLE, { labelAddress: values.address, usesLinks: form === 'link' });
  return (
    <section class="card">
      <h2>Labels</h2>
      {lost && <ProblemNote problem={lost} />}
      <SaveProblem save={save} />
      <Choices legend="The square on a label says" options={FORMS} picked={[form]} onPick={([picked]) => set({ form: picked ?? 'code' })} />
      {form === 'link' && (
        <Field
          label="Address of this app"
          keys="url"
          max={200}
          value={values.address}
          problem={beside(save.problem, 'labelAddress')}
          hint="Where it is put on the web, such as https://example.org/shelves/. A link is longer: the squares of small labels stay with the code."
          onInput={(address) => set({ address })}
        />
      )}
      <p>
        A label then says <span class="code">{says}</span>
      </p>
      <div class="button-row">
        <Button
          onClick={() =>
            void save.run(
              () => setStudioFigures(deps, { usesLinks: form === 'link', ...(form === 'link' ? { labelAddress: values.address } : {}) }),
              (entries) => {
                clear();
                return entries.length > 0 ? 'Written down. Labels printed before stay good.' : 'That is how it is already.';
              },
            )
          }
        >
          Save
        </Button>
        <LinkButton href="#/labels">Print labels</LinkButton>
      </div>
    </section>
  );
}
