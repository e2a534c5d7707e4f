import { Screen } from '../parts/screen.tsx';
import { BackupCard } from '../parts/settings-backup.tsx';
import { InstallCard, LookCard, WhoCard } from '../parts/settings-device.tsx';
import { KeepingCard } from '../parts/settings-keeping.tsx';
import { KeysCard } from '../parts/settings-keys.tsx';
import { LabelsCard } from '../parts/settings-labels.tsx';
import { ListsCard } from '../parts/settings-lists.tsx';
import { RepairCard } from '../parts/settings-repair.tsx';
import { StartAgainCard } from '../parts/settings-start-again.tsx';
import { StoredCard } from '../parts/settings-stored.tsx';
import { StudioCard } from '../parts/settings-studio.tsx';
import { TakenBackCard } from '../parts/settings-taken-back.tsx';
import { UnitsCard } from '../parts/settings-units.tsx';
import '../styles/settings.css';

/** How safely the shelves are kept, copies of them, the studio’s figures, and what holds for this device alone. */
export function SettingsScreen() {
  return (
    <Screen title="Settings">
      <KeepingCard />
      <BackupCard />
      <InstallCard />
      <StudioCard />
      <UnitsCard />
      <WhoCard />
      <LookCard />
      <KeysCard />
      <ListsCard />
      <LabelsCard />
      <StoredCard />
      <TakenBackCard />
      <RepairCard />
      <StartAgainCard />
    </Screen>
  );
}
