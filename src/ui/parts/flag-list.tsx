import type { Flag, Level } from '../../domain/flag.ts';
import { Mark, type Tone } from './mark.tsx';

const TONE: Readonly<Record<Level, Tone>> = { note: 'note', soon: 'soon', act: 'act' };
const WORD: Readonly<Record<Level, string>> = { note: 'good to know', soon: 'before long', act: 'now' };

/** Why something needs attention, and what to do about it. */
export function FlagList({ flags }: { flags: readonly Flag[] }) {
  if (flags.length === 0) return null;
  return (
    <ul class="flag-list">
      {flags.map((flag) => (
        <li key={flag.kind} class="flag">
          <Mark
            shape={flag.level === 'act' ? 'failed' : flag.level === 'soon' ? 'worn' : 'watch'}
            word={WORD[flag.level]}
            tone={TONE[flag.level]}
          />
          <p>
            {flag.says} <strong>{flag.todo}</strong>
          </p>
        </li>
      ))}
    </ul>
  );
}
