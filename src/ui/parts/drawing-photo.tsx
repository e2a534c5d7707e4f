import { useRef, useState } from 'preact/hooks';
import { keepPhoto } from '../../actions/keep-photo.ts';
import type { Sha256 } from '../../domain/brand.ts';
import { isProblem, type Problem } from '../../domain/problem.ts';
import type { DrawDraft } from '../drawing/draft.ts';
import { useDeps } from '../studio.tsx';
import { Button } from './button.tsx';
import { ProblemNote } from './note.tsx';
import { Picture } from './picture.tsx';

interface PhotoProps {
  draft: DrawDraft;
  set: (changes: Partial<DrawDraft>) => void;
  /** Pictures that are kept already, of the cabinet and of its room. */
  pictures: readonly Sha256[];
}

/** The photo under the drawing, fitted to the cabinet's front as it is being drawn. */
export function UnderPhoto({ draft: { photo, photoSize, photoAcross, photoDown } }: { draft: DrawDraft }) {
  if (photo === '') return null;
  const transform = `translate(${photoAcross}%, ${photoDown}%) scale(${photoSize / 100})`;
  return (
    <div class="draw-under">
      <div class="draw-photo" style={{ transform }}>
        <Picture sha={photo} size="whole" alt="" />
      </div>
    </div>
  );
}

/** Chooses the photo, how much of it is seen, and fits it to the front. */
export function PhotoTools({ draft, set, pictures }: PhotoProps) {
  const deps = useDeps();
  const input = useRef<HTMLInputElement>(null);
  const [problem, setProblem] = useState<Problem | undefined>();
  const all = [...new Set([...pictures, ...draft.taken])];

  async function take(file: File | undefined): Promise<void> {
    if (!file) return;
    const kept = await keepPhoto(deps, file);
    if (isProblem(kept)) return setProblem(kept);
    setProblem(undefined);
    set({ photo: kept, taken: [...new Set([...draft.taken, kept])] });
  }

  return (
    <section class="card" aria-label="Photo under the drawing">
      <h2>Photo under the drawing</h2>
      <p class="field-hint">
        A photo of the cabinet, taken straight from the front. It is kept as a picture of it.
        {pictures.length > 0 && ' Those kept of it and of its room can be tapped here.'}
      </p>
      <input
        ref={input}
        type="file"
        accept="image/*"
        hidden
        onChange={(event) => {
          const [file] = event.currentTarget.files ?? [];
          event.currentTarget.value = '';
          void take(file);
        }}
      />
      {all.length > 0 && (
        <div class="draw-row">
          {all.map((sha, at) => (
            <button
              key={sha}
              type="button"
              class="thumb"
              aria-pressed={sha === draft.photo}
              aria-label={`Picture ${at + 1} of ${all.length} under the drawing`}
              onClick={() => set({ photo: sha })}
            >
              <Picture sha={sha} alt="" />
            </button>
          ))}
        </div>
      )}
      <div class="button-row">
        <Button onClick={() => input.current?.click()}>{all.length > 0 ? 'Another photo' : 'Take or choose a photo'}</Button>
        {draft.photo !== '' && <Button onClick={() => set({ photo: '' })}>No photo</Button>}
      </div>
      {problem && <ProblemNote problem={problem} />}
      {draft.photo !== '' && (
        <>
          <Slider label="How much of it is seen" low={0} high={100} value={draft.seen} onInput={(seen) => set({ seen })} />
          <Slider label="Size" low={50} high={250} value={draft.photoSize} onInput={(photoSize) => set({ photoSize })} />
          <Slider
            label="To the left or right"
            low={-100}
            high={100}
            value={draft.photoAcross}
            onInput={(photoAcross) => set({ photoAcross })}
          />
          <Slider label="Up or down" low={-100} high={100} value={draft.photoDown} onInput={(photoDown) => set({ photoDown })} />
        </>
      )}
    </section>
  );
}

interface SliderProps {
  label: string;
  low: number;
  high: number;
  value: number;
  onInput: (value: number) => void;
}

function Slider({ label, low, high, value, onInput }: SliderProps) {
  return (
    <label class="draw-slider">
      <span>
        {label}: {value} %
      </span>
      <input type="range" min={low} max={high} value={value} onInput={(event) => onInput(Number(event.currentTarget.value))} />
    </label>
  );
}
