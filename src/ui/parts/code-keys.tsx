import { useEffect, useId, useRef, useState } from 'preact/hooks';
import type { Code } from '../../domain/brand.ts';
import { CROCKFORD, normaliseBase32 } from '../../domain/crockford.ts';
import { BODY_LENGTH, parseCode } from '../../domain/label.ts';
import { isProblem, type Problem } from '../../domain/problem.ts';
import { Button } from './button.tsx';
import { ProblemNote } from './note.tsx';

/** Every character a code can have; U only as its last. */
const KEYS = [...CROCKFORD, 'U'].sort();
const LENGTH = BODY_LENGTH + 1;

/** Typing a code, with keys large enough for waxy thumbs. It is checked once it is complete, and when Enter is pressed. */
export function CodeKeys({ onCode }: { onCode: (code: Code) => void }) {
  const id = useId();
  const input = useRef<HTMLInputElement>(null);
  const [typed, setTyped] = useState('');
  const [wrong, setWrong] = useState<Problem | undefined>();

  // Whoever asked to type wants to type at once.
  useEffect(() => input.current?.focus(), []);

  function check(text: string): void {
    const code = parseCode(text);
    setWrong(isProblem(code) ? code : undefined);
    if (!isProblem(code)) onCode(code);
  }

  function write(text: string): void {
    setTyped(text);
    setWrong(undefined);
    if (text.includes('//') || normaliseBase32(text).length >= LENGTH) check(text);
  }

  const left = LENGTH - normaliseBase32(typed).length;
  return (
    <form
      class="code-keys"
      onSubmit={(event) => {
        event.preventDefault();
        check(typed);
      }}
    >
      <label for={id}>The code on the label</label>
      <div class="code-keys-row">
        <input
          id={id}
          ref={input}
          value={typed}
          // The keys below do it; the phone's own would cover them. A keyboard with real keys still works.
          inputMode="none"
          autoComplete="off"
          autoCapitalize="characters"
          spellcheck={false}
          maxLength={500}
          aria-invalid={wrong ? 'true' : undefined}
          onInput={(event) => write(event.currentTarget.value)}
        />
        <Button disabled={typed === ''} onClick={() => write(typed.slice(0, -1))}>
          Delete
        </Button>
      </div>
      {wrong ? (
        <ProblemNote problem={wrong} />
      ) : (
        <p class="field-hint">{left === 1 ? '1 more character.' : `${Math.max(0, left)} more characters.`} O is read as 0, I and L as 1.</p>
      )}
      <div class="code-keys-grid">
        {KEYS.map((key) => (
          <button key={key} type="button" class="code-key" disabled={left <= 0} onClick={() => write(typed + key)}>
            {key}
          </button>
        ))}
      </div>
    </form>
  );
}
