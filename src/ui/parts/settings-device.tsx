import { useEffect, useState } from 'preact/hooks';
import { setWho, whoUses } from '../../actions/who.ts';
import { useDeps } from '../studio.tsx';
import { Button } from './button.tsx';
import { Choices, Field } from './field.tsx';

/** Whose hands this device is in; the history says who did what. */
export function WhoCard() {
  const { settings } = useDeps();
  const [who, setTyped] = useState(() => whoUses(settings) ?? '');
  return (
    <section class="card">
      <h2>Who uses this device</h2>
      <Field
        label="Name"
        max={120}
        value={who}
        hint="Written beside everything recorded on this device from now on. Empty: nobody is named."
        onInput={(name) => {
          setTyped(name);
          setWho(settings, name);
        }}
      />
    </section>
  );
}

const THEMES = [
  { value: 'auto', word: 'As the phone' },
  { value: 'light', word: 'Light' },
  { value: 'dark', word: 'Dark' },
] as const;
type Theme = (typeof THEMES)[number]['value'];

export function LookCard() {
  const { settings } = useDeps();
  const [theme, setTheme] = useState<Theme>(() => settings.get<Theme>('theme') ?? 'auto');
  return (
    <section class="card">
      <h2>Look</h2>
      <Choices
        legend="Light or dark"
        options={THEMES}
        picked={[theme]}
        onPick={([picked]) => {
          const next = picked ?? 'auto';
          setTheme(next);
          settings.set('theme', next);
          if (next === 'auto') delete document.documentElement.dataset['theme'];
          else document.documentElement.dataset['theme'] = next;
        }}
      />
    </section>
  );
}

export function InstallCard() {
  const { install } = useDeps();
  const [canAsk, setCanAsk] = useState(() => install.canAsk());
  useEffect(() => install.onChange(setCanAsk), [install]);
  if (install.isInstalled()) return null;
  return (
    <section class="card">
      <h2>On the home screen</h2>
      {canAsk ? (
        <Button onClick={() => void install.ask()}>Put Mouldkeep on the home screen</Button>
      ) : (
        <p>Open the browser’s own menu (on an iPhone: the share button) and choose “Add to home screen”.</p>
      )}
    </section>
  );
}
