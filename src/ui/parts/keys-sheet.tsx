import { KEYS } from '../keys.ts';
import { Sheet } from './sheet.tsx';
import '../styles/desk.css';

/** Every key and what it does. */
export function KeysSheet({ onClose }: { onClose: () => void }) {
  return (
    <Sheet title="Keys" onClose={onClose}>
      <dl class="keys">
        {KEYS.map(({ key, shown, says }) => (
          <div key={key}>
            <dt>
              <kbd>{shown ?? key}</kbd>
            </dt>
            <dd>{says}</dd>
          </div>
        ))}
      </dl>
      <p class="field-hint">
        They do nothing while you type in a field. A scanner that types is understood on every screen: scan a label and what carries it
        opens. <a href="#/settings">Settings</a> can switch the keys off.
      </p>
    </Sheet>
  );
}
