import { route } from './router.ts';

/** The move form as typed, and the list it has gathered. */
export interface MoveDraft {
  readonly things: readonly string[];
  readonly how: string;
  readonly to: string;
  readonly holder: string;
  readonly until: string;
  readonly note: string;
}

/** What the address asks for. */
export function startMove(): MoveDraft {
  const { query } = route.value;
  return {
    things: (query.get('things') ?? '').split(',').filter(Boolean),
    how: query.get('lend') === 'yes' ? 'lend' : 'move',
    to: query.get('to') ?? '',
    holder: query.get('holder') ?? '',
    until: '',
    note: '',
  };
}
