import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Day } from '../../src/domain/brand.ts';
import { fold, wordsOf } from '../../src/domain/folding.ts';
import { nearest, slipsForgiven } from '../../src/domain/nearest.ts';
import { best, search } from '../../src/domain/search.ts';
import { searchIndexOf } from '../../src/domain/search-index.ts';
import type { Shelf, Thing } from '../../src/domain/shelf.ts';
import { titleOf } from '../../src/domain/title.ts';
import { aCasting, aDesign, aMaster, aMould, aPeriod, aPlace, aShelf, aWax, codeOf } from '../support/builders.ts';

const tene = aPeriod({ name: 'La Tène', also: 'Celtic' });
const chest = aPlace({ kind: 'cabinet', name: 'Plan chest' });
const drawer = aPlace({ kind: 'drawer', name: 'Drawer three', label: 'A3', in: chest.id, periods: [tene.id] });
const toggle = aDesign({ name: 'Dolphin toggle', periods: [tene.id], sort: 'fastening' });
const seal = aDesign({ name: 'Seal with a dolphin', also: 'sea beast', periods: [] });
const good = aMould({
  name: 'Dolphin toggle 1',
  design: toggle.id,
  at: drawer.id,
  note: 'Gate cut twice',
  code: codeOf('mould', 3),
  grade: 'sound',
});
const torn = aMould({ name: 'Dolphin toggle 0', design: toggle.id, at: drawer.id, grade: 'failed' });
const gone = aMould({ name: 'Dolphin toggle 9', design: toggle.id, retired: { on: '2024-01-09' as Day, reason: 'worn out' } });
const amber = aWax({ name: 'Summer wax', colour: 'amber' });
const nameless = aMould({ name: undefined as never, design: seal.id, size: 'large', wax: amber.id });
const shelf = aShelf([tene, chest, drawer, toggle, seal, good, torn, gone, amber, nameless, aMaster({ name: 'Owl, carved' })]);

function titles(query: string, on: Shelf = shelf): string[] {
  const index = searchIndexOf(on);
  return best(index, search(index, wordsOf(query)), 50).documents.map(({ title }) => title);
}

describe('finding', () => {
  test('name start comes before a word of the name, that before a word of the record, and inside a word is last', () => {
    expect(titles('dol')).toEqual([
      'Dolphin toggle 1',
      'Dolphin toggle',
      'Seal with a dolphin, large',
      'Seal with a dolphin',
      'Dolphin toggle 0',
      'Dolphin toggle 9',
    ]);
    expect(titles('olphi').slice(0, 2)).toEqual(['Dolphin toggle 1', 'Seal with a dolphin, large']);
  });

  test('failed and retired things are found, after all others', () => {
    expect(titles('toggle').slice(-2)).toEqual(['Dolphin toggle 0', 'Dolphin toggle 9']);
    const pile = aCasting({ name: 'Apple of pieces', pieces: 0 });
    expect(titles('a', aShelf([pile, aMaster({ name: 'Axe' })]))).toEqual(['Axe', 'Apple of pieces']);
  });

  test('every word has to match, wherever it stands', () => {
    expect(titles('dolphin gate')).toEqual(['Dolphin toggle 1']);
    expect(titles('gate owl')).toEqual([]);
    expect(titles('')).toEqual([]);
  });

  test.each([
    ['la tene', 'La Tène'],
    ['CELTIC', 'La Tène'],
    ['plan a3', 'Dolphin toggle 1'],
    ['sea beast', 'Seal with a dolphin'],
    ['amber', 'Summer wax'],
    ['amber large', 'Seal with a dolphin, large'],
    ['fastening', 'Dolphin toggle'],
    [codeOf('mould', 3).toLowerCase(), 'Dolphin toggle 1'],
  ])('“%s” finds %s', (query, title) => {
    expect(titles(query)).toContain(title);
  });

  test('things are found by the period of their design', () => {
    expect(titles('tène')).toEqual(expect.arrayContaining(['Dolphin toggle 1', 'Dolphin toggle 0', 'Drawer three']));
  });
});

test.each([
  ['M-014', 'M014'],
  ['M-014', 'm 014'],
  ['M-014', 'm01'],
  ['M 014', 'M014'],
  ['M014', 'M-014'],
  ['KO/12b', 'ko12b'],
  ['Heron (H-3)', 'h3'],
])('what is called “%s” is found by “%s”', (name, typed) => {
  const drawn = aDesign({ name: 'Omega brooch', also: name });
  const some = aShelf([aMould({ name }), drawn, aMould({ name: 'Fibula', design: drawn.id }), aMould({ name: 'M-209' })]);
  expect(titles(typed, some).sort()).toEqual(['Fibula', 'Omega brooch', name].sort());
});

test('a figure in running words is no code', () => {
  expect(titles('at3', aShelf([aMould({ name: 'Heron', note: 'Shot at 3 bar.' })]))).toEqual([]);
});

describe('misspelt words', () => {
  const rings = aShelf([
    aMould({ name: 'Snake ring' }),
    aMould({ name: 'Snake bangle' }),
    aMould({ name: 'Rag doll' }),
    aMould({ name: 'Rung of a ladder' }),
  ]);

  test.each(['snake rng', 'rng snake', 'snkae rng', 'snake rign'])(
    'a slip in a word of three letters is forgiven beside others: %s',
    (query) => {
      expect(titles(query, rings)).toEqual(['Snake ring']);
      expect(search(searchIndexOf(rings), wordsOf(query)).corrections).toContainEqual({
        typed: wordsOf(query).find((word) => word.startsWith('r')),
        instead: ['ring'],
      });
    },
  );

  test('a word of three letters by itself is not guessed at, nor one that nothing beside it goes with', () => {
    expect(titles('rng', rings)).toEqual([]);
    expect(search(searchIndexOf(rings), ['bangle', 'rng']).corrections).toEqual([{ typed: 'rng', instead: [] }]);
    expect(search(searchIndexOf(rings), ['snake', 'rng'], false).corrections).toEqual([]);
  });

  function corrected(query: string) {
    return search(searchIndexOf(shelf), wordsOf(query)).corrections;
  }

  test('are looked for by their nearest spelling, which is said', () => {
    expect(corrected('togle')).toEqual([{ typed: 'togle', instead: ['toggle'] }]);
    expect(titles('togle')).toEqual(titles('toggle'));
    expect(titles('dolfin seal')).toEqual(titles('dolphin seal'));
  });

  test('also while the word is still being typed', () => {
    expect(corrected('dolhp')).toEqual([{ typed: 'dolhp', instead: ['dolphin'] }]);
  });

  test('are not guessed at when short, when they hold a digit, or when nothing is near', () => {
    expect([slipsForgiven('owk'), slipsForgiven('owll'), slipsForgiven('toggle'), slipsForgiven('dolphin'), slipsForgiven('A3b4')]).toEqual(
      [0, 1, 1, 2, 0],
    );
    expect(corrected('xyzzyq')).toEqual([{ typed: 'xyzzyq', instead: [] }]);
    expect(titles('xyzzyq')).toEqual([]);
  });

  test('two neighbouring letters swapped are one slip', () => {
    expect(nearest(['minoan', 'milan'], 'minaon')).toEqual(['minoan']);
  });

  test('of equally near words all are shown, three at most', () => {
    expect(nearest(['beat', 'bear', 'boar', 'bead', 'seal'], 'beam')).toEqual(['bead', 'bear', 'beat']);
  });
});

describe('the index', () => {
  test('is the very same for the same shelf, and keeps the parts an entry did not touch', () => {
    const index = searchIndexOf(shelf);
    expect(searchIndexOf(shelf)).toBe(index);
    const renamed = aShelf([...things(shelf).filter((thing) => thing !== good), { ...good, name: 'Porpoise' }]);
    const next = searchIndexOf({ ...renamed, things: { ...shelf.things, mould: renamed.things.mould } });
    expect(next.parts.filter((part, at) => part !== index.parts[at])).toHaveLength(1);
  });

  test('follows what a thing borrows words from', () => {
    const renamed = new Map(shelf.things.period).set(tene.id, { ...tene, name: 'Hallstatt', also: 'early Iron Age' });
    const next = { ...shelf, things: { ...shelf.things, period: renamed } };
    expect(titles('hallstatt', next)).toContain('Dolphin toggle 1');
    expect(titles('celtic', next)).toEqual([]);
    const repainted = new Map(shelf.things.wax).set(amber.id, { ...amber, colour: 'violet' });
    expect(titles('violet large', { ...shelf, things: { ...shelf.things, wax: repainted } })).toEqual(['Seal with a dolphin, large']);
  });

  test('finds exactly what a slow scan of every record finds', () => {
    const word = fc.constantFrom('bull', 'heron', 'tène', 'seal', 'toggle', '12 mm', 'gate', 'Bulls');
    const name = fc.array(word, { minLength: 1, maxLength: 3 }).map((words) => words.join(' '));
    const piece = fc.constantFrom('b', 'bul', 'ten', 'ne', 'gg', '12', 'eal', 'm', 'gate');
    fc.assert(
      fc.property(
        fc.array(fc.record({ name, note: name }), { maxLength: 12 }),
        fc.array(piece, { minLength: 1, maxLength: 2 }),
        (made, words) => {
          const some = aShelf(made.map((fields) => aMaster({ ...fields, kind: 'print', size: '4', state: 'lost' })));
          const scanned = things(some)
            .filter((thing) =>
              words.every((each) => fold(`${titleOf(some, thing)} ${thing.note ?? ''} master print 4 lost`).includes(each)),
            )
            .map((thing) => titleOf(some, thing));
          const index = searchIndexOf(some);
          const found = best(index, search(index, words, false), 100).documents.map(({ title }) => title);
          expect(found.sort()).toEqual(scanned.sort());
        },
      ),
      { numRuns: 150 },
    );
  });
});

function things(of: Shelf): Thing[] {
  return Object.values(of.things).flatMap((map) => [...map.values()]);
}

test('what was asked before changes no answer', () => {
  // Of the same things, and so of the same words, but an index that nothing has been asked of.
  const afresh = () => aShelf([tene, chest, drawer, toggle, seal, good, torn, gone, amber, nameless]);
  const asked = afresh();
  const words = ['dolphin', 'dol', 'toggle', 'togle', 'xyzzy', 'sea', '1', 'a3'];
  fc.assert(
    fc.property(fc.array(fc.constantFrom(...words), { maxLength: 4 }), fc.boolean(), (query, mayCorrect) => {
      const told = (on: Shelf) => {
        const index = searchIndexOf(on);
        const found = search(index, query, mayCorrect);
        return [found.corrections, best(index, found, 50).documents.map(({ title }) => title)];
      };
      expect(told(asked)).toEqual(told(afresh()));
    }),
    { numRuns: 300 },
  );
});

test('what is numbered is listed as one counts', () => {
  const herons = ['Heron 10', 'Heron 2', 'Heron 1', 'Heron 2b'].map((name) => aMould({ name }));
  expect(titles('heron', aShelf(herons))).toEqual(['Heron 1', 'Heron 2', 'Heron 2b', 'Heron 10']);
});

test('more are counted than are listed', () => {
  const many = aShelf(Array.from({ length: 70 }, (_, at) => aMaster({ name: `Finial ${70 - at}` })));
  const index = searchIndexOf(many);
  const found = best(index, search(index, ['finial']), 3);
  expect(found.count).toBe(70);
  expect(found.documents.map(({ title }) => title)).toEqual(['Finial 1', 'Finial 2', 'Finial 3']);
});

test.each([
  ['La Tène (B)', 'la tene b'],
  ["dragon's  EYE", 'dragons eye'],
  ['Ærø—ß', 'aero ss'],
  ['  ', ''],
  ['c. 200 BC', 'c 200 bc'],
])('%s folds to %s', (text, folded) => {
  expect(fold(text)).toBe(folded);
});
