import { useRef, useState } from 'preact/hooks';
import { keepPhoto } from '../../actions/keep-photo.ts';
import type { Sha256 } from '../../domain/brand.ts';
import { isProblem, type Problem } from '../../domain/problem.ts';
import { to } from '../router.ts';
import { useDeps } from '../studio.tsx';
import { Button, LinkButton } from './button.tsx';
import { ProblemNote } from './note.tsx';
import { Picture } from './picture.tsx';
import { Sheet } from './sheet.tsx';

/** Thumbnails in a row; a tap shows the whole picture. Those `of` a thing lead to its pictures by date. */
export function Thumbs({ pictures, what, of }: { pictures: readonly Sha256[]; what: string; of?: string }) {
  const [open, setOpen] = useState<number | undefined>();
  if (pictures.length === 0) return null;
  const sha = open === undefined ? undefined : pictures[open];
  return (
    <>
      <ul class="thumbs">
        {pictures.map((each, index) => (
          <li key={each}>
            <button
              type="button"
              class="thumb"
              aria-label={`Picture ${index + 1} of ${pictures.length}: ${what}. Show it whole`}
              onClick={() => setOpen(index)}
            >
              <Picture sha={each} alt="" />
            </button>
          </li>
        ))}
        {of !== undefined && pictures.length > 1 && (
          <li>
            <LinkButton href={to(['pictures', of])}>Side by side</LinkButton>
          </li>
        )}
      </ul>
      {sha && open !== undefined && (
        <Sheet title={what} onClose={() => setOpen(undefined)}>
          <Picture sha={sha} size="whole" alt={what} />
          {pictures.length > 1 && (
            <div class="button-row">
              <Button onClick={() => setOpen((open + pictures.length - 1) % pictures.length)}>Before</Button>
              <Button onClick={() => setOpen((open + 1) % pictures.length)}>Next</Button>
            </div>
          )}
        </Sheet>
      )}
    </>
  );
}

/** Takes a photo or chooses one; it is kept at once and shown, and named by the form when that is saved. */
export function PhotoField({ pictures, onChange }: { pictures: readonly Sha256[]; onChange: (pictures: readonly Sha256[]) => void }) {
  const deps = useDeps();
  const input = useRef<HTMLInputElement>(null);
  const [problem, setProblem] = useState<Problem | undefined>();
  const [isBusy, setBusy] = useState(false);

  async function add(files: readonly File[]): Promise<void> {
    setBusy(true);
    setProblem(undefined);
    let added = pictures;
    for (const file of files) {
      const kept = await keepPhoto(deps, file);
      if (isProblem(kept)) setProblem(kept);
      else if (!added.includes(kept)) added = [...added, kept];
    }
    if (added !== pictures) onChange(added);
    setBusy(false);
  }

  return (
    <div class="field photos">
      <input
        ref={input}
        type="file"
        accept="image/*"
        multiple
        hidden
        onChange={(event) => {
          const files = [...(event.currentTarget.files ?? [])];
          // The same file can be chosen again after a problem.
          event.currentTarget.value = '';
          void add(files);
        }}
      />
      <Thumbs pictures={pictures} what="Photo for this entry" />
      <div class="button-row">
        <Button disabled={isBusy} onClick={() => input.current?.click()}>
          {isBusy ? 'Adding…' : pictures.length > 0 ? 'Another photo' : 'Add a photo'}
        </Button>
        {pictures.length > 0 && (
          <Button look="quiet" onClick={() => onChange([])}>
            Leave the photos out
          </Button>
        )}
      </div>
      {problem && <ProblemNote problem={problem} />}
    </div>
  );
}
