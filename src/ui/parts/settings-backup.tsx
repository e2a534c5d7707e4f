import { LastBackupFacts } from './backup-facts.tsx';
import { BackupLine } from './backup-reminder.tsx';
import { LinkButton } from './button.tsx';

/** The last backup, and the way to make and open one. */
export function BackupCard() {
  return (
    <section class="card">
      <h2>Backup</h2>
      <LastBackupFacts />
      <BackupLine />
      <div class="button-row">
        <LinkButton href="#/backup">Make or open a backup</LinkButton>
      </div>
    </section>
  );
}
