import { cleanup, fireEvent, render, screen, waitFor } from '@testing-library/preact';
import { useState } from 'preact/hooks';
import { afterEach, expect, it } from 'vitest';
import { beside, formProblem } from '../../src/domain/form-problem.ts';
import type { Problem } from '../../src/domain/problem.ts';
import { unconfirmed } from '../../src/domain/warning.ts';
import { Field } from '../../src/ui/parts/field.tsx';
import { SaveProblem } from '../../src/ui/parts/save-problem.tsx';
import { useSave } from '../../src/ui/use-save.ts';

const confirmedWith: string[] = [];

function Form({ refusal }: { refusal: Problem }) {
  const [held, setHeld] = useState({ shots: '', pot: '' });
  const save = useSave(held);
  return (
    <>
      <SaveProblem save={save} />
      <Field label="Shots" value={held.shots} problem={beside(save.problem, 'shots')} onInput={(shots) => setHeld({ ...held, shots })} />
      <Field label="Pot" value={held.pot} problem={beside(save.problem, 'pot')} onInput={(pot) => setHeld({ ...held, pot })} />
      <button
        type="button"
        onClick={() =>
          void save.run(
            async (isConfirmed) => {
              if (isConfirmed) confirmedWith.push(held.shots);
              return isConfirmed ? [] : refusal;
            },
            () => undefined,
          )
        }
      >
        Save
      </button>
    </>
  );
}

const save = () => fireEvent.click(screen.getByRole('button', { name: 'Save' }));
const type = (label: string, value: string) => fireEvent.input(screen.getByLabelText(label), { target: { value } });
const told = () => screen.queryAllByText(/shot|cold/).map(({ textContent }) => textContent?.trim());

afterEach(cleanup);

it('what was refused goes with the field that is changed, above the form too, and is said again when it is refused again', async () => {
  const [shots, pot] = ['A run has at least one shot.', 'The pot is cold.'];
  render(<Form refusal={formProblem({ shots, pot })} />);
  save();
  await waitFor(() => expect(told()).toEqual([`${shots} ${pot}`, shots, pot]));
  type('Shots', '5');
  await waitFor(() => expect(told()).toEqual([pot, pot]));
  type('Pot', 'hot');
  await waitFor(() => expect(told()).toEqual([]));
  expect(screen.queryByRole('alert')).toBeNull();
  save();
  await waitFor(() => expect(told()).toEqual([`${shots} ${pot}`, shots, pot]));
});

it('a warning that was given of other words cannot be confirmed', async () => {
  render(<Form refusal={unconfirmed(['This mould was marked failed.'], false) as Problem} />);
  type('Shots', '5');
  save();
  await screen.findByText('This mould was marked failed.');
  type('Shots', '50');
  await waitFor(() => expect(screen.queryByText('This mould was marked failed.')).toBeNull());
  save();
  fireEvent.click(await screen.findByRole('button', { name: 'Write it down all the same' }));
  await waitFor(() => expect(confirmedWith).toEqual(['50']));
});
