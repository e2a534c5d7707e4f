import { useEffect, useRef, useState } from 'preact/hooks';
import type { Sha256 } from '../../domain/brand.ts';
import { useDeps } from '../studio.tsx';
import { keepThumb, thumbUrl, whenNear } from '../thumb-urls.ts';

type Shown = { readonly url: string } | 'waiting' | 'missing';

const known = (sha: Sha256, size: 'thumb' | 'whole'): Shown => {
  const url = size === 'thumb' ? thumbUrl(sha) : undefined;
  return url === undefined ? 'waiting' : { url };
};

/**
 * A kept picture, its thumbnail or the whole of it. A thumbnail is read when it is about to come into sight. One that is missing says so: a
 * joined journal names pictures that stayed on the other device.
 */
export function Picture({ sha, size = 'thumb', alt }: { sha: Sha256; size?: 'thumb' | 'whole'; alt: string }) {
  const { keeper } = useDeps();
  const place = useRef<HTMLSpanElement>(null);
  const [shown, setShown] = useState<Shown>(() => known(sha, size));
  useEffect(() => {
    const ready = known(sha, size);
    setShown(ready);
    if (ready !== 'waiting') return undefined;
    let made: string | undefined;
    let isGone = false;
    const read = () =>
      void keeper.picture(sha, size).then(
        (blob) => {
          if (isGone) return;
          if (blob && size === 'whole') made = URL.createObjectURL(blob);
          const url = blob && (made ?? keepThumb(sha, blob));
          setShown(url ? { url } : 'missing');
        },
        () => !isGone && setShown('missing'),
      );
    const stop = size === 'thumb' && place.current ? whenNear(place.current, read) : read();
    return () => {
      isGone = true;
      stop?.();
      if (made) URL.revokeObjectURL(made);
    };
  }, [keeper, sha, size]);
  if (shown === 'waiting') return <span ref={place} class={`picture picture-${size} picture-wait`} />;
  if (shown === 'missing') {
    return (
      <span class={`picture picture-${size} picture-missing`}>{size === 'thumb' ? 'not here' : 'This picture is not on this device.'}</span>
    );
  }
  return <img class={`picture picture-${size}`} src={shown.url} alt={alt} onError={() => setShown('missing')} />;
}
