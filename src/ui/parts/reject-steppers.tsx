import { useState } from 'preact/hooks';
import type { WaxFault } from '../../domain/fault.ts';
import { Button } from './button.tsx';
import { Stepper } from './stepper.tsx';

interface RejectProps {
  faults: readonly WaxFault[];
  shown: number;
  rejects: { readonly [F in WaxFault]?: number };
  problem?: string | undefined;
  onChange: (fault: WaxFault, count: number) => void;
}

/** Waxes thrown out, counted by what was wrong with them. */
export function RejectSteppers({ faults, shown, rejects, problem, onChange }: RejectProps) {
  const [isAll, setAll] = useState(() => faults.slice(shown).some((fault) => (rejects[fault] ?? 0) > 0));
  return (
    <fieldset class="rejects">
      <legend>Rejects</legend>
      {faults.slice(0, isAll ? undefined : shown).map((fault) => (
        <Stepper key={fault} label={fault} value={rejects[fault] ?? 0} onChange={(count) => onChange(fault, count)} />
      ))}
      {!isAll && <Button onClick={() => setAll(true)}>Other faults</Button>}
      {problem && <p class="field-problem">{problem}</p>}
    </fieldset>
  );
}
