import { useEffect, useRef } from 'preact/hooks';
import { isWarning } from '../../domain/warning.ts';
import type { Save } from '../use-save.ts';
import { Button } from './button.tsx';
import { ProblemNote } from './note.tsx';
import { Shape } from './shape.tsx';

/** What stands in the way of saving: a refusal, or warnings with a button to go on all the same. It comes into view by itself. */
export function SaveProblem({
  save,
  anyway = 'Write it down all the same',
}: {
  save: Pick<Save, 'problem' | 'refused' | 'confirm'>;
  anyway?: string;
}) {
  const { problem, refused } = save;
  const here = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (refused) here.current?.scrollIntoView({ block: 'center' });
  }, [refused]);
  if (!problem) return null;
  return (
    <div ref={here} class="save-problem">
      {isWarning(problem) ? (
        <div class="note note-caution" role="alert">
          <Shape name="worn" />
          <div>
            {problem.warnings.map((warning) => (
              <p key={warning}>
                <strong>{warning}</strong>
              </p>
            ))}
            <p>{problem.kept}</p>
            <div class="button-row">
              <Button onClick={save.confirm}>{anyway}</Button>
            </div>
          </div>
        </div>
      ) : (
        <ProblemNote problem={problem} />
      )}
    </div>
  );
}
