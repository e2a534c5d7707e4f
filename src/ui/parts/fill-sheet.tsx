import { fillInjector } from '../../actions/fill-injector.ts';
import type { WaxId } from '../../domain/brand.ts';
import { PRESSURE_WORD } from '../../domain/injector.ts';
import type { Injector } from '../../domain/shelf.ts';
import { titleOf } from '../../domain/title.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { useSave } from '../use-save.ts';
import { Button, LinkButton } from './button.tsx';
import { Caution } from './note.tsx';
import { SaveProblem } from './save-problem.tsx';
import { Sheet } from './sheet.tsx';

/** Which injector is filled with a wax, or emptied of it. */
export function FillSheet({ wax, name, onClose }: { wax: WaxId; name: string; onClose: () => void }) {
  const deps = useDeps();
  const shelf = useShelf();
  const save = useSave();
  const injectors = [...shelf.things.injector.values()].filter((injector) => !injector.retired);
  const fill = (injector: Injector, next: WaxId | null) => {
    const into = titleOf(shelf, injector);
    void save.run(
      (confirmed) => fillInjector(deps, { injector: injector.id, wax: next, confirmed }),
      () => {
        onClose();
        return next === null ? `${into} is empty.` : `${into} holds ${name}.`;
      },
    );
  };
  return (
    <Sheet title={`Fill an injector with ${name}`} onClose={onClose}>
      <Caution>
        Let the pressure off before you open it, and keep hands and face away from the nozzle. The maker’s data sheet comes first.
      </Caution>
      <SaveProblem save={save} anyway="Fill it all the same" />
      {injectors.length === 0 && (
        <>
          <p>No injector is recorded yet.</p>
          <LinkButton href="#/new/injector">Record an injector</LinkButton>
        </>
      )}
      <ul class="list fill-list">
        {injectors.map((injector) => {
          const holds = injector.holds === undefined ? 'empty' : `holds ${titleOf(shelf, shelf.things.wax.get(injector.holds))}`;
          const isHeld = injector.holds === wax;
          return (
            <li key={injector.id} class="fill-row">
              <span class="row-words">
                <span class="row-title">{titleOf(shelf, injector)}</span>
                <span class="row-detail">{[injector.pressure && PRESSURE_WORD[injector.pressure], holds].filter(Boolean).join(' · ')}</span>
              </span>
              <Button disabled={save.isBusy} onClick={() => fill(injector, isHeld ? null : wax)}>
                {isHeld ? 'Empty it' : 'Fill it'}
              </Button>
            </li>
          );
        })}
      </ul>
    </Sheet>
  );
}
