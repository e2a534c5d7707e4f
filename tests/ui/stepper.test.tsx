import { cleanup, fireEvent, render, screen, waitFor } from '@testing-library/preact';
import { useState } from 'preact/hooks';
import { afterEach, describe, expect, it } from 'vitest';
import { Stepper } from '../../src/ui/parts/stepper.tsx';
import { refusal } from '../../src/ui/refused.ts';

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
    ['12o', '“12o” is no whole number. It was 3.'],
    ['2,5', '“2,5” is no whole number. It was 3.'],
    ['−4', '2 is the least. It was 3.'],
    ['1', '2 is the least. It was 3.'],
    ['101', '100 is the most. It was 3.'],
  ])('“%s” is refused with a word beside it, and stays until it is put right: nothing is saved meanwhile', async (typed, says) => {
    show(3, 2);
    await type(typed);
    expect((await screen.findByRole('alert')).textContent).toBe(says);
    expect([input().value, kept]).toEqual([typed, 3]);
    fireEvent.blur(input());
    await waitFor(() => expect(refusal()?.says).toBe(`Shots: ${says.slice(0, -' It was 3.'.length)}`));
    expect(document.activeElement).toBe(input());
    expect(input().value).toBe(typed);
    fireEvent.click(screen.getByRole('button', { name: 'Shots: one more' }));
    await screen.findByDisplayValue('4');
    expect(screen.queryByRole('alert')).toBeNull();
    await waitFor(() => expect(refusal()).toBeUndefined());
  });

  it('stands in the way of nothing once its form is left', async () => {
    show(3);
    await type('x');
    await waitFor(() => expect(refusal()).toBeDefined());
    cleanup();
    await waitFor(() => expect(refusal()).toBeUndefined());
  });
});
