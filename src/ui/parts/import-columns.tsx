import { DELIMITERS, type Delimiter } from '../../domain/csv/delimiter.ts';
import { guessColumns } from '../../domain/csv/guess.ts';
import type { Reading } from '../../domain/csv/plan.ts';
import { columnsOf, TARGETS, type Target } from '../../domain/csv/targets.ts';
import { sayNumber } from '../../domain/measure-words.ts';
import type { ListHead } from '../../views/import-preview.ts';
import { Choices, Select } from './field.tsx';
import type { ChosenList } from './import-source.tsx';

const TARGET_WORDS: Readonly<Record<Target, string>> = {
  mould: 'Moulds',
  master: 'Masters',
  design: 'Designs',
  wax: 'Waxes',
  place: 'Places',
};
const DELIMITER_WORDS: Readonly<Record<Delimiter, string>> = { ',': 'Commas', ';': 'Semicolons', '\t': 'Tabs' };

interface ColumnsProps {
  readonly list: ChosenList;
  readonly head: ListHead;
  readonly reading: Reading;
  readonly onReading: (reading: Reading) => void;
  readonly onDelimiter: (delimiter: Delimiter) => void;
}

/** What the list is of, and what each of its columns is. */
export function ImportColumns({ list, head, reading, onReading, onDelimiter }: ColumnsProps) {
  const headings = head.rows[0]?.cells ?? [];
  const examples = head.rows.slice(reading.hasHeadings ? 1 : 0);
  const count = head.total - (reading.hasHeadings ? 1 : 0);
  const options = [
    { value: '', word: '– leave out –' },
    ...Object.entries(columnsOf(reading.target)).map(([value, { label }]) => ({ value, word: label })),
  ];
  const choose = (index: number, field: string) => {
    const mapping = reading.mapping.map((each, i) => {
      if (i === index) return field === '' ? null : field;
      // One column to a field, but notes may come from several.
      return each === field && field !== 'note' ? null : each;
    });
    onReading({ ...reading, mapping });
  };
  return (
    <>
      <section class="card">
        <p>
          <strong>{count === 1 ? '1 row' : `${sayNumber(count)} rows`}</strong> {list.name ? `in ${list.name}` : 'pasted'}
          {list.encoding ? `, read as ${list.encoding}` : ''}.
        </p>
        {list.encoding?.includes('Windows-1252') && (
          <p class="field-hint">
            {list.encoding === 'Windows-1252' ? 'It is not UTF-8.' : 'Some lines are not UTF-8.'} If letters with accents look wrong below,
            save the list as “CSV UTF-8” and choose it again.
          </p>
        )}
        <Choices
          legend="It is a list of"
          options={TARGETS.map((value) => ({ value, word: TARGET_WORDS[value] }))}
          picked={[reading.target]}
          onPick={([target = 'mould']) =>
            onReading({ ...reading, target, mapping: guessColumns(reading.hasHeadings ? headings : headings.map(() => ''), target) })
          }
        />
        <Select
          label="Cells are parted by"
          value={head.delimiter}
          options={DELIMITERS.map((value) => ({ value, word: DELIMITER_WORDS[value] }))}
          onInput={(value) => onDelimiter(value as Delimiter)}
        />
        <Select
          label="The first line"
          value={reading.hasHeadings ? 'headings' : 'row'}
          options={[
            { value: 'headings', word: 'names the columns' },
            { value: 'row', word: 'is a row like the others' },
          ]}
          onInput={(value) => onReading({ ...reading, hasHeadings: value === 'headings' })}
        />
      </section>
      <section class="card">
        <h2>What each column is</h2>
        {headings.map((heading, index) => {
          const shown = [...new Set(examples.map((row) => row.cells[index]?.trim() ?? ''))].filter((cell) => cell !== '').slice(0, 3);
          return (
            <Select
              // A column has nothing but its place to be told by: headings may be empty or alike.
              key={`${index} ${heading}`}
              label={reading.hasHeadings && heading.trim() !== '' ? heading : `Column ${index + 1}`}
              value={reading.mapping[index] ?? ''}
              options={options}
              onInput={(field) => choose(index, field)}
              hint={shown.length > 0 ? `such as ${shown.map((cell) => cell.slice(0, 40)).join(' · ')}` : 'empty in the first rows'}
            />
          );
        })}
      </section>
    </>
  );
}
