import { useEffect, useRef, useState } from 'preact/hooks';
import { type Scanning, type SeveralLabels, scanLabels, scanPicture } from '../../actions/scan-labels.ts';
import type { Code } from '../../domain/brand.ts';
import type { SeenLabel } from '../../domain/label-choice.ts';
import { isProblem, type Problem } from '../../domain/problem.ts';
import { Button } from './button.tsx';
import { CameraTools } from './camera-tools.tsx';
import { CodeKeys } from './code-keys.tsx';
import { Icon } from './icon.tsx';
import { LabelNames, LabelOutlines } from './label-outlines.tsx';
import { LabelStill } from './label-still.tsx';
import { ProblemNote } from './note.tsx';
import '../styles/scan.css';

interface LabelReaderProps {
  onCode: (code: Code) => void;
  /** What to hold before the camera. */
  prompt?: string;
  /** What a label is called, when several are in view. */
  nameOf?: (code: Code) => string;
  /** The camera chosen before on this device, and how the choice is kept. */
  camera?: string | undefined;
  onCamera?: (deviceId: string) => void;
}

/** Whether the page is seen; a hidden one must not keep the camera on. */
function useSeen(): boolean {
  const [isSeen, setSeen] = useState(document.visibilityState === 'visible');
  useEffect(() => {
    const look = () => setSeen(document.visibilityState === 'visible');
    document.addEventListener('visibilitychange', look);
    return () => document.removeEventListener('visibilitychange', look);
  }, []);
  return isSeen;
}

const NONE: readonly SeenLabel[] = [];

/** Reads a label's code: by the camera, from a picture, or typed. The camera is on only while this part is on the screen and seen. */
export function LabelReader({
  onCode,
  prompt = 'Hold a label in the frame.',
  nameOf = (code) => code,
  camera: wanted,
  onCamera,
}: LabelReaderProps) {
  const video = useRef<HTMLVideoElement>(null);
  const file = useRef<HTMLInputElement>(null);
  const heard = useRef(onCode);
  heard.current = onCode;
  const isSeen = useSeen();
  const [isTyping, setTyping] = useState(false);
  const [attempt, setAttempt] = useState(0);
  const [camera, setCamera] = useState<Scanning | Problem | undefined>();
  const [wrong, setWrong] = useState<Problem | undefined>();
  const [isReading, setReading] = useState(false);
  const [several, setSeveral] = useState(NONE);
  const [still, setStill] = useState<{ readonly file: Blob; readonly found: SeveralLabels } | undefined>();
  const isFilming = !isTyping && !still;

  useEffect(() => {
    const element = video.current;
    if (!isFilming || !isSeen || !element) return undefined;
    let isOver = false;
    let scanning: Scanning | undefined;
    const listener = {
      onCode: (code: Code) => {
        setWrong(undefined);
        heard.current(code);
      },
      onSeveral: setSeveral,
      onStranger: setWrong,
      onEnd: setCamera,
    };
    void scanLabels(element, listener, wanted).then((outcome) => {
      if (isOver) {
        if (!isProblem(outcome)) outcome.stop();
        return;
      }
      if (!isProblem(outcome)) scanning = outcome;
      setCamera(outcome);
    });
    return () => {
      isOver = true;
      scanning?.stop();
      setCamera(undefined);
      setSeveral(NONE);
    };
  }, [isFilming, isSeen, attempt, wanted]);

  async function readPicture(chosen: File): Promise<void> {
    setReading(true);
    setWrong(undefined);
    const found = await scanPicture(chosen);
    setReading(false);
    if (isProblem(found)) setWrong(found);
    else if (typeof found === 'string') heard.current(found);
    else setStill({ file: chosen, found });
  }

  const pick = (code: Code) => {
    setWrong(undefined);
    heard.current(code);
  };
  const live = camera && !isProblem(camera) ? camera : undefined;
  const { videoWidth = 0, videoHeight = 0 } = video.current ?? {};
  return (
    <div class="label-reader">
      {still && <LabelStill {...still} nameOf={nameOf} onPick={pick} onClose={() => setStill(undefined)} />}
      {isFilming && (
        <div class={isProblem(camera) ? 'viewfinder viewfinder-off' : 'viewfinder'}>
          <video ref={video} playsInline muted aria-label="What the camera sees" />
          {several.length === 0 && <span class="viewfinder-frame" aria-hidden="true" />}
          {several.length > 0 && (
            <LabelOutlines labels={several} picture={{ wide: videoWidth, tall: videoHeight }} fit="cover" nameOf={nameOf} onPick={pick} />
          )}
          {!live && !isProblem(camera) && <p class="viewfinder-words">Starting the camera… Allow it if you are asked.</p>}
          {live && several.length === 0 && <p class="viewfinder-words">{prompt}</p>}
        </div>
      )}
      {isFilming && several.length > 0 && <LabelNames labels={several} nameOf={nameOf} onPick={pick} />}
      {isFilming && isProblem(camera) && (
        <>
          <ProblemNote problem={camera} />
          <div class="button-row">
            <Button onClick={() => setAttempt(attempt + 1)}>Try the camera again</Button>
          </div>
        </>
      )}
      {isTyping && <CodeKeys onCode={onCode} />}
      {wrong && !isTyping && <ProblemNote problem={wrong} />}
      {isReading && <p role="status">Looking for a label in the picture…</p>}
      <div class="label-reader-ways">
        {live && <CameraTools key={live.deviceId} live={live} onProblem={setWrong} onCamera={(deviceId) => onCamera?.(deviceId)} />}
        <Button onClick={() => file.current?.click()} disabled={isReading}>
          <Icon name="picture" /> Use a picture
        </Button>
        <Button
          onClick={() => {
            setWrong(undefined);
            setStill(undefined);
            setTyping(!isTyping);
          }}
        >
          {isTyping ? (
            <>
              <Icon name="scan" /> Use the camera
            </>
          ) : (
            <>
              <Icon name="edit" /> Type the code
            </>
          )}
        </Button>
      </div>
      <input
        ref={file}
        type="file"
        accept="image/*"
        hidden
        onChange={(event) => {
          const [chosen] = event.currentTarget.files ?? [];
          event.currentTarget.value = '';
          if (chosen) void readPicture(chosen);
        }}
      />
    </div>
  );
}
