import { changePictures } from '../../actions/change-pictures.ts';
import type { Thing } from '../../domain/shelf.ts';
import type { DatedPicture } from '../../views/pictures-in-time.ts';
import { useDeps } from '../studio.tsx';
import { useSave } from '../use-save.ts';
import { Button } from './button.tsx';
import { Mark } from './mark.tsx';
import { Picture } from './picture.tsx';
import { SaveProblem } from './save-problem.tsx';

interface LinesProps {
  thing: Thing;
  pictures: readonly DatedPicture[];
  /** Puts a picture to the left or the right; absent while there is but one. */
  onShow?: ((side: 'left' | 'right', at: number) => void) | undefined;
}

/** Every picture of a thing by date, with what happened then; each can be made its portrait, and taken off. */
export function PictureLines({ thing, pictures, onShow }: LinesProps) {
  const deps = useDeps();
  const save = useSave();
  return (
    <>
      <SaveProblem save={save} />
      <ol class="picture-lines">
        {pictures.map(({ sha, day, on, says, isPortrait }, at) => (
          <li key={sha} class="card picture-line">
            <Picture sha={sha} alt="" />
            <div>
              <p class="row-title">
                <time dateTime={on}>{day}</time>
              </p>
              <p class="row-detail">{says}</p>
              {isPortrait && <Mark shape="yes" word="known by this one" tone="plain" />}
            </div>
            <div class="button-row">
              {onShow && (
                <>
                  <Button aria-label={`Show left: ${day}, ${says}`} onClick={() => onShow('left', at)}>
                    Left
                  </Button>
                  <Button aria-label={`Show right: ${day}, ${says}`} onClick={() => onShow('right', at)}>
                    Right
                  </Button>
                </>
              )}
              {!isPortrait && (
                <Button
                  look="quiet"
                  aria-label={`Known by this one: ${day}, ${says}`}
                  onClick={() =>
                    void save.run(
                      () => changePictures(deps, { of: thing.id, first: sha }),
                      () => 'It is known by this picture now.',
                    )
                  }
                >
                  Known by this one
                </Button>
              )}
              <Button
                look="quiet"
                aria-label={`Take off: ${day}, ${says}`}
                onClick={() =>
                  void save.run(
                    () => changePictures(deps, { of: thing.id, without: [sha] }),
                    () => 'The picture was taken off.',
                  )
                }
              >
                Take off
              </Button>
            </div>
          </li>
        ))}
      </ol>
    </>
  );
}
