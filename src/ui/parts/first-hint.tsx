import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { FirstStep } from '../../views/first-steps.ts';
import { isNext } from '../../views/first-steps.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { Button } from './button.tsx';
import { Shape } from './shape.tsx';
import '../styles/first-use.css';

/** The next step of the first use. It goes once the step is done, or when it is put away; each studio on this device has its own. */
export function FirstHint({ step, children }: { step: FirstStep; children: ComponentChildren }) {
  const { settings, keeper } = useDeps();
  const shelf = useShelf();
  const key = `hint:${step}:${keeper.name}`;
  const [isAway, setAway] = useState(() => settings.get<boolean>(key) === true);
  if (isAway || !isNext(shelf, step)) return null;
  return (
    <div class="first-hint" role="note" aria-label="Next step">
      <Shape name="low" />
      <p>
        <strong>Next:</strong> {children}
      </p>
      <Button
        look="quiet"
        aria-label="Got it: put this hint away"
        onClick={() => {
          settings.set(key, true);
          setAway(true);
        }}
      >
        Got it
      </Button>
    </div>
  );
}
