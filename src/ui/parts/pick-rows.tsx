import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { picking } from '../picking.ts';
import { PickBar } from './pick-bar.tsx';
import '../styles/pick.css';

/** A line to choose or leave. */
export interface PickRow {
  readonly id: string;
  readonly title: string;
  readonly detail: string;
  readonly marks?: ComponentChildren;
}

/** A list in which several things are chosen, the line it begins from first (none when that is below 0), and what is done with them. What was chosen stays chosen when the list changes. */
export function PickRows({ rows, begin, onDone }: { rows: readonly PickRow[]; begin: number; onDone: () => void }) {
  const [first] = useState(() => rows[Math.max(0, begin)]?.id ?? '');
  const [chosen, setChosen] = useState<readonly string[]>(() => (begin < 0 ? [] : [first]));
  /** From where Shift chooses a stretch, and whether it is held. */
  const hand = useRef({ anchor: first, isShift: false });
  useEffect(() => {
    picking.value = { ids: chosen, stop: onDone };
  }, [chosen, onDone]);
  useEffect(
    () => () => {
      picking.value = null;
    },
    [],
  );

  function toggle(id: string, isOn: boolean): void {
    const ids = rows.map((row) => row.id);
    const [from, to] = [ids.indexOf(hand.current.anchor), ids.indexOf(id)];
    const stretch = hand.current.isShift && from >= 0 ? ids.slice(Math.min(from, to), Math.max(from, to) + 1) : [id];
    hand.current.anchor = id;
    setChosen(isOn ? [...new Set([...chosen, ...stretch])] : chosen.filter((each) => !stretch.includes(each)));
  }

  return (
    <>
      <ul class="list">
        {rows.map(({ id, title, detail, marks }) => (
          <li key={id} class="row">
            <label
              class="row-link pick-row"
              onPointerDown={(event) => {
                hand.current.isShift = event.shiftKey;
              }}
              onKeyDown={(event) => {
                hand.current.isShift = event.shiftKey;
              }}
            >
              <input
                type="checkbox"
                checked={chosen.includes(id)}
                {...(id === first ? { ref: focusOnce } : {})}
                onChange={(event) => toggle(id, event.currentTarget.checked)}
              />
              <span class="row-words">
                <span class="row-title">{title}</span>
                {detail && <span class="row-detail">{detail}</span>}
                {marks && <span class="row-marks">{marks}</span>}
              </span>
            </label>
          </li>
        ))}
      </ul>
      <PickBar ids={chosen} onAll={() => setChosen([...new Set([...chosen, ...rows.map(({ id }) => id)])])} onDone={onDone} />
    </>
  );
}

/** The line from which choosing began had the focus as a link. */
function focusOnce(input: HTMLInputElement | null): void {
  if (input && document.activeElement === document.body) input.focus({ preventScroll: true });
}
