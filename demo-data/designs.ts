import type { Metal } from '../src/domain/design.ts';

/**
 * What the studio makes. Columns: period(s) | name | sort | metals | sizes (mm, or a letter and mm) | wax g | keep | drawing | mark.
 * Marks: `o` an original stands behind it, `p` poured in the mould, `b` asked for most, `c` made several to a mould.
 */
const TABLE = `
minoan | Bull-leaper seal | seal | bronze silver | 18 | 3.1 | 8 | beast | ob
minoan | Lentoid seal, flying fish | seal | bronze silver | 16 | 2.4 | 6 | fish |
minoan | Double-axe bead | bead | bronze silver | 11 | 0.7 | 16 | axe | c
minoan | Octopus pendant | pendant | bronze pewter | S22 L34 | 4.8 | 8 | octopus | b
minoan | Twin-bee pendant | pendant | bronze silver | 28 | 4.1 | 6 | wings | o
minoan | Lily bead | bead | silver | 9 | 0.5 | 14 | flower | c
minoan | Papyrus finial | finial | bronze | 46 | 14.2 | 3 | leaf |
hallstatt | Swan-neck brooch | brooch | bronze | 52 | 6.7 | 6 | bird | o
hallstatt | Spectacle-spiral brooch | brooch | bronze brass | S48 L76 | 8.3 | 6 | spiral | b
hallstatt | Horse toggle | toggle | bronze pewter | 24 | 3.6 | 8 | beast |
hallstatt | Rattle pendant | pendant | bronze | 38 | 6.2 | 4 | bead |
hallstatt | Wheel pendant | pendant | pewter bronze | S18 M26 L36 | 3.3 | 10 | wheel | b
hallstatt | Boat brooch | brooch | bronze | 44 | 7.4 | 4 | wave |
etruscan | Lion brooch | brooch | bronze silver | 42 | 6.9 | 5 | beast | o
etruscan | Acorn pendant | pendant | bronze silver | 21 | 2.9 | 8 | leaf |
etruscan | Scarab signet ring | signet ring | silver bronze | L16.3 P17.9 T19.5 | 3.8 | 6 | wings |
etruscan | Ram-head finial | finial | bronze brass | 41 | 15.8 | 3 | beast | o
etruscan | Mirror handle, swan | mirror handle | bronze | 112 | 33.5 | 2 | bird | o
etruscan | Chariot mount, rosette | harness mount | bronze | 47 | 9.6 | 4 | flower |
etruscan | Sea-horse plaque | plaque | bronze pewter | 58 | 12.4 | 4 | fish |
latene | Trumpet-scroll harness mount | harness mount | bronze | S36 L54 | 8.8 | 6 | spiral | ob
latene | Triskele harness mount | harness mount | bronze pewter | 32 | 5.7 | 10 | triskele | b
latene | Duck toggle | toggle | bronze pewter | 23 | 3.2 | 12 | bird | ob
latene | Duck-head brooch | brooch | bronze | 49 | 6.1 | 6 | bird |
latene | Looped mirror handle | mirror handle | bronze | 128 | 41.0 | 2 | knot | o
latene | Belt hook, facing beasts | belt hook | bronze | 64 | 13.1 | 4 | beast | o
latene | Terret, lipped | harness mount | bronze | 57 | 16.9 | 4 | bead |
latene | Buffer terminal | finial | bronze brass | 33 | 9.9 | 4 | spiral |
latene | Boar finial | finial | bronze | 52 | 18.7 | 4 | beast | o
latene | Linch-pin cap | harness mount | bronze | 39 | 14.6 | 4 | triskele |
latene hellenistic | Coiled serpent ring | signet ring | silver bronze | L16.3 N17.1 P17.9 R18.7 | 3.4 | 8 | snake | b
hellenistic | Dolphin handle | mirror handle | bronze | 84 | 24.6 | 3 | fish | o
hellenistic | Heracles-knot clasp | buckle | silver bronze | S26 L40 | 5.2 | 6 | knot |
hellenistic | Ivy-leaf pendant | pendant | silver bronze | 25 | 3.1 | 8 | leaf | b
hellenistic | Antelope-head earring | pendant | silver | 22 | 1.9 | 8 | beast |
hellenistic | Theatre-mask mount | harness mount | bronze pewter | 35 | 7.7 | 6 | mask | o
hellenistic stage | Comic-mask gaming piece | gaming piece | pewter bronze | 19 | 4.4 | 12 | mask |
hellenistic | Knucklebone gaming piece | gaming piece | bronze pewter | 22 | 5.6 | 10 | bone | c
hellenistic | Signet ring, oval bezel | signet ring | silver bronze | L16.3 N17.1 P17.9 R18.7 T19.5 | 4.6 | 10 | star | b
coptic | Hare medallion | plaque | bronze pewter | 37 | 6.3 | 5 | hare | o
coptic | Vine-scroll buckle | buckle | bronze | 44 | 10.2 | 5 | leaf |
coptic | Dove lamp finial | finial | bronze brass | 36 | 11.8 | 3 | bird | o
coptic | Peacock plaque | plaque | bronze brass | 62 | 13.7 | 3 | fan |
coptic | Gazelle pendant | pendant | bronze | 29 | 4.3 | 5 | beast |
coptic | Basket-weave bead | bead | bronze silver | 12 | 0.9 | 14 | weave | c
carolingian | Strap end, leaf scroll | buckle | bronze silver | 41 | 6.6 | 6 | leaf | b
carolingian | Belt mount, acanthus | harness mount | bronze silver | 46 | 9.1 | 5 | leaf | o
carolingian | Beaded disc brooch | brooch | bronze pewter | S24 L38 | 6.5 | 6 | bead |
carolingian | Equal-armed brooch | brooch | bronze | 45 | 6.0 | 4 | weave |
carolingian | Book clasp, lion | belt hook | bronze brass | 51 | 8.2 | 4 | beast |
carolingian | Trefoil mount | harness mount | bronze silver | 43 | 7.9 | 5 | trefoil |
ottoman | Tulip buckle | buckle | silver brass | S38 L56 | 11.3 | 6 | tulip | ob
ottoman | Carnation belt hook | belt hook | brass bronze | 59 | 12.2 | 4 | fan |
ottoman | Crescent harness mount | harness mount | brass bronze | 48 | 10.5 | 5 | crescent |
ottoman | Coffee-cup holder foot | coffer foot | brass | 40 | 17.1 | 3 | wave |
ottoman | Pen-case catch | belt hook | brass silver | 34 | 5.1 | 4 | tulip | o
ottoman | Bath-clog mount | plaque | brass silver | 53 | 9.4 | 3 | star |
ottoman | Rose-water finial | finial | silver brass | 31 | 8.9 | 4 | flower |
ottoman | Merchant’s seal, knotted line | seal | brass silver | 20 | 4.2 | 6 | knot |
georgian | Fob seal, ship | seal | silver brass | 27 | 6.4 | 6 | ship | ob
georgian | Fob seal, urn | seal | silver brass | 26 | 6.1 | 5 | urn |
georgian | Shoe buckle, oval | buckle | pewter silver | S52 L68 | 14.9 | 6 | bead | ob
georgian | Shoe buckle, square | buckle | pewter silver | 60 | 15.3 | 5 | weave |
georgian | Coffer foot, lion paw | coffer foot | brass bronze | S45 L63 | 29.8 | 4 | claw |
georgian | Coffer foot, ball and claw | coffer foot | brass | 55 | 31.4 | 4 | claw | o
georgian | Watch key, shell | pendant | brass silver | 33 | 3.9 | 6 | shell |
georgian | Sash finial, pineapple | finial | brass | 49 | 20.3 | 4 | weave | p
georgian | Snuff-box thumbpiece | plaque | silver pewter | 24 | 3.0 | 6 | shell |
georgian | Signet ring, shield | signet ring | silver gold | L16.3 N17.1 P17.9 R18.7 T19.5 V20.3 | 5.4 | 8 | ship |
nouveau | Whiplash buckle | buckle | pewter silver | 66 | 14.1 | 4 | whiplash | ob
nouveau | Dragonfly brooch | brooch | silver pewter | S38 L61 | 7.2 | 6 | wings | b
nouveau | Mistletoe comb top | plaque | silver pewter | 72 | 11.6 | 3 | leaf | o
nouveau | Iris pendant | pendant | silver pewter | 43 | 6.8 | 6 | tulip |
nouveau | Peacock mirror handle | mirror handle | pewter silver | 138 | 46.3 | 2 | fan | o
nouveau | Poppy finial | finial | pewter brass | 38 | 12.9 | 4 | flower | p
nouveau | Moth hat ornament | brooch | pewter silver | 54 | 8.6 | 4 | wings |
stage | Prop goblet foot | coffer foot | pewter | 74 | 62.0 | 3 | wave | p
stage | Crown jewel setting | harness mount | pewter brass | 42 | 9.3 | 6 | star | p
stage | Gaming counter, crab | gaming piece | pewter | 26 | 6.6 | 20 | crab | pc
stage | Gaming piece, lighthouse | gaming piece | pewter | S34 L48 | 13.5 | 10 | tower | p
stage | Gaming piece, tern | gaming piece | pewter | 31 | 9.7 | 10 | bird | p
stage | Treasure key | pendant | pewter brass | 78 | 22.4 | 5 | key | p
stage | Lantern finial | finial | pewter brass | 44 | 19.6 | 4 | star | p
stage | Pommel, scallop shell | finial | pewter bronze | 50 | 34.2 | 3 | shell | p
`;

interface Size {
  readonly label: string;
  readonly mm: number;
}

export interface Design {
  readonly name: string;
  readonly sort: string;
  readonly drawing: string;
  readonly periods: readonly string[];
  readonly metals: readonly Metal[];
  readonly sizes: readonly [Size, ...Size[]];
  readonly waxGrams: number;
  readonly keep: number;
  readonly hasOriginal: boolean;
  readonly isPoured: boolean;
  readonly isBusy: boolean;
  readonly isPlate: boolean;
}

function sizeOf(word: string): Size {
  const [, letter, mm] = /^([A-Z]?)([\d.]+)$/.exec(word) ?? [];
  return { label: letter || `${mm} mm`, mm: Number(mm) };
}

export const DESIGNS: readonly Design[] = TABLE.trim()
  .split('\n')
  .map((line) => {
    const cells = line.split('|').map((cell) => cell.trim());
    const [periods = '', name = '', sort = '', metals = '', sizes = '', wax, keep, drawing = '', marks = ''] = cells;
    return {
      name,
      sort,
      drawing,
      periods: periods.split(' '),
      metals: metals.split(' ') as Metal[],
      sizes: sizes.split(' ').map(sizeOf) as [Size, ...Size[]],
      waxGrams: Number(wax),
      keep: Number(keep),
      hasOriginal: marks.includes('o'),
      isPoured: marks.includes('p'),
      isBusy: marks.includes('b'),
      isPlate: marks.includes('c'),
    };
  });

export function designNamed(name: string) {
  const index = DESIGNS.findIndex((design) => design.name === name);
  if (index < 0) throw new Error(`no design “${name}”`);
  return index;
}

export function designAt(index: number): Design {
  const design = DESIGNS[index];
  if (!design) throw new RangeError(`no design number ${index}`);
  return design;
}
