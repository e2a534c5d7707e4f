import { METALS, type Metal } from '../../domain/design.ts';
import { isProblem } from '../../domain/problem.ts';
import type { Units } from '../../domain/units.ts';
import { MEASURES, type MeasureOf, PIECES, type PieceKind, typedReading, typedRing, whichSize } from '../../views/which-size.ts';
import { AllowanceEditor } from '../parts/allowance-editor.tsx';
import { Choices, Field } from '../parts/field.tsx';
import { ProblemNote } from '../parts/note.tsx';
import { Screen } from '../parts/screen.tsx';
import { SizeAnswer } from '../parts/size-answer.tsx';
import { ThingPicker } from '../parts/thing-picker.tsx';
import { route } from '../router.ts';
import { useShelf } from '../studio.tsx';
import { useDraft } from '../use-draft.ts';
import { inUnits, useUnits } from '../use-units.ts';
import '../styles/size.css';

const MEASURE_WORD: Readonly<Record<MeasureOf, string>> = {
  'inside diameter': 'Across the inside of a ring',
  'inside circumference': 'Around the inside of a ring',
  length: 'A length',
};
const PIECE_WORD: Readonly<Record<PieceKind, string>> = { casting: 'A finished casting', wax: 'A wax', master: 'A master' };

interface SizeDraft {
  readonly reading: string;
  readonly measure: MeasureOf;
  readonly piece: PieceKind;
  readonly metal: string;
  readonly of: string;
}

/** Which size is this? From one caliper reading, and what is still to shrink. */
export function SizeScreen() {
  const units = useUnits();
  const asked = route.value.query.get('of') ?? '';
  const {
    values,
    set,
    problem: lost,
  } = useDraft<SizeDraft>(inUnits(`size${asked && `:${asked}`}`, units), () => ({
    reading: '',
    measure: 'length',
    piece: 'casting',
    metal: '',
    of: asked,
  }));
  const read = readingOf(values.reading, units);
  const isNamed = read !== undefined && !isProblem(read) && read.isName;
  return (
    <Screen title="Which size is this?">
      {lost && <ProblemNote problem={lost} />}
      <Field
        label="Caliper reading"
        keys="text"
        unit={units.length}
        value={values.reading}
        hint="Or the name of a ring size, such as US 7 or UK N."
        problem={isProblem(read) ? read : undefined}
        onInput={(reading) => set({ reading })}
      />
      {read !== undefined && !isProblem(read) && <Answer read={read} values={values} units={units} />}
      {!isNamed && (
        <>
          <Choices
            legend="Measured"
            options={MEASURES.map((value) => ({ value, word: MEASURE_WORD[value] }))}
            picked={[values.measure]}
            onPick={([measure]) => measure && set({ measure })}
          />
          <Choices
            legend="On"
            options={PIECES.map((value) => ({ value, word: PIECE_WORD[value] }))}
            picked={[values.piece]}
            onPick={([piece]) => piece && set({ piece })}
          />
          {values.piece !== 'casting' && (
            <Choices
              legend="To be cast in"
              options={METALS.map((value) => ({ value, word: value }))}
              picked={METALS.filter((metal) => metal === values.metal)}
              onPick={([metal]) => metal && set({ metal })}
            />
          )}
          <ThingPicker label="Of which design or mould" nouns={['design', 'mould']} value={values.of} onPick={(of) => set({ of })} />
        </>
      )}
      <AllowanceEditor />
    </Screen>
  );
}

interface Read {
  readonly mm: number;
  readonly isName: boolean;
}

function readingOf(typed: string, units: Units) {
  const ring = typedRing(typed);
  if (ring !== undefined) return isProblem(ring) ? ring : ({ mm: ring, isName: true } satisfies Read);
  const mm = typedReading(typed, units);
  return mm === undefined || isProblem(mm) ? mm : ({ mm, isName: false } satisfies Read);
}

function Answer({ read, values, units }: { read: Read; values: SizeDraft; units: Units }) {
  const shelf = useShelf();
  const metal = METALS.find((each) => each === values.metal) as Metal | undefined;
  const named = { measure: 'inside diameter', piece: 'casting', metal: undefined } as const;
  const asked = read.isName ? { ...named, mm: read.mm } : { mm: read.mm, measure: values.measure, piece: values.piece, metal };
  return <SizeAnswer answer={whichSize(shelf, { ...asked, of: values.of || undefined }, units)} units={units} />;
}
