import { orderPlaces } from '../../actions/order-places.ts';
import { record } from '../../actions/record.ts';
import type { PlaceId } from '../../domain/brand.ts';
import { beside } from '../../domain/form-problem.ts';
import { type RoomCard, roomsOf } from '../../views/rooms.ts';
import { Button, LinkButton } from '../parts/button.tsx';
import { Field } from '../parts/field.tsx';
import { Empty, ProblemNote } from '../parts/note.tsx';
import { SaveProblem } from '../parts/save-problem.tsx';
import { Screen } from '../parts/screen.tsx';
import { to } from '../router.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { useDraft } from '../use-draft.ts';
import { type Save, useSave } from '../use-save.ts';
import '../styles/draw.css';

/** Rooms, the cabinets in each, and the order they stand in. */
export function RoomsScreen() {
  const rooms = roomsOf(useShelf());
  const save = useSave();
  return (
    <Screen
      title="Rooms and cabinets"
      actions={
        <LinkButton look="main" href="#/draw/new">
          Draw a cabinet
        </LinkButton>
      }
    >
      <SaveProblem save={save} />
      {rooms.length === 0 && <Empty title="No room and no cabinet is recorded yet" />}
      {rooms.map((room) => (
        <RoomPart key={room.id ?? ''} room={room} save={save} />
      ))}
      <NewRoom />
    </Screen>
  );
}

function RoomPart({ room: { id, name, cabinets }, save }: { room: RoomCard; save: Save }) {
  const deps = useDeps();
  const ids = cabinets.map((cabinet) => cabinet.id);
  const swap = (at: number) => {
    const next = [...ids];
    next.splice(at - 1, 2, ids[at] as PlaceId, ids[at - 1] as PlaceId);
    void save.run(
      () => orderPlaces(deps, next),
      () => 'They stand in this order now.',
    );
  };
  return (
    <section class="card" aria-label={name}>
      <h2>{name}</h2>
      {cabinets.length === 0 && <p class="field-hint">No cabinet stands here yet.</p>}
      <ol class="list">
        {cabinets.map((cabinet, at) => (
          <li key={cabinet.id} class="rooms-row">
            <a class="row-link" href={to(['shelves', cabinet.id])}>
              <span class="row-words">
                <span class="row-title">{cabinet.name}</span>
                <span class="row-detail">{cabinet.says}</span>
              </span>
            </a>
            <div class="draw-tools">
              <Button aria-label={`${cabinet.name}: earlier`} disabled={at === 0 || save.isBusy} onClick={() => swap(at)}>
                ↑
              </Button>
              <Button
                aria-label={`${cabinet.name}: later`}
                disabled={at === cabinets.length - 1 || save.isBusy}
                onClick={() => swap(at + 1)}
              >
                ↓
              </Button>
              <LinkButton href={to(['draw', cabinet.id])}>Draw</LinkButton>
              <LinkButton href={to(['move'], { things: cabinet.id })}>Another room</LinkButton>
            </div>
          </li>
        ))}
      </ol>
      {id && (
        <div class="draw-row">
          <LinkButton href={to(['edit', id])}>Rename the room</LinkButton>
          <LinkButton href={to(['place', id])}>About the room</LinkButton>
        </div>
      )}
    </section>
  );
}

function NewRoom() {
  const deps = useDeps();
  const { values, set, clear, problem } = useDraft('new-room', () => ({ name: '' }));
  const save = useSave(values);
  return (
    <form
      class="card"
      onSubmit={(event) => {
        event.preventDefault();
        void save.run(
          (confirmed) => record(deps, { noun: 'place', fields: { name: values.name, kind: 'room' }, confirmed }),
          () => {
            clear();
            set({ name: '' });
            return `${values.name.trim()} is recorded.`;
          },
        );
      }}
    >
      <h2>A new room</h2>
      <Field
        label="What you call it"
        value={values.name}
        max={120}
        problem={beside(save.problem, 'name')}
        onInput={(name) => set({ name })}
      />
      {problem && <ProblemNote problem={problem} />}
      <SaveProblem save={save} anyway="Add it all the same" />
      <Button type="submit" disabled={save.isBusy}>
        Add the room
      </Button>
    </form>
  );
}
