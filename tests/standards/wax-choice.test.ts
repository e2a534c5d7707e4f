import { describe, expect, it } from 'vitest';
import type { Celsius } from '../../src/domain/brand.ts';
import { celsiusFrom, SI_UNITS } from '../../src/domain/units.ts';
import { chooseWax } from '../../src/domain/wax-choice.ts';
import { anInjector, aWax } from '../support/builders.ts';

// Common practice, no source. The bands are the ones from memory that a new studio might start from: a cold-flexible wax 12–22 °C, an
// all-round one 18–26 °C, a hard one for hot weather 24–32 °C. One published pair of pattern waxes differs in the same way: one stays tough
// to 30–32 °C, its sister has to be handled below 25–27 °C (marutiprotectives.com).
const c = (value: number) => value as Celsius;
const cold = aWax({ name: 'Cold', roomLowC: c(12), roomHighC: c(22) });
const hard = aWax({ name: 'Hard', roomLowC: c(24), roomHighC: c(32) });
const pressed = aWax({ name: 'Pressed', roomLowC: c(16), roomHighC: c(28), pressure: 'needs high' });
const sticky = aWax({ name: 'Sticky', use: 'sticky', roomLowC: c(10), roomHighC: c(35) });
const low = anInjector({ pressure: 'low' });
const high = anInjector({ name: 'Press', pressure: 'high' });
const at = (degrees: number) => ({ lowC: degrees, highC: degrees });
const whys = (choice: ReturnType<typeof chooseWax>) => choice.reasons.map(({ why }) => why);

describe('which wax, by common practice (no source)', () => {
  it('a wax that tolerates cold is used in the cold months and grows too flexible in great heat', () => {
    expect(chooseWax(cold, { lowC: 13, highC: 18 }, [low]).verdict).toBe('yes');
    expect(chooseWax(cold, at(15), [low]).verdict).toBe('yes');
    const hot = chooseWax(cold, at(31), [low]);
    expect(hot.verdict).toBe('no');
    expect(whys(hot)).toEqual(['too soft']);
  });

  it('a wax brittle in the cold is the one for the hot months', () => {
    expect(chooseWax(hard, { lowC: 25, highC: 31 }, [low]).verdict).toBe('yes');
    const frosty = chooseWax(hard, at(14), [low]);
    expect(frosty.verdict).toBe('no');
    expect(whys(frosty)).toEqual(['brittle']);
  });

  it('a wax for high-pressure injection stays with that injector', () => {
    const holding = { ...high, holds: pressed.id };
    expect(chooseWax(pressed, at(21), [low, holding]).verdict).toBe('yes');
    expect(chooseWax(pressed, at(21), [low, high]).verdict).toBe('take care');
    expect(chooseWax(pressed, at(21), [low]).verdict).toBe('no');
    const misplaced = chooseWax(pressed, at(21), [{ ...low, holds: pressed.id }, high]);
    expect(misplaced.verdict).toBe('take care');
    expect(misplaced.reasons.map(({ says }) => says).join(' ')).toContain('Big pot holds it');
  });

  it('sticky wax melts lower than injection wax and only holds a piece in place', () => {
    for (const degrees of [5, 18, 25, 40]) {
      const choice = chooseWax(sticky, at(degrees), [low, high]);
      expect(choice.verdict).toBe('no');
      expect(whys(choice)).toEqual(['sticky']);
    }
  });

  it('a colour means nothing by itself', () => {
    for (const colour of ['amber', 'green', 'violet', 'grey', 'white', undefined]) {
      const { colour: _, ...plain } = cold;
      const painted = colour === undefined ? plain : { ...plain, colour };
      for (const degrees of [5, 13, 18, 21, 30]) {
        expect(chooseWax(painted, at(degrees), [low])).toEqual(chooseWax(cold, at(degrees), [low]));
      }
    }
  });
});

describe('near the edges, and without figures', () => {
  it.each([
    [11.9, 'no'],
    [12, 'take care'],
    [13.9, 'take care'],
    [14, 'yes'],
    [20, 'yes'],
    [20.1, 'take care'],
    [22, 'take care'],
    [22.1, 'no'],
  ])('at %d °C a wax for 12 to 22 °C is judged %s', (degrees, verdict) => {
    expect(chooseWax(cold, at(degrees), [low]).verdict).toBe(verdict);
  });

  const inF = { ...SI_UNITS, temperature: '°F' } as const;
  // 14–26.5 °C is shown as 57–80 °F, though it is 57.2 to 79.7.
  it.each([
    [56, 'no'],
    [57, 'take care'],
    [61, 'yes'],
    [80, 'take care'],
    [81, 'no'],
  ])('at %d °F a wax shown as working at 57–80 °F is judged %s', (degrees, verdict) => {
    const wax = aWax({ roomLowC: c(14), roomHighC: c(26.5) });
    expect(chooseWax(wax, at(celsiusFrom(degrees, '°F')), [low], inF).verdict).toBe(verdict);
  });

  it('compares in °C too as it is shown, to a tenth', () => {
    const wax = aWax({ roomLowC: celsiusFrom(71.5, '°F'), roomHighC: c(30) });
    expect(chooseWax(wax, at(21.9), [low]).reasons[0]?.says).toBe('Close to its cold edge: brittle below 21.9 °C.');
    expect(chooseWax(wax, at(21.8), [low]).verdict).toBe('no');
  });

  it('finds no day of a month outside that is shown at the very edge', () => {
    const wax = aWax({ roomLowC: c(14), roomHighC: c(26.5) });
    const month = { lowC: celsiusFrom(57, '°F'), highC: celsiusFrom(80, '°F') };
    expect(chooseWax(wax, month, [low], inF).verdict).toBe('yes');
    expect(chooseWax(wax, { lowC: celsiusFrom(80, '°F'), highC: c(30) }, [low], inF).verdict).toBe('take care');
    expect(chooseWax(wax, { lowC: c(8), highC: celsiusFrom(57, '°F') }, [low], inF).verdict).toBe('take care');
  });

  it('takes care in a month of which only part lies outside, and says which days', () => {
    const mixed = chooseWax(cold, { lowC: 19, highC: 27 }, [low]);
    expect(mixed.verdict).toBe('take care');
    expect(mixed.reasons[0]?.says).toBe('Too soft above 22 °C: not on the warmest days.');
    const both = chooseWax(cold, { lowC: 8, highC: 27 }, [low]);
    expect(whys(both)).toEqual(['brittle', 'too soft']);
    expect(both.verdict).toBe('take care');
  });

  it('says that there are no figures yet, and asks for care', () => {
    const { roomLowC: _, roomHighC: __, ...unknown } = cold;
    const choice = chooseWax(unknown, at(20), [low]);
    expect(choice.verdict).toBe('take care');
    expect(choice.reasons[0]?.says).toContain('No figures yet');
  });

  it('judges by the one edge that is known', () => {
    const { roomLowC: _, ...upTo } = cold;
    expect(chooseWax(upTo, at(2), [low]).verdict).toBe('yes');
    expect(chooseWax(upTo, at(25), [low]).verdict).toBe('no');
  });

  it('keeps a wax for low pressure out of the high-pressure injector', () => {
    const gentle = aWax({ roomLowC: c(12), roomHighC: c(30), pressure: 'low only' });
    expect(chooseWax(gentle, at(20), [high]).verdict).toBe('no');
    expect(chooseWax(gentle, at(20), [low, { ...high, holds: gentle.id }]).verdict).toBe('take care');
    expect(chooseWax(gentle, at(20), [low, high]).verdict).toBe('yes');
  });

  it('does not reckon with a retired injector', () => {
    const gone = { ...high, holds: pressed.id, retired: { on: pressed.since, reason: 'lost' as const } };
    expect(chooseWax(pressed, at(21), [low, gone]).verdict).toBe('no');
  });
});
