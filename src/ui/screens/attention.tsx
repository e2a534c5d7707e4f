import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { setAside } from '../../actions/set-aside.ts';
import { dayInWords } from '../../domain/day-words.ts';
import type { FlagKind } from '../../domain/entry.ts';
import type { Level } from '../../domain/flag.ts';
import { sayCount } from '../../domain/measure-words.ts';
import { type AttentionGroup, type AttentionItem, attentionList } from '../../views/attention-list.ts';
import { lastState } from '../../views/state.ts';
import { addressOf } from '../address.ts';
import { FLAG_SHAPE, LEVEL_TONE } from '../flag-look.ts';
import { BackupLine } from '../parts/backup-reminder.tsx';
import { Button, LinkButton } from '../parts/button.tsx';
import { Mark } from '../parts/mark.tsx';
import { Empty } from '../parts/note.tsx';
import { Screen } from '../parts/screen.tsx';
import { SetAsideSheet } from '../parts/set-aside-sheet.tsx';
import { StateMarks } from '../parts/states.tsx';
import { TakeList } from '../parts/take-list.tsx';
import { sayOutcome } from '../parts/toast.tsx';
import { to } from '../router.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { useUnits } from '../use-units.ts';
import '../styles/attention.css';

const FEW = 5;
const MORE = 25;
const LEVEL_WORD: Readonly<Record<Level, string>> = { act: 'now', soon: 'before long', note: 'good to know' };

/** One list of everything that needs attention, by what to do. */
export function AttentionScreen(_: object) {
  const deps = useDeps();
  const shelf = useShelf();
  const units = useUnits();
  const [shown, setShown] = useState<ReadonlyMap<FlagKind, number>>(new Map());
  const [open, setOpen] = useState<AttentionItem | undefined>();
  const list = attentionList(shelf, deps.today(), units, FEW, shown);
  const levels = (['act', 'soon', 'note'] as const).filter((level) => list.counts[level] > 0);

  return (
    <Screen
      title="To do: needs attention"
      hasBack={false}
      actions={<LinkButton href={to(['remake'])}>Which moulds to make again first</LinkButton>}
    >
      {list.count === 0 ? (
        <Empty title="Nothing needs attention">
          <p>
            Worn and failed moulds, wax running low, over-full drawers, strays, looks that are due and things not brought back will stand
            here.
          </p>
        </Empty>
      ) : (
        <p class="attention-sum">
          {levels.map((level) => (
            <span key={level}>
              {list.counts[level]} {LEVEL_WORD[level]}
            </span>
          ))}
        </p>
      )}
      {list.counts.note > 0 && (
        <p class="field-hint attention-hint">
          The number on “To do” counts what is for now and before long; what is good to know is not in it.
        </p>
      )}
      {list.groups.map((group) => (
        <Group
          key={group.kind}
          group={group}
          onAside={setOpen}
          onMore={() => setShown(new Map(shown).set(group.kind, (shown.get(group.kind) ?? FEW) + MORE))}
        />
      ))}
      <BackupLine />
      {list.count > 0 && <TakeList shown={{ of: 'attention' }} />}
      {list.aside.length > 0 && <Aside items={list.aside} />}
      {open && <SetAsideSheet key={`${open.flag.of} ${open.flag.kind}`} item={open} onClose={() => setOpen(undefined)} />}
    </Screen>
  );
}

function Group({ group, onAside, onMore }: { group: AttentionGroup; onAside: (item: AttentionItem) => void; onMore: () => void }) {
  const left = group.count - group.items.length;
  return (
    <section class="attention-group" data-kind={group.kind}>
      <h2>
        {group.title} <span class="attention-count">{group.count}</span>
      </h2>
      <ul class="list">
        {group.items.map((item) => (
          <Item key={item.flag.of} item={item}>
            <Button look="quiet" aria-label={`Set aside: ${item.title}`} onClick={() => onAside(item)}>
              Set aside…
            </Button>
          </Item>
        ))}
      </ul>
      {left > 0 && (
        <Button onClick={onMore}>
          {left > MORE ? `Show ${MORE} more of ${sayCount(left, 'other')}` : `Show ${sayCount(left, 'other')}`}
        </Button>
      )}
    </section>
  );
}

function Item({ item, children }: { item: AttentionItem; children: ComponentChildren }) {
  const { flag, title, stands } = item;
  const last = lastState(useShelf(), item.id);
  return (
    <li class="card attention-item" data-level={flag.level}>
      <div class="attention-head">
        <a class="attention-title" href={addressOf(item)}>
          {title}
        </a>
        <Mark
          shape={FLAG_SHAPE[flag.kind]}
          word={flag.asideUntil ? 'set aside' : LEVEL_WORD[flag.level]}
          tone={flag.asideUntil ? 'plain' : LEVEL_TONE[flag.level]}
        />
      </div>
      {last.length > 0 && (
        <p class="row-marks">
          <StateMarks states={last} />
        </p>
      )}
      <p>
        {flag.says} <strong>{flag.todo}</strong>
      </p>
      <div class="attention-foot">
        {stands && (
          <a class="attention-place" href={to(['place', stands.id])}>
            {stands.path}
          </a>
        )}
        {children}
      </div>
    </li>
  );
}

function Aside({ items }: { items: readonly AttentionItem[] }) {
  const deps = useDeps();
  return (
    <details class="attention-group">
      <summary>Set aside: {items.length}</summary>
      <ul class="list">
        {items.map((item) => (
          <Item key={`${item.flag.of} ${item.flag.kind}`} item={item}>
            <span class="row-detail">until {item.flag.asideUntil && dayInWords(item.flag.asideUntil)}</span>
            <Button
              aria-label={`Bring back: ${item.title}`}
              onClick={async () => {
                sayOutcome(
                  await setAside(deps, { of: item.flag.of, kind: item.flag.kind, until: null }),
                  `${item.title} is back on the list.`,
                );
              }}
            >
              Bring back
            </Button>
          </Item>
        ))}
      </ul>
    </details>
  );
}
