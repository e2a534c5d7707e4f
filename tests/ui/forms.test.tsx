import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { useState } from 'preact/hooks';
import { afterEach, expect, it } from 'vitest';
import { beside } from '../../src/domain/form-problem.ts';
import { NOUNS } from '../../src/domain/noun.ts';
import { checkedFields } from '../../src/domain/plans/field-checks.ts';
import { isProblem } from '../../src/domain/problem.ts';
import { FORMS } from '../../src/ui/forms.ts';
import { Field } from '../../src/ui/parts/field.tsx';

afterEach(cleanup);

const texts = NOUNS.flatMap((noun) =>
  [...FORMS[noun].main, ...FORMS[noun].more].flatMap((editor) =>
    editor.as === 'text' && editor.field !== 'code' ? [{ noun, field: editor.field, max: editor.max }] : [],
  ),
);

it.each(texts)(
  'a text for $field of a $noun that is longer than its form says fits is refused beside it, and one that fits is kept',
  ({ noun, field, max }) => {
    const long = checkedFields(noun, { [field]: 'x'.repeat(max + 1) });
    expect(isProblem(long) && beside(long, field)).toBe(`That is ${max + 1} characters; ${max} fit here.`);
    expect(checkedFields(noun, { [field]: 'x'.repeat(max) })).toEqual({ [field]: 'x'.repeat(max) });
  },
);

function Name() {
  const [name, setName] = useState('');
  return <Field label="Name" max={120} value={name} problem={name === '' ? 'Give it a name.' : undefined} onInput={setName} />;
}

it('a pasted text that is too long stands there whole, and that it is too long is said at once', async () => {
  const { container } = render(<Name />);
  const input = screen.getByLabelText<HTMLInputElement>('Name');
  expect(input.hasAttribute('maxlength')).toBe(false);
  expect(container.querySelector('.field-problem')?.textContent).toBe('Give it a name.');
  fireEvent.input(input, { target: { value: 'x'.repeat(345) } });
  await screen.findByText('That is 345 characters; 120 fit here.');
  expect([input.value.length, input.getAttribute('aria-invalid')]).toEqual([345, 'true']);
  fireEvent.input(input, { target: { value: `  ${'x'.repeat(120)}  ` } });
  await expect.poll(() => container.querySelector('.field-problem')).toBeNull();
});
