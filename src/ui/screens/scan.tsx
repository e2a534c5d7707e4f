import { useEffect, useState } from 'preact/hooks';
import type { Code } from '../../domain/brand.ts';
import { parseCode } from '../../domain/label.ts';
import { isProblem, type Problem } from '../../domain/problem.ts';
import type { Thing } from '../../domain/shelf.ts';
import { type Bearer, findCode } from '../../views/find-code.ts';
import { addressOf } from '../address.ts';
import { useLabelTaker } from '../label-taker.ts';
import { Button } from '../parts/button.tsx';
import { LabelReader } from '../parts/label-reader.tsx';
import { ProblemNote } from '../parts/note.tsx';
import { Screen } from '../parts/screen.tsx';
import { UnknownLabel } from '../parts/unknown-label.tsx';
import { back, goInstead, route } from '../router.ts';
import { type ScanRequest, scanRequest } from '../scan-request.ts';
import { useDeps, useShelf } from '../studio.tsx';

/** The camera chosen on this device. */
const CAMERA = 'camera';

/** Reads a label and opens what carries it, or hands it to the screen that asked. `code` comes from a label in the form of a link. */
export function ScanScreen({ code }: { code?: string }) {
  const { settings } = useDeps();
  const shelf = useShelf();
  const [camera, setCamera] = useState(() => settings.get<string>(CAMERA));
  const request = route.value.query.has('for') ? scanRequest.value : null;
  const [read, setRead] = useState<Code | undefined>();
  const [linkProblem, setLinkProblem] = useState<Problem | undefined>();
  const [said, setSaid] = useState('');
  /** A label that came with the address is looked up first: the camera is neither asked for nor switched on for it. */
  const [isLooking, setLooking] = useState(code !== undefined);

  useEffect(
    () => () => {
      scanRequest.value = null;
    },
    [],
  );
  useEffect(() => {
    if (code === undefined) return;
    const parsed = parseCode(code);
    if (!isProblem(parsed)) return take(parsed);
    setLinkProblem(parsed);
    setLooking(false);
  }, [code]);

  function open(thing: Thing): void {
    if (!request) return goInstead(addressOf(thing));
    const next = request.onThing(thing);
    if (next === undefined) return back();
    setSaid(next);
    setRead(undefined);
  }

  function take(scanned: Code): void {
    setLinkProblem(undefined);
    const [first, ...others] = findCode(shelf, scanned);
    if (first && others.length === 0) open(first.thing);
    else {
      setRead(scanned);
      setLooking(false);
    }
  }

  useLabelTaker((scanned) => {
    take(scanned);
    return true;
  });

  const bearers = read ? findCode(shelf, read) : [];
  return (
    <Screen
      title={titleFor(request)}
      hasBack={request !== null || read !== undefined}
      actions={read && <Button onClick={() => setRead(undefined)}>Scan another</Button>}
    >
      {said && <p role="status">{said}</p>}
      {linkProblem && <ProblemNote problem={linkProblem} />}
      {read === undefined && !isLooking && (
        <LabelReader
          onCode={take}
          nameOf={(code) => findCode(shelf, code)[0]?.title ?? 'on nothing here'}
          camera={camera}
          onCamera={(deviceId) => {
            settings.set(CAMERA, deviceId);
            setCamera(deviceId);
          }}
        />
      )}
      {read !== undefined && bearers.length === 0 && <UnknownLabel code={read} />}
      {read !== undefined && bearers.length > 0 && <WhichOne code={read} bearers={bearers} onPick={open} />}
    </Screen>
  );
}

function titleFor(request: ScanRequest | null): string {
  return request?.purpose ?? 'Scan a label';
}

function WhichOne({ code, bearers, onPick }: { code: Code; bearers: readonly Bearer[]; onPick: (thing: Thing) => void }) {
  return (
    <section>
      <h2>{code} is on several things. Which one do you hold?</h2>
      <p>Afterwards, give the others a label of their own.</p>
      <ul class="bearers">
        {bearers.map(({ thing, title, detail }) => (
          <li key={thing.id}>
            <Button class="bearer" onClick={() => onPick(thing)}>
              <strong>{title}</strong>
              <span>{detail}</span>
            </Button>
          </li>
        ))}
      </ul>
    </section>
  );
}
