import { route } from '../router.ts';
import { Icon, type IconName } from './icon.tsx';

const STOPS: readonly { readonly icon: IconName; readonly word: string; readonly path: string }[] = [
  { icon: 'shelves', word: 'Shelves', path: '' },
  { icon: 'find', word: 'Where is', path: 'where' },
  { icon: 'scan', word: 'Scan', path: 'scan' },
  { icon: 'wax', word: 'Wax', path: 'wax' },
  { icon: 'attention', word: 'To do', path: 'attention' },
];

/** The five main screens, one tap from anywhere; at the bottom on a phone, at the side on a desk. */
export function Bar({ attention }: { attention: number }) {
  const here = route.value.parts[0] ?? '';
  return (
    <nav class="bar" aria-label="Main screens">
      {STOPS.map(({ icon, word, path }) => (
        <a
          key={path}
          href={`#/${path}`}
          class={path === 'scan' ? 'bar-stop bar-scan' : 'bar-stop'}
          aria-current={here === path || (path === '' && here === 'shelves') ? 'page' : undefined}
        >
          <Icon name={icon} />
          <span>{word}</span>
          {path === 'attention' && attention > 0 && (
            <span class="bar-count">
              {attention}
              <span class="unseen"> need attention</span>
            </span>
          )}
        </a>
      ))}
    </nav>
  );
}
