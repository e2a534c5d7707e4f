import { useState } from 'preact/hooks';
import type { Scanning } from '../../actions/scan-labels.ts';
import { type Problem, problem } from '../../domain/problem.ts';
import { Button } from './button.tsx';
import { Choices, Select } from './field.tsx';
import { Icon } from './icon.tsx';

interface CameraToolsProps {
  live: Scanning;
  onProblem: (why: Problem) => void;
  onCamera: (deviceId: string) => void;
}

/** What this camera can do besides seeing: its lamp, coming closer, and the device's other cameras. Each only where there is one. */
export function CameraTools({ live, onProblem, onCamera }: CameraToolsProps) {
  const { torch, zoom, cameras, deviceId } = live;
  const [isLit, setLit] = useState(false);
  const [times, setTimes] = useState(1);
  return (
    <>
      {torch && (
        <Button
          aria-pressed={isLit}
          onClick={async () => {
            if (await torch.on(!isLit)) setLit(!isLit);
            else onProblem(problem('The phone did not switch its torch.', 'Scanning goes on without it.'));
          }}
        >
          <Icon name="torch" /> {isLit ? 'Torch off' : 'Torch on'}
        </Button>
      )}
      {zoom && (
        <Choices
          legend="Closer"
          options={zoom.times.map((each) => ({ value: String(each), word: `${each} ×` }))}
          picked={[String(times)]}
          onPick={async ([chosen]) => {
            if (await zoom.to(Number(chosen))) setTimes(Number(chosen));
            else onProblem(problem('The camera did not come closer.', 'Scanning goes on; hold the label nearer.'));
          }}
        />
      )}
      {cameras.length > 1 && (
        <Select
          label="Camera"
          value={deviceId ?? ''}
          options={cameras.map((camera) => ({ value: camera.deviceId, word: camera.name }))}
          onInput={onCamera}
        />
      )}
    </>
  );
}
