import { useState } from 'preact/hooks';
import { Button, LinkButton } from './button.tsx';
import { Icon } from './icon.tsx';
import { Sheet } from './sheet.tsx';

/** In the header of the shelves: what can be added, and the settings. */
export function ShelvesTools({ onAddCabinet }: { onAddCabinet: () => void }) {
  const [isOpen, setOpen] = useState(false);
  return (
    <>
      <button type="button" class="icon-button" aria-label="Add" onClick={() => setOpen(true)}>
        <Icon name="plus" />
      </button>
      <a class="icon-button" href="#/settings" aria-label="Settings">
        <Icon name="settings" />
      </a>
      {isOpen && (
        <Sheet title="Add to the shelves" onClose={() => setOpen(false)}>
          <div class="menu">
            <LinkButton href="#/new/mould">A mould</LinkButton>
            <LinkButton href="#/new/master">A master</LinkButton>
            <LinkButton href="#/new/design">A design</LinkButton>
            <LinkButton href="#/new/wax">A wax</LinkButton>
            <LinkButton href="#/new/period">A period</LinkButton>
            <Button
              onClick={() => {
                setOpen(false);
                onAddCabinet();
              }}
            >
              A cabinet with drawers
            </Button>
            <LinkButton href="#/draw/new">A cabinet, drawn by you</LinkButton>
            <LinkButton href="#/rooms">Rooms and cabinets</LinkButton>
            <LinkButton href="#/new/place">Another place</LinkButton>
            <LinkButton href="#/new">Anything else…</LinkButton>
            <LinkButton href="#/bring-in">A whole list</LinkButton>
          </div>
        </Sheet>
      )}
    </>
  );
}
