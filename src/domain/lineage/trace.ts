import { total } from '../bench.ts';
import type { Day, MouldId } from '../brand.ts';
import type { Entry, EntryOf } from '../entry.ts';
import { inForce, inOrder } from '../fold.ts';
import { type IsDirect, pouredDirect } from './direct-pour.ts';
import { among, draw, EMPTY_POOL, join, type Pool } from './pool.ts';

/** From when a mould's waxes are doubtful: from a shot on (the first is 1), else from a day on, else all of them. */
export interface DoubtFrom {
  readonly mould: MouldId;
  readonly shot?: number | undefined;
  readonly day?: Day | undefined;
}

export interface Gone {
  readonly of: string;
  readonly on: Day;
  readonly reason: string;
  readonly to?: string;
  readonly pool: Pool;
}

/** Where the doubtful waxes went, each as “so many for certain, so many at most”. Only what may be doubtful is in it. */
export interface Trace {
  /** Good waxes the doubtful shots made. */
  readonly made: Pool;
  /** Of them, waxes that were counted for the mould and stand nowhere. */
  readonly nowhere: Pool;
  /** Piles of waxes and castings as they are now, by id. */
  readonly piles: ReadonlyMap<string, Pool>;
  /** What is in flasks now. */
  readonly flasks: ReadonlyMap<string, Pool>;
  /** What left a pile: sold, sent, thrown out, kept as a master. */
  readonly gone: readonly Gone[];
  /** Waxes and castings that were thrown out while dressing and casting. */
  readonly scrap: Pool;
  /** Masters recorded as made from the mould or a pile that may hold doubtful pieces. */
  readonly masters: readonly string[];
}

/** Follows a mould's doubtful waxes through the whole journal. Piles mix runs and nobody writes down which piece was taken, so counts are bounds. */
export function traceFrom(journal: readonly Entry[], from: DoubtFrom): Trace {
  const entries = [...inForce(inOrder(journal))];
  const walk = new Walk(from, pouredDirect(entries, from.mould));
  for (const entry of entries) walk.take(entry);
  return walk.done();
}

interface Lot {
  readonly mould: string | undefined;
  readonly pool: Pool;
}

class Walk {
  private readonly from: DoubtFrom;
  private readonly isDirect: IsDirect;
  private shots = 0;
  private hasBegun = false;
  private made = EMPTY_POOL;
  private nowhere = EMPTY_POOL;
  private scrap = EMPTY_POOL;
  private readonly pools = new Map<string, Pool>();
  /** Piles that doubtful pieces ever lay in. */
  private readonly hadDoubt = new Set<string>();
  private readonly mouldOf = new Map<string, string | undefined>();
  private readonly flasks = new Map<string, { lots: readonly Lot[]; isPoured: boolean }>();
  private readonly gone: Gone[] = [];
  private readonly masters: string[] = [];

  constructor(from: DoubtFrom, isDirect: IsDirect) {
    this.from = from;
    this.isDirect = isDirect;
  }

  take(entry: Entry): void {
    switch (entry.kind) {
      case 'recorded':
        return this.record(entry);
      case 'corrected':
        if ((entry.noun === 'injectedWax' || entry.noun === 'casting') && entry.fields.mould !== undefined)
          this.mouldOf.set(entry.of, entry.fields.mould ?? undefined);
        return;
      case 'injected':
        return this.inject(entry);
      case 'dressed':
        return this.dress(entry);
      case 'invested':
        return this.invest(entry);
      case 'cast':
        return this.cast(entry);
      case 'issued':
        return this.issue(entry);
      case 'counted':
        return this.count(entry);
      default:
    }
  }

  /** Whether something that is only known to be the mould's, at this point of the journal, may be doubtful. */
  private isDoubtful(on: Day): boolean {
    const { shot, day } = this.from;
    return shot !== undefined ? this.hasBegun : day === undefined || on >= day;
  }

  /** Of pieces said to be the mould's, nobody knows which shot or day their waxes were of; that they are its own is all there is to know when all of it is in doubt. */
  private perhaps(pieces: number, mould: string | undefined, on: Day): Pool {
    const most = mould === this.from.mould && this.isDoubtful(on) ? pieces : 0;
    return { total: pieces, least: this.from.shot === undefined && this.from.day === undefined ? most : 0, most };
  }

  /** Castings poured straight into the mould: their day is the mould's own, but pours are no shots and nobody counts them. */
  private poured(pieces: number, on: Day): Pool {
    const { shot = 1, day } = this.from;
    const isSince = day === undefined || on >= day;
    return { total: pieces, least: isSince && shot <= 1 ? pieces : 0, most: isSince ? pieces : 0 };
  }

  private record(entry: EntryOf<'recorded'>): void {
    if (entry.noun === 'injectedWax' || entry.noun === 'casting') {
      this.mouldOf.set(entry.id, entry.fields.mould);
      this.add(entry.id, this.perhaps(entry.pieces ?? 0, entry.fields.mould, entry.on));
    }
    if (entry.noun !== 'master') return;
    const isOurs = (id: string) => (id === this.from.mould && this.isDoubtful(entry.on)) || (this.pools.get(id)?.most ?? 0) > 0;
    if (entry.fields.from?.some(isOurs)) this.masters.push(entry.id);
  }

  private inject(entry: EntryOf<'injected'>): void {
    const pool = entry.mould === this.from.mould ? this.doubtIn(entry) : { total: entry.good, least: 0, most: 0 };
    if (entry.mould === this.from.mould) this.shots += entry.shots;
    if (pool.most > 0) this.hasBegun = true;
    this.made = join(this.made, { ...pool, total: pool.most > 0 ? pool.total : 0 });
    if (entry.good === 0) return;
    if (entry.onto) return this.add(entry.onto, pool);
    if (!entry.to) {
      if (pool.most > 0) this.nowhere = join(this.nowhere, pool);
      return;
    }
    this.mouldOf.set(entry.id, entry.mould);
    this.add(entry.id, pool);
  }

  /** Of a run that the doubtful shot lies in, the good waxes may all be from one side of it. */
  private doubtIn({ shots, good, rejects, on }: EntryOf<'injected'>): Pool {
    const { shot, day } = this.from;
    if (shot === undefined)
      return { total: good, least: day === undefined || on >= day ? good : 0, most: day === undefined || on >= day ? good : 0 };
    const doubtful = Math.min(shots, Math.max(0, this.shots + shots - shot + 1));
    const each = (good + total(rejects)) / shots;
    return {
      total: good,
      least: Math.max(0, good - Math.floor((shots - doubtful) * each)),
      most: Math.min(good, Math.ceil(doubtful * each)),
    };
  }

  private add(id: string, pool: Pool): void {
    this.pools.set(id, join(this.pools.get(id) ?? EMPTY_POOL, pool));
    if (pool.most > 0) this.hadDoubt.add(id);
  }

  private takeOff(id: string, pieces: number): Pool {
    const { taken, left } = draw(this.pools.get(id) ?? EMPTY_POOL, pieces);
    this.pools.set(id, left);
    return taken;
  }

  private dress(entry: EntryOf<'dressed'>): void {
    const taken = this.takeOff(entry.from, entry.good + entry.scrapped);
    this.throwOut(among(taken, entry.scrapped));
    if (entry.good === 0) return;
    const onto = entry.onto ?? entry.id;
    if (!entry.onto) this.mouldOf.set(onto, this.mouldOf.get(entry.from));
    this.add(onto, among(taken, entry.good));
  }

  private throwOut(pool: Pool): void {
    if (pool.most > 0) this.scrap = join(this.scrap, pool);
  }

  private invest(entry: EntryOf<'invested'>): void {
    const lots = entry.waxes.map(({ from, pieces }) => ({ mould: this.mouldOf.get(from), pool: this.takeOff(from, pieces) }));
    this.flasks.set(entry.flask, { lots, isPoured: false });
  }

  private cast(entry: EntryOf<'cast'>): void {
    const scrap = total(entry.scrap);
    const taken = this.fromFlask(entry, entry.sound + scrap);
    this.throwOut(among(taken, scrap));
    const onto = entry.onto ?? entry.id;
    if (!entry.onto) this.mouldOf.set(onto, entry.mould);
    this.add(onto, among(taken, entry.sound));
  }

  /** A flask's castings are told apart by their mould; what is not told apart may be any of it. */
  private fromFlask(entry: EntryOf<'cast'>, pieces: number): Pool {
    const flask = entry.flask ? this.flasks.get(entry.flask) : undefined;
    if (!flask) return this.isDirect(entry) ? this.poured(pieces, entry.on) : this.perhaps(pieces, entry.mould, entry.on);
    flask.isPoured = true;
    const isIts = (lot: Lot) => entry.mould === undefined || lot.mould === entry.mould;
    const known = flask.lots.filter(isIts);
    const lots = known.length > 0 ? known : flask.lots.filter((lot) => lot.mould === undefined);
    const { taken, left } = draw(
      lots.reduce((sum, lot) => join(sum, lot.pool), EMPTY_POOL),
      pieces,
    );
    flask.lots = [
      ...flask.lots.filter((lot) => !lots.includes(lot)),
      { mould: lots.length > 0 ? lots[0]?.mould : entry.mould, pool: left },
    ];
    return taken;
  }

  private issue(entry: EntryOf<'issued'>): void {
    if (!entry.pieces || !this.pools.has(entry.of)) return;
    const pool = this.takeOff(entry.of, entry.pieces);
    if (pool.most === 0) return;
    this.gone.push({ of: entry.of, on: entry.on, reason: entry.reason, ...(entry.to ? { to: entry.to } : {}), pool });
  }

  private count({ of, pieces }: EntryOf<'counted'>): void {
    const pool = this.pools.get(of);
    if (!pool) return;
    // More than the records knew of: an earlier count or taking was wrong, and what is found again may be doubtful where others are, or were.
    const found = pieces - pool.total;
    if (found >= 0) this.pools.set(of, { ...pool, total: pieces, most: pool.most + (this.hadDoubt.has(of) ? found : 0) });
    else this.takeOff(of, pool.total - pieces);
  }

  done(): Trace {
    const doubtful = [...this.pools].filter(([, pool]) => pool.most > 0);
    const inFlasks = [...this.flasks].flatMap(([id, { lots, isPoured }]) => {
      const pool = lots.reduce((sum, lot) => join(sum, lot.pool), EMPTY_POOL);
      return isPoured || pool.most === 0 ? [] : [[id, pool] as const];
    });
    const { made, nowhere, gone, scrap, masters } = this;
    return { made, nowhere, piles: new Map(doubtful), flasks: new Map(inFlasks), gone, scrap, masters };
  }
}
