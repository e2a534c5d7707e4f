import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { Button } from './button.tsx';
import { Sheet } from './sheet.tsx';

interface FormSheetProps {
  title: string;
  /** Takes what was typed, or says what is wrong with it. */
  take: () => string | undefined;
  onClose: () => void;
  children: ComponentChildren;
}

/** Fields in a sheet that are taken together, by Done, the Enter key, and however else the sheet is left. */
export function FormSheet({ title, take, onClose, children }: FormSheetProps) {
  const [wrong, setWrong] = useState<string | undefined>();
  /** Closing was tried, and what would be lost was said. */
  const [isWarned, setWarned] = useState(false);
  const left = useRef<(() => void) | undefined>(undefined);
  left.current = take;
  // Back leaves the whole screen.
  useEffect(() => () => left.current?.(), []);
  const close = () => {
    left.current = undefined;
    onClose();
  };
  function done(isLeaving: boolean): void {
    if (isLeaving && isWarned) return close();
    const says = take();
    if (says === undefined) return close();
    setWarned(isLeaving);
    setWrong(isLeaving ? `${says} Close once more to leave all of it as it was.` : says);
  }
  return (
    <Sheet title={title} onClose={() => done(true)}>
      <form
        onInput={() => {
          setWrong(undefined);
          setWarned(false);
        }}
        onSubmit={(event) => {
          event.preventDefault();
          done(false);
        }}
      >
        {children}
        {wrong && (
          <p class="field-problem" role="alert">
            {wrong}
          </p>
        )}
        <Button look="main" type="submit">
          Done
        </Button>
      </form>
    </Sheet>
  );
}
