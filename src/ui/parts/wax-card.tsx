import type { Verdict } from '../../domain/wax-choice.ts';
import type { WaxCard } from '../../views/wax-today.ts';
import { to } from '../router.ts';
import { Button } from './button.tsx';
import { Mark, type Tone } from './mark.tsx';
import type { ShapeName } from './shape.tsx';

const WAX_TASKS = ['receive', 'weigh', 'discard', 'fill'] as const;
export type WaxTask = (typeof WAX_TASKS)[number];

const LOOK: Readonly<Record<Verdict, { readonly shape: ShapeName; readonly tone: Tone }>> = {
  yes: { shape: 'yes', tone: 'good' },
  'take care': { shape: 'worn', tone: 'soon' },
  no: { shape: 'failed', tone: 'act' },
};
const TASK_WORD: Readonly<Record<WaxTask, string>> = { receive: 'Receive', weigh: 'Weigh', discard: 'Discard', fill: 'Fill injector' };

/** One wax: whether it suits, why, how much is left, how it is injected, and what can be done with it. */
export function WaxCardPart({ card, isInjected, onTask }: { card: WaxCard; isInjected: boolean; onTask: (task: WaxTask) => void }) {
  const { shape, tone } = LOOK[card.verdict];
  const colour = card.colour && !card.name.toLowerCase().includes(card.colour.toLowerCase()) ? card.colour : undefined;
  const says = [colour, card.behaviour].filter(Boolean).join(' · ');
  return (
    <article class="card wax-card" data-verdict={card.verdict}>
      <header class="wax-head">
        <h2>
          <a href={to(['thing', card.id])}>{card.name}</a>
        </h2>
        <Mark shape={shape} word={card.verdict} tone={tone} />
      </header>
      {says && <p class="row-detail">{says}</p>}
      <ul class="wax-reasons">
        {card.reasons.map((reason) => (
          <li key={reason.says}>{reason.says}</li>
        ))}
      </ul>
      <dl class="facts">
        <dt>In the tub</dt>
        <dd>
          {card.left} {card.isLow && <Mark shape="low" word="low" tone="soon" />}
          {card.leftWhy && <span class="wax-why">{card.leftWhy}</span>}
        </dd>
        {card.heat && <dt>Inject at</dt>}
        {card.heat && <dd>{card.heat}</dd>}
        {card.pressure && <dt>Pressure</dt>}
        {card.pressure && <dd>{card.pressure}</dd>}
        {isInjected && <dt>Injector</dt>}
        {isInjected && (
          <dd>
            {card.heldBy.length === 0 && 'none holds it'}
            {card.heldBy.map((injector, i) => (
              <span key={injector.id}>
                {i > 0 && ', '}
                {injector.name}
              </span>
            ))}
          </dd>
        )}
      </dl>
      <div class="button-row">
        {WAX_TASKS.filter((task) => task !== 'fill' || isInjected).map((task) => (
          <Button key={task} aria-label={`${TASK_WORD[task]}: ${card.name}`} onClick={() => onTask(task)}>
            {TASK_WORD[task]}
          </Button>
        ))}
      </div>
    </article>
  );
}
