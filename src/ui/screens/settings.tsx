import { useState } from 'preact/hooks';
import { LinkButton } from '../parts/button.tsx';
import { Screen } from '../parts/screen.tsx';
import { CopyCard } from '../parts/settings-copy.tsx';
import { InstallCard, LookCard, WhoCard } from '../parts/settings-device.tsx';
import { KeepingCard } from '../parts/settings-keeping.tsx';
import { RepairCard } from '../parts/settings-repair.tsx';
import { StudioCard } from '../parts/settings-studio.tsx';
import { UnitsCard } from '../parts/settings-units.tsx';
import '../styles/settings.css';

/** How safely the shelves are kept, copies of them, the studio’s figures, and what holds for this device alone. */
export function SettingsScreen() {
  // Only to draw again: what was saved last is a setting, and settings tell nobody.
  const [, setSaved] = useState(0);
  return (
    <Screen title="Settings">
      <KeepingCard />
      <CopyCard onSaved={() => setSaved((count) => count + 1)} />
      <InstallCard />
      <StudioCard />
      <UnitsCard />
      <WhoCard />
      <LookCard />
      <section class="card">
        <h2>Lists</h2>
        <LinkButton href="#/bring-in">Bring in my list</LinkButton>
      </section>
      <RepairCard />
    </Screen>
  );
}
