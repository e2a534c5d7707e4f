import { useState } from 'preact/hooks';
import { KeptAside } from '../parts/backup-aside.tsx';
import { MakeBackup } from '../parts/backup-make.tsx';
import { OpenBackup } from '../parts/backup-open.tsx';
import { Screen } from '../parts/screen.tsx';
import '../styles/backup.css';

/** The whole studio to one file, and back. */
export function BackupScreen(_: object) {
  const [restored, setRestored] = useState(0);
  return (
    <Screen title="Backup">
      <MakeBackup />
      <OpenBackup onRestored={() => setRestored(restored + 1)} />
      <KeptAside key={restored} />
    </Screen>
  );
}
