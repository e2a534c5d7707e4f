import { fold } from '../folding.ts';
import { type Named, readNamed } from './named.ts';
import { draftIndex } from './plan.ts';
import type { Found, Register } from './register.ts';
import { kindInName } from './word-cell.ts';

interface Node {
  readonly ref: string;
  parent: string | undefined;
}

/** Where words lead, and what had to be made for it. */
interface Stand {
  readonly ref?: string;
  readonly isNew: boolean;
  readonly doubt?: string;
  readonly made: readonly string[];
}

const PARTED = /\s*[/>›»\\→,;|]\s*|\s+[-–—]\s+/;
/** “A3”, “B-12”: a drawer's label that starts with its cabinet's letter (common practice, no source). */
const LETTERED = /^([A-Z]{1,2})[\s.-]?(\d{1,3})[a-z]?$/;
const KIND_WORDS = /^(?:cabinet|cupboard|cab|drawer|shelf|box|tray|room|rack|unit|chest)\s+/;

/** Places one in another that a cell may name. More are no path but a list, and looking for hundreds of them would take minutes. */
const LEVELS_MAX = 12;

/** Leads words such as “Cabinet A / A3” to a place on the shelf, and makes the places that are missing. */
export class PlaceFinder {
  private readonly register: Register;
  private readonly nodes = new Map<string, Node>();
  private readonly byWord = new Map<string, Node[]>();
  private readonly asWritten = new Map<string, Stand>();
  /** Drafts made because something stands there; a row of a list of places may still give them their fields. */
  readonly implied = new Set<string>();

  constructor(register: Register) {
    this.register = register;
    for (const { id, name, label, in: parent } of register.known.things.place) this.enter(id, parent, name, label);
  }

  /** A place that rows may name from now on. */
  enter(ref: string, parent: string | undefined, ...names: readonly (string | undefined)[]): void {
    this.nodes.set(ref, { ref, parent });
    this.call(ref, ...names);
  }

  /** What a place is called as well, such as the label that a later row gives it. */
  call(ref: string, ...names: readonly (string | undefined)[]): void {
    const node = this.nodes.get(ref);
    if (!node) return;
    this.asWritten.clear();
    const words = names.flatMap((name) => (name ? [fold(name), fold(name).replace(KIND_WORDS, '')] : []));
    for (const word of new Set(words)) {
      const list = this.byWord.get(word);
      if (!list) this.byWord.set(word, [node]);
      else if (!list.includes(node)) list.push(node);
    }
  }

  /** Places of that name; with `above`, only those that stand in places of those names. */
  all(name: string, above: readonly string[] = []): readonly Node[] {
    if (above.length > LEVELS_MAX) return [];
    const word = fold(name);
    const named = this.byWord.get(word) ?? this.byWord.get(word.replace(KIND_WORDS, '')) ?? [];
    return named.filter((node) => this.isUnder(node, above));
  }

  private isUnder(node: Node, above: readonly string[]): boolean {
    let left = [...above];
    const seen = new Set<string>();
    for (let at = node.parent; at !== undefined && left.length > 0 && !seen.has(at); at = this.nodes.get(at)?.parent) {
      seen.add(at);
      const wanted = left.at(-1) as string;
      if (this.all(wanted).some((each) => each.ref === at)) left = left.slice(0, -1);
    }
    return left.length === 0;
  }

  /** Stands one place in another; false, and nothing changed, when that one stands in it already. */
  put(ref: string, parent: string): boolean {
    const node = this.nodes.get(ref);
    const seen = new Set<string>();
    for (let at: string | undefined = parent; at !== undefined && !seen.has(at); at = this.nodes.get(at)?.parent) {
      if (at === ref) return false;
      seen.add(at);
    }
    if (node) node.parent = parent;
    this.asWritten.clear();
    return true;
  }

  /** Whether a place of that name is the other one, or the other stands in it. */
  isAround(name: string, ref: string): boolean {
    const named = new Set(this.all(name).map((node) => node.ref));
    const seen = new Set<string>();
    for (let at: string | undefined = ref; at !== undefined && !seen.has(at); at = this.nodes.get(at)?.parent) {
      if (named.has(at)) return true;
      seen.add(at);
    }
    return false;
  }

  /** As `seek`; lists name the same few drawers again and again. */
  find(words: string, cabinet?: string): Stand {
    const written = `${cabinet ?? ''}|${words}`;
    const before = this.asWritten.get(written);
    if (before) return before;
    const stand = this.seek(words, cabinet);
    this.asWritten.set(written, stand.made.length > 0 ? { ...stand, made: [] } : stand);
    return stand;
  }

  /** The place a cell of our own lists names: by its code wherever it stands, else by its path, and then it gets the code. */
  private seekNamed({ name, code }: Named, cabinet: string | undefined): Stand {
    const coded = code === undefined ? undefined : this.register.coded(code);
    if (coded?.noun === 'place' && this.nodes.has(coded.ref)) return { ref: coded.ref, isNew: coded.ref.startsWith('#'), made: [] };
    const stand = name === undefined ? this.makeUnnamed(code) : this.seek(name, cabinet);
    const index = stand.ref === undefined || stand.made.length === 0 ? undefined : draftIndex(stand.ref);
    if (code !== undefined && index !== undefined) {
      Object.assign(this.register.drafts[index]?.fields as object, { code });
      this.register.takeCode(code, 'place', stand.ref as string);
    }
    return stand;
  }

  private makeUnnamed(code: string | undefined): Stand {
    return { ref: this.add(undefined, undefined, { code }), isNew: true, made: [`place ${code}`] };
  }

  /** The place that the words lead to. Without a `ref` several have that name, which `doubt` says. */
  private seek(words: string, cabinet: string | undefined): Stand {
    const [own, ...more] = readNamed(words) ?? [];
    if (own && more.length === 0) return this.seekNamed(own, cabinet);
    const coded = this.register.lookUp('place', words);
    if (coded !== undefined && this.nodes.get(coded) && words.length === 8 && this.all(words).length === 0)
      return { ref: coded, isNew: false, made: [] };
    const above = cabinet === undefined ? [] : segments(cabinet);
    const whole = this.all(words, above);
    const path = whole.length > 0 ? [words] : segments(words);
    const full = [...above, ...path];
    if (full.length > LEVELS_MAX)
      return {
        isNew: false,
        made: [],
        doubt: `It names ${full.length} places, each in the one before; ${LEVELS_MAX} are the most. It comes in without a place.`,
      };
    const last = full.at(-1) ?? words;
    const found = whole.length > 0 ? whole : this.all(last, full.slice(0, -1));
    if (found.length > 1)
      return {
        isNew: false,
        made: [],
        doubt: `${found.length} places are called “${last}”: write the cabinet too. It comes in without a place.`,
      };
    if (found[0]) return { ref: found[0].ref, isNew: found[0].ref.startsWith('#'), made: [] };
    return this.make(full);
  }

  private make(path: readonly string[]): Found & { made: readonly string[] } {
    const near = path.length === 1 ? this.register.near('place', path[0] ?? '') : undefined;
    const lettered = path.length === 1 ? LETTERED.exec(path[0] ?? '')?.[1] : undefined;
    const full = lettered === undefined || lettered === path[0] ? path : [`Cabinet ${lettered}`, ...path];
    const made: string[] = [];
    let parent: string | undefined;
    full.forEach((name, depth) => {
      const there = this.all(name, full.slice(0, depth)).find((node) => depth === 0 || node.parent === parent);
      if (there) {
        parent = there.ref;
        return;
      }
      const kind = kindInName(name) ?? (full.length === 1 || depth < full.length - 1 ? 'cabinet' : 'drawer');
      parent = this.add(name, parent, { kind });
      this.implied.add(parent);
      const called = kindInName(name) === undefined ? `${kind} ${name}` : name;
      made.push(depth === 0 ? called : `${called} in ${full[depth - 1]}`);
    });
    const doubt = near ? `“${path[0]}” is new; there is a “${near}” already.` : undefined;
    return { ref: parent as string, isNew: true, made, ...(doubt ? { doubt } : {}) };
  }

  /** Records a place. Its order among its siblings is the number its name ends in, unless its own label code is known. A `spare` one, brought in only if chosen, is led to by no row. */
  add(name: string | undefined, parent: string | undefined, fields: Record<string, unknown>, isSpare = false): string {
    const order = fields['code'] === undefined ? /(\d{1,4})\D*$/.exec(name ?? '')?.[1] : undefined;
    const ref = this.register.draft('place', {
      ...(name === undefined ? {} : { name }),
      ...(parent ? { in: parent } : {}),
      ...(order ? { order: Number(order) } : {}),
      ...fields,
    });
    if (!isSpare) this.enter(ref, parent, name, fields['label'] as string | undefined);
    return ref;
  }
}

export function segments(words: string): string[] {
  return words
    .split(PARTED)
    .map((part) => part.trim())
    .filter((part) => part !== '');
}
