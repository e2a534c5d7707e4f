import { useEffect, useState } from 'preact/hooks';
import type { SeveralLabels } from '../../actions/scan-labels.ts';
import type { Code } from '../../domain/brand.ts';
import { Button } from './button.tsx';
import { LabelNames, LabelOutlines } from './label-outlines.tsx';

interface StillProps {
  file: Blob;
  found: SeveralLabels;
  nameOf: (code: Code) => string;
  onPick: (code: Code) => void;
  onClose: () => void;
}

/** A picture that shows several labels, each outlined, to choose one from. */
export function LabelStill({ file, found, nameOf, onPick, onClose }: StillProps) {
  const [url, setUrl] = useState('');
  useEffect(() => {
    const made = URL.createObjectURL(file);
    setUrl(made);
    return () => URL.revokeObjectURL(made);
  }, [file]);
  const labels = found.several;
  return (
    <>
      <div class="label-still" style={{ aspectRatio: `${found.wide} / ${found.tall}` }}>
        {url && <img src={url} alt="The labels found" />}
        <LabelOutlines labels={labels} picture={found} fit="contain" nameOf={nameOf} onPick={onPick} />
      </div>
      <LabelNames labels={labels} nameOf={nameOf} onPick={onPick} />
      <div class="button-row">
        <Button onClick={onClose}>Leave this picture</Button>
      </div>
    </>
  );
}
