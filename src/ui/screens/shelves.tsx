import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { isBeginning } from '../../views/first-steps.ts';
import { type CabinetFront, type Fronts, frontsOf } from '../../views/fronts.ts';
import { cabinetOf, chosenBefore, currentOf, ELSEWHERE, keyOf } from '../chosen-cabinet.ts';
import { frontsOfLastTime, useRemembered } from '../early-fronts.tsx';
import { usePane } from '../pane.tsx';
import { AddCabinetSheet } from '../parts/add-cabinet-form.tsx';
import { Button, LinkButton } from '../parts/button.tsx';
import { CabinetList } from '../parts/cabinet-list.tsx';
import { CabinetPager } from '../parts/cabinet-pager.tsx';
import { DrawerContents } from '../parts/drawer-contents.tsx';
import { Elsewhere } from '../parts/elsewhere.tsx';
import { HereStrip } from '../parts/here-strip.tsx';
import { Hint } from '../parts/hint.tsx';
import { lazy } from '../parts/lazy.tsx';
import { Empty } from '../parts/note.tsx';
import { Screen } from '../parts/screen.tsx';
import { Sheet } from '../parts/sheet.tsx';
import { ShelvesTools } from '../parts/shelves-tools.tsx';
import { back, go, goInstead, type Route, to } from '../router.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { useLate } from '../use-late.ts';
import { attentionSeen, marksSeen } from '../watch-attention.ts';

const BackupNote = lazy(async () => (await import('../parts/backup-reminder.tsx')).BackupNote, null);

/** Already inside the list's landmark when that stands beside something. */
const CONTENTS = { role: 'complementary', 'aria-label': 'Contents' } as const;

/** The first screen: your own cabinets as they stand in the workshop. */
export function ShelvesScreen({ cabinet }: { cabinet: string }) {
  const shelf = useShelf();
  const seen = attentionSeen.value;
  // Until the first look is done the fronts of last time stay: they are the same but for what happened since.
  const early = frontsOfLastTime();
  const fronts = seen || !early ? frontsOf(shelf, marksSeen()) : early;
  useRemembered(seen ? fronts : null);
  const { here } = usePane();
  const isAsked = here.query.get('add') === 'cabinet';
  const [isAdding, setAdding] = useState(isAsked);
  const add = () => setAdding(true);
  return (
    <Screen title="Shelves" hasBack={false} tools={<ShelvesTools onAddCabinet={add} />}>
      {fronts.cabinets.length === 0 && fronts.elsewhere.length === 0 ? (
        <NoCabinets onAdd={add} fronts={fronts} />
      ) : (
        <Cabinets fronts={fronts} asked={cabinet} />
      )}
      {seen && <BackupNote />}
      {isAdding && (
        <AddCabinetSheet
          onClose={() => {
            setAdding(false);
            if (isAsked) goInstead('#/');
          }}
        />
      )}
    </Screen>
  );
}

function NoCabinets({ onAdd, fronts }: { onAdd: () => void; fronts: Fronts }) {
  return (
    <Empty
      title="Your cabinets belong here"
      actions={
        <>
          <Button look="main" onClick={onAdd}>
            Add a cabinet
          </Button>
          <LinkButton href="#/draw/new">Draw one yourself</LinkButton>
          <LinkButton href="#/bring-in">Bring in my list</LinkButton>
          <LinkButton href="#/new/mould">Record a mould</LinkButton>
        </>
      }
    >
      <p>Each one is drawn as it stands in the workshop, drawer by drawer, with what it holds and what needs a look.</p>
      {fronts.nowhere > 0 && (
        <p>
          <a class="button" href="#/place/nowhere">
            {fronts.nowhere} recorded without a place
          </a>
        </p>
      )}
    </Empty>
  );
}

/** The list lies below the glass: it follows a frame later, and only when something of it is another. */
function LateList({ cabinet, at, hrefOf }: { cabinet: CabinetFront; at: Route; hrefOf: (id: string) => string }) {
  const late = useLate(cabinet);
  const shown = late && late.id !== cabinet.id ? cabinet : late;
  const href = useRef(hrefOf);
  href.current = hrefOf;
  // Where it leads to is a matter of the address it stands at.
  return useMemo(() => shown && <CabinetList cabinet={shown} hrefOf={(id) => href.current(id)} />, [shown, at]) ?? null;
}

function Cabinets({ fronts, asked }: { fronts: Fronts; asked: string }) {
  const deps = useDeps();
  const shelf = useShelf();
  const { here, isBeside, isDesk } = usePane();
  const drawer = here.query.get('drawer') ?? '';
  const sought = here.query.get('thing') ?? '';
  const ofDrawer = cabinetOf(fronts, drawer);
  const [chosen, setChosen] = useState<string>(() => asked || chosenBefore(deps.settings, deps.keeper.name));
  const current = currentOf(fronts, chosen);
  // A drawer asked for brings its own cabinet.
  useEffect(() => {
    if (ofDrawer) setChosen(ofDrawer);
  }, [ofDrawer, drawer]);
  const shownDrawer = ofDrawer ? drawer : '';
  const cabinet = fronts.cabinets.find(({ id }) => id === current);
  const front = cabinet?.fronts.find(({ id }) => id === shownDrawer);
  const isOpen = here.query.get('open') === 'yes';
  const opened = (id: string) => to(here.parts, { drawer: id, open: 'yes', ...(sought ? { thing: sought } : {}) });
  const show = (id: string) => {
    const address = opened(id);
    // On a phone Back closes the drawer; on a desk going from drawer to drawer leaves no trail of steps.
    if (isDesk && isOpen) goInstead(address);
    else go(address);
  };
  return (
    <div class="shelves">
      <div class="shelves-fronts">
        {isBeginning(shelf) && !front && <Hint step="drawer">tap the drawer that your first mould lies in.</Hint>}
        <CabinetPager
          fronts={fronts}
          current={current}
          elsewhere={ELSEWHERE}
          picked={shownDrawer}
          onPick={show}
          onTurn={(id) => {
            setChosen(id);
            deps.settings.set(keyOf(deps.keeper.name), id);
          }}
        />
        {current === ELSEWHERE && <Elsewhere fronts={fronts} />}
        {cabinet && !isDesk && <LateList cabinet={cabinet} at={here} hrefOf={opened} />}
      </div>
      {isDesk && (
        <div class="shelves-aside" {...(isBeside ? {} : CONTENTS)}>
          {front ? (
            <>
              <h2>{front.label}</h2>
              <DrawerContents key={front.id} id={front.id} sought={sought} />
            </>
          ) : (
            cabinet && <CabinetList cabinet={cabinet} hrefOf={opened} />
          )}
        </div>
      )}
      {!isDesk && front && isOpen && (
        <Sheet title={front.label} onClose={back}>
          <DrawerContents key={front.id} id={front.id} sought={sought} />
        </Sheet>
      )}
      {!isDesk && front && !isOpen && (
        <HereStrip front={front} cabinet={cabinet?.name ?? ''} sought={sought} onOpen={() => show(front.id)} />
      )}
    </div>
  );
}
