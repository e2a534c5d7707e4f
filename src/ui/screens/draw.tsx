import { useEffect, useState } from 'preact/hooks';
import { dropPhotos } from '../../actions/drop-photos.ts';
import { saveDrawing } from '../../actions/save-drawing.ts';
import type { PlaceId } from '../../domain/brand.ts';
import { frontsOfKeys } from '../../domain/drawing/drawing.ts';
import { swapFronts } from '../../domain/drawing/move.ts';
import { removeFronts } from '../../domain/drawing/remove.ts';
import { sayCount } from '../../domain/measure-words.ts';
import { isProblem } from '../../domain/problem.ts';
import type { Place } from '../../domain/shelf.ts';
import { titleOf } from '../../domain/title.ts';
import { heldInFronts } from '../../views/drawing-holds.ts';
import { underDrawing } from '../../views/under-drawing.ts';
import { type DrawDraft, drawCommand, soundDraw, startDraw } from '../drawing/draft.ts';
import { KEYS, merged, type SheetName } from '../drawing/keys.ts';
import { sizeInWords } from '../drawing/size-words.ts';
import { useDrawing } from '../drawing/use-drawing.ts';
import { useUndoKeys } from '../drawing/use-undo-keys.ts';
import { Button, LinkButton } from '../parts/button.tsx';
import { AboutSheet } from '../parts/drawing-about.tsx';
import { DrawingBoard } from '../parts/drawing-board.tsx';
import { CabinetName, CabinetPlace } from '../parts/drawing-cabinet.tsx';
import { CutSheet } from '../parts/drawing-cut.tsx';
import { LabelsSheet } from '../parts/drawing-labels.tsx';
import { OutSheet } from '../parts/drawing-out.tsx';
import { PhotoTools, UnderPhoto } from '../parts/drawing-photo.tsx';
import { SizeSheet } from '../parts/drawing-size.tsx';
import { Told } from '../parts/drawing-told.tsx';
import { BoardTools, DrawingTools } from '../parts/drawing-tools.tsx';
import { Facts } from '../parts/facts.tsx';
import { KeptDraft } from '../parts/kept-draft.tsx';
import { Empty } from '../parts/note.tsx';
import { SaveProblem } from '../parts/save-problem.tsx';
import { Screen } from '../parts/screen.tsx';
import { Sheet } from '../parts/sheet.tsx';
import { back, goInstead, to } from '../router.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { useDraft } from '../use-draft.ts';
import { useSave } from '../use-save.ts';
import { inUnits, useUnits } from '../use-units.ts';
import '../styles/draw.css';

/** Draws a cabinet's front: a new one, or one that stands on the shelves already. */
export function DrawScreen({ id }: { id: string }) {
  const cabinet = useShelf().things.place.get(id as PlaceId);
  if (id === 'new' || cabinet?.kind === 'cabinet') return <DrawForm key={id} cabinet={cabinet} />;
  return (
    <Screen title="Draw a cabinet">
      <Empty
        title="No such cabinet is recorded"
        actions={
          <LinkButton look="main" href="#/draw/new">
            Draw a new one
          </LinkButton>
        }
      />
    </Screen>
  );
}

function DrawForm({ cabinet }: { cabinet: Place | undefined }) {
  const deps = useDeps();
  const shelf = useShelf();
  const units = useUnits();
  const draft = useDraft<DrawDraft>(inUnits(`draw:${cabinet?.id ?? 'new'}`, units), () => startDraw(shelf, cabinet), soundDraw(cabinet));
  const { values, set, clear } = draft;
  const save = useSave({ ...values, in: values.room, drawing: values.steps });
  const easel = useDrawing(values.steps, (steps) => set({ steps }));
  const [sheet, setSheet] = useState<SheetName | 'leave' | undefined>();
  const [isSizing, setSizing] = useState(false);
  useUndoKeys(easel);
  // With more buttons the bar is higher: what is made wider or lower must not lie behind it.
  useEffect(() => {
    if (isSizing) document.querySelector('.draw-picked')?.scrollIntoView({ block: 'nearest' });
  }, [isSizing]);
  const { drawing, picked } = easel;
  const kind = values.isRack ? 'shelf' : 'drawer';
  const close = () => setSheet(undefined);
  const pieces = new Map(drawing.fronts.map(({ key }) => [key, heldInFronts(shelf, drawing, [key]).pieces]));

  function open(name: SheetName): void {
    if (name === 'number') return setSheet(name);
    if (picked.length === 0 || (name === 'size' && picked.length !== 1)) return;
    if (name === 'out' && heldInFronts(shelf, drawing, picked).says === '') {
      const labels = frontsOfKeys(drawing, picked).map(({ label }) => label);
      easel.take((each) => removeFronts(each, picked), `${labels.join(', ')} taken out.`);
      return;
    }
    setSheet(name);
  }

  function merge(): void {
    const held = heldInFronts(shelf, drawing, picked).says;
    merged(easel, held === '' ? 'They are one now.' : `They are one now, with ${held} in it.`);
  }

  function submit(): void {
    const command = drawCommand(shelf, values, cabinet, units);
    if (isProblem(command)) return save.show(command);
    void save.run(
      (confirmed) => saveDrawing(deps, { ...command, confirmed }),
      (entries) => {
        clear();
        const made = entries.find((entry) => entry.kind === 'recorded' && entry.noun === 'place' && entry.fields.kind === 'cabinet');
        goInstead(to(['shelves', cabinet?.id ?? made?.id ?? '']));
        if (entries.length === 0) return 'Nothing was different, so nothing was written down.';
        return cabinet ? `${values.name.trim()} is drawn anew.` : `${values.name.trim()} stands on your shelves.`;
      },
    );
  }

  function leave(): void {
    clear();
    void dropPhotos(deps, values.taken);
    back();
  }

  const tools = { easel, isBusy: save.isBusy, isSizing, onSheet: open, onMerge: merge, onSizing: setSizing, onSave: submit };
  const named = <CabinetName easel={easel} draft={values} set={set} problem={save.problem} />;
  const swap = () => easel.take((each) => swapFronts(each, picked), 'They changed places.');
  return (
    <Screen
      title={cabinet ? `Draw ${titleOf(shelf, cabinet)}` : 'Draw a cabinet'}
      actions={
        <>
          <Told easel={easel} />
          <DrawingTools {...tools} onSwap={swap} />
        </>
      }
    >
      <div class="draw">
        <div class="draw-main">
          <KeptDraft draft={draft} pictures={values.taken} />
          <SaveProblem save={save} anyway="Save it all the same" />
          {cabinet ? (
            <details class="more" open={save.refused !== undefined}>
              <summary>
                {values.name}, {sizeInWords(drawing.widthMm, drawing.heightMm, units)}
              </summary>
              {named}
            </details>
          ) : (
            named
          )}
          <BoardTools easel={easel} kind={kind} onSheet={open} />
          <DrawingBoard
            easel={easel}
            kind={kind}
            pieces={pieces}
            onSheet={open}
            onMerge={merge}
            cover={values.photo === '' ? 100 : 100 - values.seen}
            photo={<UnderPhoto draft={values} />}
          />
        </div>
        <div class="draw-side">
          <CabinetPlace draft={values} set={set} problem={save.problem} />
          <PhotoTools draft={values} set={set} kept={underDrawing(shelf, cabinet, values.room)} />
          <details class="more">
            <summary>Keys</summary>
            <Facts facts={KEYS.map(({ keys, does }) => ({ name: keys, says: does }))} />
          </details>
          <div class="button-row">
            <Button look="quiet" onClick={() => (easel.canUndo ? setSheet('leave') : leave())}>
              {cabinet ? 'Leave it as it was' : 'Throw this drawing away'}
            </Button>
          </div>
        </div>
      </div>
      {sheet === 'leave' && (
        <Sheet title="Throw the drawing away?" onClose={close}>
          <p>{sayCount(values.steps.past.length, 'step')} of drawing would be lost. Nothing of it is on the shelves yet.</p>
          <div class="sheet-list">
            <Button look="danger" onClick={leave}>
              Throw it away
            </Button>
            <Button onClick={close}>Go on drawing</Button>
          </div>
        </Sheet>
      )}
      {sheet === 'cut' && <CutSheet easel={easel} onClose={close} />}
      {sheet === 'about' && <AboutSheet easel={easel} onClose={close} />}
      {sheet === 'size' && <SizeSheet easel={easel} onClose={close} />}
      {sheet === 'out' && <OutSheet easel={easel} cabinet={cabinet?.id} onClose={close} />}
      {sheet === 'number' && <LabelsSheet easel={easel} onClose={close} />}
    </Screen>
  );
}
