import type { Front } from '../../views/front.ts';
import { countsInWords, markInWords } from '../../views/front-words.ts';
import { FLAG_SHAPE, LEVEL_TONE } from '../flag-look.ts';
import { Mark } from './mark.tsx';

/** Places with what is in them, readable at any size. */
export function FrontList({ fronts, hrefOf }: { fronts: readonly Front[]; hrefOf: (front: Front) => string }) {
  return (
    <ul class="list">
      {fronts.map((front) => (
        <li key={front.id} class="row">
          <a class="row-link" href={hrefOf(front)}>
            <span class="front-label row-label">{front.label}</span>
            <span class="row-words">
              <span class="row-title">{[front.name, ...front.periods].filter(Boolean).join(' · ') || front.kind}</span>
              <span class="row-detail">
                {countsInWords(front)}
                {front.capacity !== undefined && ` · ${front.capacity} fit`}
              </span>
              {front.marks.length > 0 && (
                <span class="row-marks">
                  {front.marks.map((mark) => (
                    <Mark
                      key={`${mark.level}${mark.kind}`}
                      shape={FLAG_SHAPE[mark.kind]}
                      word={markInWords(mark)}
                      tone={LEVEL_TONE[mark.level]}
                    />
                  ))}
                </span>
              )}
            </span>
          </a>
        </li>
      ))}
    </ul>
  );
}
