import { useRef, useState } from 'preact/hooks';
import { keepPhoto } from '../../actions/keep-photo.ts';
import type { Sha256 } from '../../domain/brand.ts';
import { sayCount } from '../../domain/measure-words.ts';
import { isProblem, type Problem } from '../../domain/problem.ts';
import type { PlacePicture, UnderDrawing } from '../../views/under-drawing.ts';
import type { DrawDraft } from '../drawing/draft.ts';
import { useDeps } from '../studio.tsx';
import { Button } from './button.tsx';
import { ProblemNote } from './note.tsx';
import { Picture } from './picture.tsx';

/** Pictures of other places shown at once. */
const FEW = 24;

interface PhotoProps {
  draft: DrawDraft;
  set: (changes: Partial<DrawDraft>) => void;
  /** Pictures that are kept already. */
  kept: UnderDrawing;
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
export function PhotoTools({ draft, set, kept: { near, others } }: PhotoProps) {
  const deps = useDeps();
  const input = useRef<HTMLInputElement>(null);
  const [problem, setProblem] = useState<Problem | undefined>();
  const [shown, setShown] = useState(FEW);
  const isKept = new Set([...near, ...others].map(({ sha }) => sha));
  const taken = draft.taken.filter((sha) => !isKept.has(sha)).map((sha) => ({ sha, of: 'taken just now' }));
  const choose = (photo: Sha256) => set({ photo });

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
      <p class="field-hint">A photo of the cabinet, taken straight from the front. It is kept as a picture of it.</p>
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
      <Thumbs pictures={[...taken, ...near]} photo={draft.photo} onChoose={choose} />
      {others.length > 0 && (
        <details class="more">
          <summary>Pictures of other places ({others.length})</summary>
          <Thumbs pictures={others.slice(0, shown)} photo={draft.photo} onChoose={choose} />
          {others.length > shown && (
            <Button onClick={() => setShown(shown + FEW)}>Show more of {sayCount(others.length - shown, 'other')}</Button>
          )}
        </details>
      )}
      <div class="button-row">
        <Button onClick={() => input.current?.click()}>{draft.photo !== '' ? 'Another photo' : 'Take or choose a photo'}</Button>
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

interface ThumbsProps {
  pictures: readonly PlacePicture[];
  photo: Sha256 | '';
  onChoose: (sha: Sha256) => void;
}

function Thumbs({ pictures, photo, onChoose }: ThumbsProps) {
  if (pictures.length === 0) return null;
  return (
    <div class="draw-row draw-photos">
      {pictures.map(({ sha, of }) => (
        <button key={sha} type="button" class="thumb" aria-pressed={sha === photo} onClick={() => onChoose(sha)}>
          <Picture sha={sha} alt="" />
          <span>{of}</span>
        </button>
      ))}
    </div>
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
