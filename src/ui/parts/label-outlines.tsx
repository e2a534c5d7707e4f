import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { Code } from '../../domain/brand.ts';
import type { SeenLabel } from '../../domain/label-choice.ts';
import { inBox, type Size, tapTarget } from '../../domain/sighting.ts';
import { Button } from './button.tsx';

/** px */
const LEAST_TARGET = 48;

interface OutlinesProps {
  labels: readonly SeenLabel[];
  /** The picture they were seen in, px. */
  picture: Size;
  fit: 'cover' | 'contain';
  nameOf: (code: Code) => string;
  onPick: (code: Code) => void;
}

/** Lies over the picture: an outline and the name of each label, to be tapped. */
export function LabelOutlines({ labels, picture, fit, nameOf, onPick }: OutlinesProps) {
  const holder = useRef<HTMLDivElement>(null);
  const [box, setBox] = useState<Size>({ wide: 0, tall: 0 });
  useLayoutEffect(() => {
    const element = holder.current;
    if (!element) return undefined;
    const measure = () => setBox({ wide: element.clientWidth, tall: element.clientHeight });
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(element);
    return () => watch.disconnect();
  }, []);
  return (
    <div class="label-outlines" ref={holder}>
      {box.wide > 0 &&
        picture.wide > 0 &&
        labels.map(({ code, corners }) => {
          const points = corners.map((corner) => inBox(corner, picture, box, fit));
          const { left, top, wide, tall } = tapTarget(points, box, LEAST_TARGET);
          return (
            <button
              key={code}
              type="button"
              class="label-outline"
              style={{ left: `${left}px`, top: `${top}px`, width: `${wide}px`, height: `${tall}px` }}
              onClick={() => onPick(code)}
            >
              <span>{nameOf(code)}</span>
            </button>
          );
        })}
    </div>
  );
}

/** The same labels as a list, for thumbs that miss a moving picture. */
export function LabelNames({ labels, nameOf, onPick }: Pick<OutlinesProps, 'labels' | 'nameOf' | 'onPick'>) {
  return (
    <section aria-label="Labels in view">
      <p role="status">Several labels are in view. Tap the one you mean.</p>
      <ul class="bearers">
        {labels.map(({ code }) => (
          <li key={code}>
            <Button class="bearer" onClick={() => onPick(code)}>
              <strong>{nameOf(code)}</strong>
              <span>{code}</span>
            </Button>
          </li>
        ))}
      </ul>
    </section>
  );
}
