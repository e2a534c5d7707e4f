import { setAside } from '../../actions/set-aside.ts';
import { addDays, parseDay } from '../../domain/day.ts';
import { dayInWords } from '../../domain/day-words.ts';
import { beside, formProblem } from '../../domain/form-problem.ts';
import { isProblem } from '../../domain/problem.ts';
import type { AttentionItem } from '../../views/attention-list.ts';
import { useDeps } from '../studio.tsx';
import { useDraft } from '../use-draft.ts';
import { useSave } from '../use-save.ts';
import { Button } from './button.tsx';
import { Field } from './field.tsx';
import { ProblemNote } from './note.tsx';
import { SaveProblem } from './save-problem.tsx';
import { Sheet } from './sheet.tsx';

const SPANS = [
  { days: 7, word: 'a week' },
  { days: 30, word: 'a month' },
  { days: 90, word: '3 months' },
  { days: 365, word: 'a year' },
] as const;

/** Puts one flag off until a day: one tap for the usual spans, or a day of one’s own. */
export function SetAsideSheet({ item, onClose }: { item: AttentionItem; onClose: () => void }) {
  const deps = useDeps();
  const { flag, title } = item;
  const { values, set, clear, problem } = useDraft(`aside:${flag.of}:${flag.kind}`, () => ({ until: '' }));
  const save = useSave(values);
  const put = (typed: string) => {
    const until = parseDay(typed);
    if (isProblem(until)) return save.show(formProblem({ until: 'Choose a day.' }));
    void save.run(
      () => setAside(deps, { of: flag.of, kind: flag.kind, until }),
      () => {
        clear();
        onClose();
        return `${title}: set aside until ${dayInWords(until)}.`;
      },
    );
  };
  return (
    <Sheet title={`Set aside: ${title}`} onClose={onClose}>
      <p>{flag.says} It comes back on the day you choose.</p>
      {problem && <ProblemNote problem={problem} />}
      <SaveProblem save={save} />
      <div class="button-row">
        {SPANS.map(({ days, word }) => (
          <Button key={days} disabled={save.isBusy} onClick={() => put(addDays(deps.today(), days))}>
            For {word}
          </Button>
        ))}
      </div>
      <Field
        label="Or until"
        type="date"
        value={values.until}
        problem={beside(save.problem, 'until')}
        onInput={(until) => set({ until })}
      />
      <div class="button-row">
        <Button look="main" disabled={save.isBusy || values.until === ''} onClick={() => put(values.until)}>
          Set aside
        </Button>
      </div>
    </Sheet>
  );
}
