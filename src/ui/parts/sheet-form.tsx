import type { ComponentChildren } from 'preact';
import { Button } from './button.tsx';

interface SheetFormProps {
  /** What is wrong with what was typed. */
  wrong: string | undefined;
  onDone: () => void;
  children: ComponentChildren;
}

/** Fields in a sheet that are taken together, by Done or the Enter key. */
export function SheetForm({ wrong, onDone, children }: SheetFormProps) {
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        onDone();
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
  );
}
