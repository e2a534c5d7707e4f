import { useState } from 'preact/hooks';
import { areKeysOn, turnKeys } from '../keys.ts';
import { useDeps } from '../studio.tsx';
import { Button } from './button.tsx';
import { Choices } from './field.tsx';
import { KeysSheet } from './keys-sheet.tsx';

/** The keys of a desk: what they are, and whether they do anything. */
export function KeysCard() {
  const deps = useDeps();
  const [isOn, setOn] = useState(() => areKeysOn(deps));
  const [isShown, setShown] = useState(false);
  return (
    <section class="card">
      <h2>Keys</h2>
      <Choices
        legend="Single keys"
        options={[
          { value: 'on', word: 'On' },
          { value: 'off', word: 'Off' },
        ]}
        picked={[isOn ? 'on' : 'off']}
        onPick={([picked]) => {
          turnKeys(deps, picked === 'on');
          setOn(picked === 'on');
        }}
      />
      <p class="field-hint">Off: for voice input, or hands that rest on the keys. A scanner that types is understood either way.</p>
      <Button onClick={() => setShown(true)}>Show all keys</Button>
      {isShown && <KeysSheet onClose={() => setShown(false)} />}
    </section>
  );
}
