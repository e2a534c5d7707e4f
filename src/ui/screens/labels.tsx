import { useEffect, useRef, useState } from 'preact/hooks';
import { giveCodes, markLabelled } from '../../actions/label-things.ts';
import { printLabels } from '../../actions/print-labels.ts';
import type { PlaceId, ThingId } from '../../domain/brand.ts';
import { layOut } from '../../domain/label-sheet.ts';
import { sayCount } from '../../domain/measure-words.ts';
import { isProblem } from '../../domain/problem.ts';
import { labelledIn, labelsFor } from '../../views/label-sheet.ts';
import { chosenSheet, keepLabelSettings, type LabelSettings, readLabelSettings } from '../label-settings.ts';
import { Button } from '../parts/button.tsx';
import { LabelChoice } from '../parts/label-choice.tsx';
import { LabelGrid } from '../parts/label-grid.tsx';
import { LabelPages, TestPage } from '../parts/label-pages.tsx';
import { LabelPositions } from '../parts/label-positions.tsx';
import { LabelPreview } from '../parts/label-preview.tsx';
import { ProblemNote } from '../parts/note.tsx';
import { SaveProblem } from '../parts/save-problem.tsx';
import { Screen } from '../parts/screen.tsx';
import { route } from '../router.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { useDraft } from '../use-draft.ts';
import { useSave } from '../use-save.ts';
import '../styles/labels.css';

interface LabelsDraft {
  readonly things: readonly string[];
  /** Positions of the first sheet whose label is gone. */
  readonly used: readonly number[];
}

/** What is drawn for the print window, as long as nothing else is chosen. */
type Job = 'labels' | 'test' | undefined;

/** Labels for things and drawers, on the studio's own sheets. `?things=ID,ID` and `?place=ID` say for what. */
export function LabelsScreen() {
  const asked = route.value.query.toString();
  return <LabelsForm key={asked} asked={asked} />;
}

function LabelsForm({ asked }: { asked: string }) {
  const deps = useDeps();
  const shelf = useShelf();
  const save = useSave();
  const { query } = route.value;
  const start = (): LabelsDraft => ({
    things: [...(query.get('things') ?? '').split(',').filter(Boolean), ...labelledIn(shelf, (query.get('place') ?? '') as PlaceId)],
    used: [],
  });
  const { values, set, problem: lost } = useDraft<LabelsDraft>(`labels${asked && `?${asked}`}`, start);
  const [chosen, setChosen] = useState(() => readLabelSettings(deps));
  const [job, setJob] = useState<Job>();
  const undo = useRef<() => void>(undefined);
  const sheet = chosenSheet(chosen);
  const { grid, correction } = sheet;
  const labels = labelsFor(shelf, values.things);
  const ids = labels.map(({ id }) => id) as readonly ThingId[];
  const [first] = labels;
  const isReady = !isProblem(grid) && !isProblem(correction);
  const pages = isProblem(grid) ? 0 : layOut(grid, labels.length, values.used).length;

  useEffect(() => {
    if (job === undefined || isProblem(grid)) return undefined;
    undo.current = printLabels({ wide: grid.pageWide, tall: grid.pageTall });
    return () => undo.current?.();
  }, [job]);

  const choose = (next: LabelSettings) => {
    setJob(undefined);
    setChosen(next);
    keepLabelSettings(deps, next);
  };
  const change = (changes: Partial<LabelsDraft>) => {
    setJob(undefined);
    set(changes);
  };
  const print = (what: Job) => {
    // Asked for again, the same pages are handed to the printer anew.
    setJob(undefined);
    requestAnimationFrame(() => setJob(what));
  };
  const printAll = () =>
    save.run(
      () => giveCodes(deps, ids),
      (entries) => {
        print('labels');
        return entries.length > 0 ? `${sayCount(entries.length, 'thing')} got a label code.` : undefined;
      },
    );
  const noteDone = () =>
    save.run(
      () => markLabelled(deps, ids),
      () => {
        change({ things: [], used: [] });
        return `${sayCount(ids.length, 'label')} written down as put on today.`;
      },
    );

  return (
    <Screen
      title="Labels"
      actions={
        <>
          {job === 'labels' && (
            <Button look="main" disabled={save.isBusy} onClick={noteDone}>
              They came out well: write it down
            </Button>
          )}
          <Button look={job === 'labels' ? 'plain' : 'main'} disabled={!isReady || labels.length === 0 || save.isBusy} onClick={printAll}>
            {labels.length === 0
              ? 'Choose what gets a label'
              : `${job === 'labels' ? 'Print again' : 'Print'}: ${sayCount(labels.length, 'label')} on ${sayCount(pages, 'sheet')}`}
          </Button>
        </>
      }
    >
      {lost && <ProblemNote problem={lost} />}
      <SaveProblem save={save} />
      <LabelChoice things={values.things} onChange={(things) => change({ things })} />
      <LabelGrid chosen={chosen} sheet={sheet} onChange={choose} onTest={() => print('test')} />
      {first && !isProblem(grid) && <LabelPreview label={first} grid={grid} />}
      {!isProblem(grid) && labels.length > 0 && (
        <LabelPositions grid={grid} labels={labels} used={values.used} onChange={(used) => change({ used })} />
      )}
      <p class="field-hint">
        In the print window choose this paper, 100 % (not “fit to page”) and no headers or footers. iPhones and iPads print on the paper
        chosen there, whatever is said here.
      </p>
      {job === 'labels' && !isProblem(grid) && !isProblem(correction) && (
        <LabelPages labels={labels} grid={grid} used={values.used} isCut={sheet.isCut} correction={correction} />
      )}
      {job === 'test' && !isProblem(grid) && <TestPage grid={grid} bar={sheet.bar} correction={isProblem(correction) ? 1 : correction} />}
    </Screen>
  );
}
