import { useEffect, useRef, useState } from 'preact/hooks';
import { type Scanning, scanLabels, scanPicture } from '../../actions/scan-labels.ts';
import type { Code } from '../../domain/brand.ts';
import { isProblem, type Problem, problem } from '../../domain/problem.ts';
import { Button } from './button.tsx';
import { CodeKeys } from './code-keys.tsx';
import { Icon } from './icon.tsx';
import { ProblemNote } from './note.tsx';
import '../styles/scan.css';

interface LabelReaderProps {
  onCode: (code: Code) => void;
  /** What to hold before the camera. */
  prompt?: string;
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

/** Reads a label's code: by the camera, from a picture, or typed. The camera is on only while this part is on the screen and seen. */
export function LabelReader({ onCode, prompt = 'Hold a label in the frame.' }: LabelReaderProps) {
  const video = useRef<HTMLVideoElement>(null);
  const file = useRef<HTMLInputElement>(null);
  const heard = useRef(onCode);
  heard.current = onCode;
  const isSeen = useSeen();
  const [isTyping, setTyping] = useState(false);
  const [attempt, setAttempt] = useState(0);
  const [camera, setCamera] = useState<Scanning | Problem | undefined>();
  const [wrong, setWrong] = useState<Problem | undefined>();
  const [isLit, setLit] = useState(false);
  const [isReading, setReading] = useState(false);

  useEffect(() => {
    const element = video.current;
    if (isTyping || !isSeen || !element) return undefined;
    let isOver = false;
    let scanning: Scanning | undefined;
    const listener = {
      onCode: (code: Code) => {
        setWrong(undefined);
        heard.current(code);
      },
      onStranger: setWrong,
      onEnd: setCamera,
    };
    void scanLabels(element, listener).then((outcome) => {
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
      setLit(false);
    };
  }, [isTyping, isSeen, attempt]);

  async function readPicture(chosen: File): Promise<void> {
    setReading(true);
    setWrong(undefined);
    const code = await scanPicture(chosen);
    setReading(false);
    if (isProblem(code)) setWrong(code);
    else heard.current(code);
  }

  const live = camera && !isProblem(camera) ? camera : undefined;
  const { torch } = live ?? {};
  return (
    <div class="label-reader">
      {!isTyping && (
        <div class={isProblem(camera) ? 'viewfinder viewfinder-off' : 'viewfinder'}>
          <video ref={video} playsInline muted aria-label="What the camera sees" />
          <span class="viewfinder-frame" aria-hidden="true" />
          {!live && !isProblem(camera) && <p class="viewfinder-words">Starting the camera… Allow it if you are asked.</p>}
          {live && <p class="viewfinder-words">{prompt}</p>}
        </div>
      )}
      {!isTyping && isProblem(camera) && (
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
        {torch && (
          <Button
            aria-pressed={isLit}
            onClick={async () => {
              if (await torch.on(!isLit)) setLit(!isLit);
              else setWrong(problem('The phone did not switch its torch.', 'Scanning goes on without it.'));
            }}
          >
            <Icon name="torch" /> {isLit ? 'Torch off' : 'Torch on'}
          </Button>
        )}
        <Button onClick={() => file.current?.click()} disabled={isReading}>
          <Icon name="picture" /> Use a picture
        </Button>
        <Button
          onClick={() => {
            setWrong(undefined);
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
