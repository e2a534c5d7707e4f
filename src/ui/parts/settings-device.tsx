import { useEffect, useState } from 'preact/hooks';
import { deviceName, setDeviceName, setWho, whoUses } from '../../actions/who.ts';
import { chooseSpelling, spellingOf } from '../spelling.ts';
import { useDeps } from '../studio.tsx';
import { Button } from './button.tsx';
import { Choices, Field } from './field.tsx';

/** Whose hands this device is in; the history says who did what. */
export function WhoCard() {
  const { settings } = useDeps();
  const [who, setTyped] = useState(() => whoUses(settings) ?? '');
  const [device, setDevice] = useState(() => deviceName(settings) ?? '');
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
      <Field
        label="This device’s name"
        max={120}
        value={device}
        hint="Such as “bench phone”. Written instead of a name where nobody is named."
        onInput={(name) => {
          setDevice(name);
          setDeviceName(settings, name);
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
const WORDS = [
  { value: 'mould', word: 'As in Britain' },
  { value: 'mold', word: 'As in America' },
] as const;
const TEXT_SIZES = [
  { value: '', word: 'Normal' },
  { value: '115%', word: 'Large' },
  { value: '135%', word: 'Larger' },
] as const;
type Theme = (typeof THEMES)[number]['value'];

export function LookCard() {
  const deps = useDeps();
  const { settings } = deps;
  const [theme, setTheme] = useState<Theme>(() => settings.get<Theme>('theme') ?? 'auto');
  const [textSize, setTextSize] = useState(() => settings.get<string>('text-size') ?? '');
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
      <Choices
        legend="Text"
        options={TEXT_SIZES}
        picked={[textSize]}
        onPick={([picked = '']) => {
          setTextSize(picked);
          settings.set('text-size', picked);
          document.documentElement.style.fontSize = picked;
        }}
      />
      <Choices
        legend="Words are spelt"
        options={WORDS}
        picked={[spellingOf(deps)]}
        onPick={([picked = 'mould']) => void chooseSpelling(deps, picked)}
      />
      <p class="field-hint" translate={false}>
        “Mould, colour” or “mold, color”, on every screen. What you have written yourself stays as it is.
      </p>
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
