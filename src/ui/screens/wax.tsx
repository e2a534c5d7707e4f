import { useState } from 'preact/hooks';
import type { WaxId } from '../../domain/brand.ts';
import { isProblem } from '../../domain/problem.ts';
import { parseTypedNumber } from '../../domain/typed-number.ts';
import { celsiusFrom, type Units } from '../../domain/units.ts';
import { waxToday } from '../../views/wax-today.ts';
import { LinkButton } from '../parts/button.tsx';
import { FillSheet } from '../parts/fill-sheet.tsx';
import { Caution, Empty, ProblemNote } from '../parts/note.tsx';
import { RoomMonths } from '../parts/room-months.tsx';
import { RoomNow } from '../parts/room-now.tsx';
import { Screen } from '../parts/screen.tsx';
import { TakeList } from '../parts/take-list.tsx';
import { WaxCardPart, type WaxTask } from '../parts/wax-card.tsx';
import { WaxSheet } from '../parts/wax-sheet.tsx';
import { to } from '../router.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { useDraft } from '../use-draft.ts';
import { inUnits, useUnits } from '../use-units.ts';
import '../styles/wax.css';

/** A room people work in; anything beyond is a slip of the finger. °C. */
const [COLDEST, WARMEST] = [-20, 50];

function readRoom(typed: string, units: Units): { readonly roomC?: number; readonly problem?: string } {
  const number = parseTypedNumber(typed);
  if (isProblem(number)) return { problem: number.says };
  if (number === undefined) return {};
  const roomC = celsiusFrom(number, units.temperature);
  return roomC < COLDEST || roomC > WARMEST ? { problem: `${number} ${units.temperature} is hardly a workshop.` } : { roomC };
}

/** Which wax suits the room, how much of each is left, and what is done with it. */
export function WaxScreen(_: object) {
  const deps = useDeps();
  const shelf = useShelf();
  const units = useUnits();
  const today = deps.today();
  const [open, setOpen] = useState<{ readonly task: WaxTask; readonly wax: WaxId } | undefined>();
  // A reading is of its day: tomorrow starts from the season again.
  const { values, set, problem: lost } = useDraft(inUnits('room-now', units), () => ({ typed: '', on: today as string }));
  const typed = values.on === today ? values.typed : '';
  const { roomC, problem } = readRoom(typed, units);
  const view = waxToday(shelf, today, roomC, units);
  const openWax = open && shelf.things.wax.get(open.wax);
  const openName = view.cards.find((card) => card.id === open?.wax)?.name ?? '';
  const close = () => setOpen(undefined);

  return (
    <Screen title="Wax for today" hasBack={false}>
      {lost && <ProblemNote problem={lost} />}
      <RoomNow typed={typed} onType={(next) => set({ typed: next, on: today })} today={view} units={units} problem={problem} />
      {view.cards.length === 0 ? (
        <Empty
          title="No wax recorded yet"
          actions={
            <LinkButton look="main" href={to(['new', 'wax'])}>
              Add a wax
            </LinkButton>
          }
        >
          <p>Here stands each wax of the studio: whether it suits today’s room, how much is left, and which injector holds it.</p>
        </Empty>
      ) : (
        <>
          <Caution>
            Hot wax under pressure burns. Let the pressure off before opening an injector or clearing its nozzle, and shield your eyes. The
            maker’s data sheet comes first.
          </Caution>
          <div class="wax-cards">
            {view.cards.map((card) => (
              <WaxCardPart
                key={card.id}
                card={card}
                isInjected={shelf.things.wax.get(card.id)?.use !== 'sticky'}
                onTask={(task) => setOpen({ task, wax: card.id })}
              />
            ))}
          </div>
          <p class="row-detail">The room ranges are the studio’s own figures; a wax’s colour means nothing by itself.</p>
          <TakeList shown={{ of: 'waxes', roomC }} />
        </>
      )}
      <RoomMonths />
      <div class="button-row">
        <LinkButton href={to(['new', 'wax'])}>Add a wax</LinkButton>
        <LinkButton href={to(['new', 'injector'])}>Add an injector</LinkButton>
      </div>
      {openWax && open.task === 'fill' && <FillSheet wax={openWax.id} name={openName} onClose={close} />}
      {openWax && open.task !== 'fill' && (
        <WaxSheet
          key={`${open.task} ${openWax.id}`}
          task={open.task}
          wax={openWax.id}
          name={openName}
          grams={openWax.grams}
          onClose={close}
        />
      )}
    </Screen>
  );
}
