import { Shape } from '../parts/shape.tsx';
import { go } from '../router.ts';
import { useDeps } from '../studio.tsx';

/** First opening: three ways in. */
export function DoorsScreen({ onEnter }: { onEnter: () => void }) {
  const { settings } = useDeps();
  const enter = (address: string) => {
    settings.set('entered', true);
    onEnter();
    go(address);
  };
  return (
    <main class="doors">
      <h1>Mouldkeep</h1>
      <p class="doors-lead">Which drawer, which mould, which wax: your studio’s shelves on your own phone, with or without a network.</p>
      <div class="doors-row">
        <a class="door" href="?demo">
          <Shape name="sound" size={28} />
          <strong>Look around the demo studio</strong>
          <span>Tern Quay Foundry, an invented studio with two years of work. It is kept apart from anything of yours.</span>
        </a>
        <button type="button" class="door" onClick={() => enter('#/bring-in')}>
          <Shape name="low" size={28} />
          <strong>Bring in my list</strong>
          <span>
            A spreadsheet or a pasted table of moulds, masters, waxes or drawers. You see what each row becomes before anything is kept.
          </span>
        </button>
        <button type="button" class="door" onClick={() => enter('#/?add=cabinet')}>
          <Shape name="unknown" size={28} />
          <strong>Start with an empty cabinet</strong>
          <span>Draw a cabinet by rows and columns and put the first mould in it. A name and a place are enough.</span>
        </button>
      </div>
      <p class="doors-foot">
        <button type="button" class="button button-plain" onClick={() => enter('#/backup')}>
          I have a backup
        </button>
      </p>
      <p class="doors-foot">
        Everything stays on this device. Put Mouldkeep on the home screen before you type anything in: an installed app and a browser tab
        may keep separate shelves.
      </p>
    </main>
  );
}
