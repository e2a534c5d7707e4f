import { Button } from './button.tsx';

/** Begins choosing several things of the list that follows it; the keyboard says from which line (key-focus.ts). */
export function PickStart({ onStart }: { onStart: (from: number) => void }) {
  return (
    <Button look="quiet" class="pick-start" onClick={({ currentTarget }) => onStart(Number(currentTarget.dataset['from'] ?? -1))}>
      Choose several
    </Button>
  );
}
