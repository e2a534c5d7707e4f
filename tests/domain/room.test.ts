import { describe, expect, it } from 'vitest';
import type { Celsius } from '../../src/domain/brand.ts';
import { defaultRoom, roomAssumed, roomIn, roomNextMonth, roomTable } from '../../src/domain/room.ts';
import { day } from '../support/builders.ts';

const own = { lowC: 7 as Celsius, highC: 16 as Celsius };

describe('the workshop’s months', () => {
  it('turns the default over for the south: July there is January in the north', () => {
    expect(defaultRoom(7, 'south')).toEqual(defaultRoom(1, 'north'));
    expect(defaultRoom(1, 'south')).toEqual(defaultRoom(7, 'north'));
    expect(defaultRoom(1, 'north').highC).toBeLessThan(defaultRoom(7, 'north').highC);
  });

  it('takes the studio’s own figure before the default, and says which it is', () => {
    const studio = { months: { '2': own } };
    expect(roomIn(2, studio)).toEqual({ month: '2', ...own, isOwn: true });
    expect(roomIn(3, studio).isOwn).toBe(false);
  });

  it('is northern until somebody says otherwise', () => {
    expect(roomIn(1, {})).toEqual(roomIn(1, { hemisphere: 'north' }));
    expect(roomIn(1, {})).not.toEqual(roomIn(1, { hemisphere: 'south' }));
  });

  it('has twelve months, each low no higher than its high', () => {
    const table = roomTable({});
    expect(table.map(({ month }) => month)).toEqual(['1', '2', '3', '4', '5', '6', '7', '8', '9', '10', '11', '12']);
    for (const { lowC, highC } of table) expect(lowC).toBeLessThanOrEqual(highC);
  });

  it('goes from December on to January', () => {
    expect(roomNextMonth(day('2025-12-09'), { months: { '1': own } })).toMatchObject(own);
  });

  it('assumes the middle of the month, to half a degree', () => {
    expect(roomAssumed(day('2025-02-20'), { months: { '2': own } })).toBe(11.5);
  });
});
