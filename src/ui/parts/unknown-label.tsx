import { useState } from 'preact/hooks';
import { putLabel } from '../../actions/put-label.ts';
import type { Code } from '../../domain/brand.ts';
import { nounOfCode } from '../../domain/label.ts';
import { isProblem } from '../../domain/problem.ts';
import { NOUN_WORD } from '../../domain/title.ts';
import type { Bearer } from '../../views/find-code.ts';
import { labelCandidates } from '../../views/label-candidates.ts';
import { addressOf } from '../address.ts';
import { goInstead, to } from '../router.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { Button, LinkButton } from './button.tsx';
import { Field } from './field.tsx';
import { Sheet } from './sheet.tsx';
import { sayOutcome, sayProblem } from './toast.tsx';

/** A sound label that nothing here carries, and what can be done with it. */
export function UnknownLabel({ code }: { code: Code }) {
  const [isChoosing, setChoosing] = useState(false);
  const word = NOUN_WORD[nounOfCode(code)];
  return (
    <section class="card">
      <h2>Nothing here carries {code}</h2>
      <p>The label itself is sound, and it is of the kind for a {word}. Perhaps it is new, or the other phone knows it.</p>
      <div class="label-reader-ways">
        <LinkButton look="main" href={to(['new', nounOfCode(code)], { code })}>
          Record a new {word} with this label
        </LinkButton>
        <Button onClick={() => setChoosing(true)}>Put this label on a {word} that is here</Button>
      </div>
      {isChoosing && <ChooseBearer code={code} onClose={() => setChoosing(false)} />}
    </section>
  );
}

function ChooseBearer({ code, onClose }: { code: Code; onClose: () => void }) {
  const deps = useDeps();
  const shelf = useShelf();
  const [typed, setTyped] = useState('');
  const { shown, more } = labelCandidates(shelf, code, typed);
  const word = NOUN_WORD[nounOfCode(code)];

  async function choose({ thing, title }: Bearer): Promise<void> {
    const outcome = await putLabel(deps, thing.id, code);
    if (isProblem(outcome)) return sayProblem(outcome);
    sayOutcome(outcome, `${title} now carries ${code}.`);
    goInstead(addressOf(thing));
  }

  return (
    <Sheet title={`Which ${word} gets ${code}?`} onClose={onClose}>
      <Field label="Its name, or a part of it" value={typed} onInput={setTyped} keys="search" />
      <ul class="bearers">
        {shown.map((bearer) => (
          <li key={bearer.thing.id}>
            <Button class="bearer" onClick={() => choose(bearer)}>
              <strong>{bearer.title}</strong>
              <span>{bearer.thing.code ? `instead of ${bearer.thing.code} · ${bearer.detail}` : `no label yet · ${bearer.detail}`}</span>
            </Button>
          </li>
        ))}
      </ul>
      {shown.length === 0 && <p>No {word} here is called that.</p>}
      {more > 0 && <p>{more} more: type a few letters more of its name.</p>}
    </Sheet>
  );
}
