import { describe, expect, it } from 'vitest';
import { labelsIn, makeListening } from '../../src/domain/label-choice.ts';
import { codeOf } from '../support/builders.ts';

const [owl, heron] = [codeOf('mould', 1), codeOf('mould', 2)];
const see = (...texts: readonly string[]) => texts.map((text, i) => ({ text, corners: [{ x: i, y: 0 }] }));

describe('the labels in view', () => {
  it('are the studio’s, each once, whether a bare code or a link', () => {
    expect(labelsIn(see('RADIO', owl, `https://keep.example/#/c/${owl}`, heron)).map(({ code }) => code)).toEqual([owl, heron]);
  });
});

describe('listening to looks', () => {
  it('takes one label at once, and again only after it was out of sight', () => {
    const listen = makeListening();
    expect(listen(see(owl), 0)).toEqual({ code: owl });
    expect(listen(see(owl), 500)).toEqual({});
    expect(listen([], 1000)).toEqual({});
    expect(listen(see(owl), 2400)).toEqual({});
    expect(listen(see(owl), 4500)).toEqual({ code: owl });
    expect(listen(see(heron), 4600)).toEqual({ code: heron });
  });

  it('takes a label beside something foreign, and tells of what is foreign alone', () => {
    const listen = makeListening();
    expect(listen(see('RADIO', owl), 0)).toEqual({ code: owl });
    expect(listen(see('RADIO'), 100).stranger?.says).toContain('not a shelf label');
    expect(listen(see('RADIO'), 200)).toEqual({});
  });

  it('takes none of several, offers them, and takes one alone only when the others stay away', () => {
    const listen = makeListening();
    expect(listen(see(owl, heron), 0).several?.map(({ code }) => code)).toEqual([owl, heron]);
    // A look that misses one of them is no choice made.
    expect(listen(see(owl), 300)).toEqual({});
    expect(listen([], 900)).toEqual({});
    expect(listen(see(heron, owl), 1200).several).toHaveLength(2);
    expect(listen(see(owl), 2600)).toEqual({});
    expect(listen(see(owl), 2800)).toEqual({ several: [], code: owl });
    expect(listen(see(owl), 2900)).toEqual({});
  });

  it('puts the choice away when nothing is in view any more', () => {
    const listen = makeListening();
    listen(see(owl, heron), 0);
    expect(listen([], 1000)).toEqual({});
    expect(listen([], 1600)).toEqual({ several: [] });
    expect(listen([], 1700)).toEqual({});
  });
});
