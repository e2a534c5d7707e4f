import { useState } from 'preact/hooks';
import { type DetailChanges, describeFronts } from '../../domain/drawing/details.ts';
import { type DrawnFront, FRONT_KINDS, type FrontKind, frontsOfKeys } from '../../domain/drawing/drawing.ts';
import { PLACE_FOR } from '../../domain/place.ts';
import { isProblem } from '../../domain/problem.ts';
import type { Easel } from '../drawing/use-drawing.ts';
import { figure, one, refs, text, yes } from '../form-editor.ts';
import { changedFields, type Typed, typedFields } from '../form-values.ts';
import { useUnits } from '../use-units.ts';
import { Choices } from './field.tsx';
import { FormField } from './form-field.tsx';
import { FormSheet } from './form-sheet.tsx';

const LABEL = text('label', 24);
const SHARED = [refs('periods', 'period'), one('for', PLACE_FOR), figure('capacity'), yes('open')];

/** What is said of the chosen fronts: the label of one; kind, periods, use and capacity of all of them. */
export function AboutSheet({ easel, onClose }: { easel: Easel; onClose: () => void }) {
  const units = useUnits();
  const fronts = frontsOfKeys(easel.drawing, easel.picked);
  const editors = fronts.length === 1 ? [LABEL, ...SHARED] : SHARED;
  const [begun] = useState<Typed>(() => typedFields(editors, shared(fronts), units));
  const [typed, setTyped] = useState(begun);
  const [kind, setKind] = useState(() => shared(fronts)['kind'] as FrontKind | undefined);
  const title = fronts.length === 1 ? `About ${fronts[0]?.label ?? ''}` : `About ${fronts.length} fronts`;

  function take(): string | undefined {
    const fields = changedFields(editors, typed, begun, units);
    if (isProblem(fields)) return fields.says;
    const isKind = kind !== undefined && fronts.some((front) => front.kind !== kind);
    if (Object.keys(fields).length === 0 && !isKind) return undefined;
    const changes = { ...fields, ...(isKind ? { kind } : {}), ...(fields['periods'] === null ? { periods: [] } : {}) } as DetailChanges;
    const next = describeFronts(easel.drawing, easel.picked, changes);
    if (isProblem(next)) return next.says;
    easel.take(() => next, 'Written on the drawing.');
    return undefined;
  }

  return (
    <FormSheet title={title} take={take} onClose={onClose}>
      <Choices
        legend="Kind"
        options={FRONT_KINDS.map((each) => ({ value: each, word: each }))}
        picked={kind ? [kind] : []}
        onPick={([each]) => setKind(each)}
      />
      {editors.map((editor) => (
        <FormField
          key={editor.field}
          noun="place"
          editor={editor}
          value={typed[editor.field] ?? ''}
          onChange={(value) => setTyped({ ...typed, [editor.field]: value })}
        />
      ))}
      {fronts.length > 1 && <p class="field-hint">What you leave as it is stays as each of them has it.</p>}
    </FormSheet>
  );
}

/** What all of them have alike. */
function shared([first, ...others]: readonly DrawnFront[]): Readonly<Record<string, unknown>> {
  const alike = Object.entries(first ?? {}).filter(([field, value]) =>
    others.every((other) => JSON.stringify((other as unknown as Record<string, unknown>)[field]) === JSON.stringify(value)),
  );
  return Object.fromEntries(alike);
}
