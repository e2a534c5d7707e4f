import type { Thing } from '../domain/shelf.ts';
import { to } from './router.ts';

export interface MakeLink {
  readonly word: string;
  readonly href: string;
}

/** The forms that carry a lineage on: a mould of this master, a wax or casting that becomes a master. */
export function makeFrom(thing: Thing): readonly MakeLink[] {
  if (thing.retired) return [];
  const { id, noun } = thing;
  const named = {
    ...('design' in thing && thing.design ? { design: thing.design } : {}),
    ...('size' in thing && thing.size ? { size: thing.size } : {}),
  };
  const asMaster = (kind: string, more: Readonly<Record<string, string>>) => to(['new', 'master'], { ...named, kind, from: id, ...more });
  switch (noun) {
    case 'master':
      return [{ word: 'Make a mould from this', href: to(['new', 'mould'], { ...named, master: id }) }];
    case 'mould':
      return [{ word: 'Keep a wax of it as a master', href: asMaster('dressed wax', {}) }];
    case 'injectedWax':
      return [{ word: 'Keep this wax as a master', href: asMaster('dressed wax', { off: id }) }];
    case 'casting':
      return [
        { word: 'Make a mould from this', href: asMaster('casting', { off: id, next: 'mould' }) },
        { word: 'This casting is a master now', href: asMaster('casting', { off: id }) },
      ];
    default:
      return [];
  }
}
