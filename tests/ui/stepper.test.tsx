import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { useState } from 'preact/hooks';
import { afterEach, describe, expect, it } from 'vitest';
import { Stepper } from '../../src/ui/parts/stepper.tsx';

let kept = 0;

function Held({ start, low, high }: { start: number; low?: number; high?: number }) {
  const [value, setValue] = useState(start);
  kept = value;
  return <Stepper label="Shots" value={value} low={low ?? 0} high={high ?? 100} onChange={setValue} />;
}

const input = () => screen.getByLabelText<HTMLInputElement>('Shots');

async function type(text: string): Promise<void> {
  fireEvent.input(input(), { target: { value: text } });
  await Promise.resolve();
}

function show(start: number, low?: number, high?: number): void {
  render(<Held start={start} {...(low === undefined ? {} : { low })} {...(high === undefined ? {} : { high })} />);
}

afterEach(cleanup);

describe('a number typed into a stepper', () => {
  it('counts at every key stroke that makes a number', async () => {
    show(0);
    await type('1');
    expect(kept).toBe(1);
    await type('12');
    expect(kept).toBe(12);
  });

  it('may be cleared on the way to another: nothing is put in its place', async () => {
    show(1, 1);
    await type('');
    expect([input().value, kept]).toEqual(['', 1]);
    await type('2');
    expect([input().value, kept]).toEqual(['2', 2]);
    fireEvent.blur(input());
    expect(input().value).toBe('2');
  });

  it.each([
    ['12o', '“12o” is no whole number. 3 is kept.'],
    ['2,5', '“2,5” is no whole number. 3 is kept.'],
    ['−4', '2 is the least. 3 is kept.'],
    ['1', '2 is the least. 3 is kept.'],
    ['101', '100 is the most. 3 is kept.'],
  ])('“%s” is refused with a word beside it, and what counts is shown once it is left', async (typed, says) => {
    show(3, 2);
    await type(typed);
    expect((await screen.findByRole('alert')).textContent).toBe(says);
    expect([input().value, kept]).toEqual([typed, 3]);
    fireEvent.blur(input());
    await screen.findByDisplayValue('3');
    fireEvent.click(screen.getByRole('button', { name: 'Shots: one more' }));
    await screen.findByDisplayValue('4');
    expect(screen.queryByRole('alert')).toBeNull();
  });
});
