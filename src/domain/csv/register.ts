import { distance } from 'fastest-levenshtein';
import { fold } from '../folding.ts';
import { parseCode } from '../label.ts';
import { isProblem } from '../problem.ts';
import type { Known, KnownNoun, KnownThing } from './known.ts';
import type { Named } from './named.ts';
import { draftIndex, draftRef, type PlanDraft } from './plan.ts';

/** Where a name leads: a thing on the shelf, or one that the import makes. */
export interface Found {
  readonly ref: string;
  readonly isNew: boolean;
  readonly doubt?: string;
}

type Mutable = { -readonly [K in keyof PlanDraft]: PlanDraft[K] } & { kind: PlanDraft['kind']; fields: Record<string, unknown> };

/** Beyond this many names of a kind, likely misspellings are not looked for: it would take longer than the import. */
const NEAR_MAX = 500;

/** The names of what is on the shelf and of what the import makes so far. */
export class Register {
  readonly known: Known;
  readonly drafts: Mutable[] = [];
  private readonly byName = new Map<string, string>();
  /** By the name to the letter: “Rams head” is not “Ram’s head” to a list of our own. */
  private readonly byText = new Map<string, string>();
  private readonly codes = new Map<string, string>();
  private readonly asWritten = new Map<string, string>();
  private readonly byCode = new Map<string, { ref: string; noun: KnownNoun }>();
  private readonly names = new Map<KnownNoun, string[]>();

  constructor(known: Known) {
    this.known = known;
    for (const [noun, things] of Object.entries(known.things) as [KnownNoun, readonly KnownThing[]][]) {
      this.names.set(
        noun,
        things.flatMap((thing) => thing.name ?? []),
      );
      for (const thing of things) {
        if (thing.code) {
          this.byCode.set(thing.code, { ref: thing.id, noun });
          this.codes.set(thing.id, thing.code);
        }
        if (thing.name) this.name(noun, thing.name, thing.id);
      }
      for (const thing of things) for (const other of thing.also?.split(/[,;\n]/) ?? []) this.name(noun, other, thing.id);
    }
  }

  /** Lets a name lead to a thing; the first one to have it keeps it. */
  name(noun: KnownNoun, name: string, ref: string): void {
    const text = `${noun}|${name}`;
    if (!this.byText.has(text)) this.byText.set(text, ref);
    const key = `${noun}|${fold(name)}`;
    if (fold(name) !== '' && !this.byName.has(key)) this.byName.set(key, ref);
  }

  /** Adds a thing to be recorded. */
  draft(noun: KnownNoun, fields: Record<string, unknown>): string {
    this.drafts.push({ kind: 'recorded', noun, fields });
    return draftRef(this.drafts.length - 1);
  }

  add(draft: PlanDraft): number {
    this.drafts.push(draft as Mutable);
    return this.drafts.length - 1;
  }

  coded(code: string): { ref: string; noun: KnownNoun } | undefined {
    return this.byCode.get(code);
  }

  takeCode(code: string, noun: KnownNoun, ref: string): void {
    this.byCode.set(code, { ref, noun });
  }

  /** By label code, else by name. A name once found leads to the same thing for good, as it is written too. */
  lookUp(noun: KnownNoun, name: string): string | undefined {
    const written = `${noun}|${name}`;
    const before = this.asWritten.get(written);
    if (before !== undefined) return before;
    const found = this.seek(noun, name);
    if (found !== undefined) this.asWritten.set(written, found);
    return found;
  }

  private seek(noun: KnownNoun, name: string): string | undefined {
    const code = name.length <= 12 ? parseCode(name) : undefined;
    const coded = code === undefined || isProblem(code) ? undefined : this.byCode.get(code);
    return coded?.noun === noun ? coded.ref : this.byName.get(`${noun}|${fold(name)}`);
  }

  /** The label code of a thing on the shelf or of one that the import makes. */
  codeOf(ref: string): string | undefined {
    const index = draftIndex(ref);
    return index === undefined ? this.codes.get(ref) : (this.drafts[index]?.fields['code'] as string | undefined);
  }

  /** The thing a cell of our own lists names: by its code whatever its name, else by exactly that name; made when there is none. */
  findNamed(noun: KnownNoun, { name, code }: Named, fields: () => Record<string, unknown>): Found {
    const coded = code === undefined ? undefined : this.byCode.get(code);
    if (coded?.noun === noun) return { ref: coded.ref, isNew: coded.ref.startsWith('#') };
    const exact = `${noun}|${name ?? ''}`;
    const before = code === undefined ? this.byText.get(exact) : undefined;
    if (before !== undefined) return { ref: before, isNew: before.startsWith('#') };
    const made = this.draft(noun, { ...(name === undefined ? {} : { name }), ...(code === undefined ? {} : { code }), ...fields() });
    if (code !== undefined) this.takeCode(code, noun, made);
    if (name !== undefined) this.name(noun, name, made);
    return { ref: made, isNew: true };
  }

  /** The thing of that name; made when there is none. */
  find(noun: KnownNoun, name: string, fields: () => Record<string, unknown>): Found {
    const ref = this.lookUp(noun, name);
    if (ref !== undefined) return { ref, isNew: ref.startsWith('#') };
    const near = this.near(noun, name);
    const made = this.draft(noun, { name, ...fields() });
    this.name(noun, name, made);
    return { ref: made, isNew: true, ...(near ? { doubt: `“${name}” is new; there is a “${near}” already.` } : {}) };
  }

  /** A name on the shelf that this one may be a misspelling of. Names that differ in a number are different things. */
  near(noun: KnownNoun, name: string): string | undefined {
    const names = this.names.get(noun) ?? [];
    const wanted = fold(name);
    const limit = wanted.length >= 9 ? 2 : wanted.length >= 5 ? 1 : 0;
    if (limit === 0 || names.length > NEAR_MAX) return undefined;
    const digits = wanted.replace(/\D/g, '');
    return names.find((each) => {
      const other = fold(each);
      return Math.abs(other.length - wanted.length) <= limit && other.replace(/\D/g, '') === digits && distance(other, wanted) <= limit;
    });
  }
}
