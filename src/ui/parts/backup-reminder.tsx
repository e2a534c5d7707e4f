import { useState } from 'preact/hooks';
import { reminderNow, setReminderAside } from '../../actions/last-backup.ts';
import { REMINDER, type Reminder } from '../../domain/backup-reminder.ts';
import { sayCount } from '../../domain/measure-words.ts';
import { sinceInWords } from '../backup-words.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { Button, LinkButton } from './button.tsx';
import '../styles/backup.css';

const SAYS = ({ since, days }: Reminder) =>
  since ? `${sinceInWords(since)} in no backup${days > 1 ? `, over ${sayCount(days, 'day')}` : ''}.` : '';

/** A quiet line where somebody looks anyway. Draws nothing while little is at stake. */
export function BackupLine() {
  const deps = useDeps();
  useShelf();
  const reminder = reminderNow(deps);
  if (reminder.stake === 'quiet') return null;
  return (
    <p class="backup-line">
      {SAYS(reminder)} <a href="#/backup">Make a backup</a>
    </p>
  );
}

/** A plain note at the foot of the shelves, once much is at stake; it can be set aside. */
export function BackupNote(_: object) {
  const deps = useDeps();
  useShelf();
  const [, draw] = useState({});
  const reminder = reminderNow(deps);
  if (reminder.stake !== 'note') return null;
  return (
    <aside class="backup-note" aria-label="Backup">
      <p>{SAYS(reminder)} A lost phone would take them with it.</p>
      <div class="button-row">
        <LinkButton href="#/backup">Make a backup</LinkButton>
        <Button
          look="quiet"
          onClick={() => {
            setReminderAside(deps);
            draw({});
          }}
        >
          Not for {REMINDER.asideDays} days
        </Button>
      </div>
    </aside>
  );
}
