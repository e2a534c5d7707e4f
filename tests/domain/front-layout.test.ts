import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type FrontRect, layFront } from '../../src/domain/front-layout.ts';
import type { Place } from '../../src/domain/shelf.ts';
import { aPlace } from '../support/builders.ts';

const cabinet = aPlace({ kind: 'cabinet', widthMm: 900, heightMm: 1100 });

function without(key: 'box' | 'widthMm' | 'heightMm', place: Place): Place {
  const { [key]: _, ...rest } = place;
  return rest as Place;
}

test('drawers that were drawn stand where they were drawn', () => {
  const box = { x: 20, y: 30, w: 410, h: 120 };
  const drawer = aPlace({ box });
  const { widthMm, heightMm, isDrawn, rects } = layFront(cabinet, [drawer]);
  expect([widthMm, heightMm, isDrawn]).toEqual([900, 1100, true]);
  expect(rects.get(drawer.id)).toEqual(box);
});

test('a cabinet smaller than its drawers, or without a size, is as large as they are', () => {
  const drawer = aPlace({ box: { x: 20, y: 30, w: 1000, h: 1200 } });
  const { widthMm, heightMm } = layFront(without('widthMm', without('heightMm', cabinet)), [drawer]);
  expect([widthMm, heightMm]).toEqual([1020, 1230]);
});

test('an empty cabinet is one open front under its own id', () => {
  const { rects, isDrawn } = layFront(cabinet, []);
  expect([...rects.keys()]).toEqual([cabinet.id]);
  expect(isDrawn).toBe(false);
});

test('whatever was not drawn is stacked where it covers nothing else, inside the front', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 60 }), fc.integer({ min: 0, max: 4 }), (undrawn, drawn) => {
      const children = [
        ...Array.from({ length: drawn }, (_, at) => aPlace({ box: { x: 10, y: 10 + at * 90, w: 800, h: 80 } })),
        ...Array.from({ length: undrawn }, () => aPlace()),
      ];
      const { rects, widthMm, heightMm } = layFront(cabinet, children);
      expect(rects.size).toBe(Math.max(1, children.length));
      const all = [...rects.values()];
      for (const rect of all) expect(rect.x + rect.w <= widthMm && rect.y + rect.h <= heightMm && rect.w > 0 && rect.h > 0).toBe(true);
      for (const [at, rect] of all.entries()) expect(all.slice(at + 1).filter((other) => overlap(rect, other))).toEqual([]);
    }),
    { numRuns: 60 },
  );
});

function overlap(a: FrontRect, b: FrontRect): boolean {
  return a.x < b.x + b.w && b.x < a.x + a.w && a.y < b.y + b.h && b.y < a.y + a.h;
}
