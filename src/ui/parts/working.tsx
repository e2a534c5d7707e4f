import { Button } from './button.tsx';
import '../styles/backup.css';

/** How far a long piece of work has come, and a way to call it off while there is one. */
export function Working({ says, done, total, onStop }: { says: string; done: number; total: number; onStop?: (() => void) | undefined }) {
  return (
    <div class="working">
      <label>
        <span>{says}</span>
        <progress value={done} max={Math.max(total, 1)} />
      </label>
      {onStop && <Button onClick={onStop}>Stop</Button>}
    </div>
  );
}
