import { lastBackup, reminderNow } from '../../actions/last-backup.ts';
import { dayInWords } from '../../domain/day-words.ts';
import { sinceInWords } from '../backup-words.ts';
import { useDeps, useShelf } from '../studio.tsx';

/** When the last backup was handed over, and what has happened since. */
export function LastBackupFacts() {
  const deps = useDeps();
  useShelf();
  const backup = lastBackup(deps);
  const { since } = reminderNow({ ...deps, isDemo: false });
  return (
    <dl class="facts">
      <dt>Last backup</dt>
      <dd>{backup ? dayInWords(backup.on) : 'None has been made on this device.'}</dd>
      <dt>{backup ? 'Since then' : 'In no backup yet'}</dt>
      <dd>{since ? sinceInWords(since) : 'nothing new'}</dd>
    </dl>
  );
}
