import type { RowPlan, RowState } from '../../domain/csv/plan.ts';
import { sayNumber } from '../../domain/measure-words.ts';
import type { Noun } from '../../domain/noun.ts';
import { Mark, type Tone } from './mark.tsx';
import type { ShapeName } from './shape.tsx';

export const STATE_WORDS: Readonly<Record<RowState, { readonly shape: ShapeName; readonly word: string; readonly tone: Tone }>> = {
  new: { shape: 'yes', word: 'new', tone: 'good' },
  exists: { shape: 'sound', word: 'already there', tone: 'note' },
  doubtful: { shape: 'worn', word: 'doubtful', tone: 'soon' },
  unreadable: { shape: 'failed', word: 'cannot be read', tone: 'act' },
};

const SINGULAR: Partial<Record<Noun, string>> = {
  wax: 'wax',
  place: 'place',
  period: 'period',
  design: 'design',
  master: 'master',
  mould: 'mould',
};

export function thingWords({ noun, count }: { readonly noun: Noun; readonly count: number }): string {
  const one = SINGULAR[noun] ?? noun;
  const many = noun === 'wax' ? 'waxes' : `${one}s`;
  return `${sayNumber(count)} ${count === 1 ? one : many}`;
}

/** What one row becomes, as a card. A doubtful one can be taken or left. */
export function ImportRow({ row, isTaken, onFlip }: { row: RowPlan; isTaken: boolean; onFlip: () => void }) {
  return (
    <li class="card import-row">
      <div class="import-row-head">
        <Mark {...STATE_WORDS[row.state]} />
        <span class="row-detail">line {row.line}</span>
      </div>
      <p class="row-title" translate={false}>
        {row.title}
      </p>
      {row.says.map((sentence) => (
        <p key={sentence} class="row-detail">
          {sentence}
        </p>
      ))}
      {row.state === 'doubtful' && (
        <label class="choice import-take">
          <input type="checkbox" checked={isTaken} onChange={onFlip} />
          <span>Bring it in</span>
        </label>
      )}
    </li>
  );
}
