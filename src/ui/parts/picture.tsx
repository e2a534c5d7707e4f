import { useEffect, useState } from 'preact/hooks';
import type { Sha256 } from '../../domain/brand.ts';
import { useDeps } from '../studio.tsx';

type Shown = { readonly url: string } | 'waiting' | 'missing';

/** A kept picture, its thumbnail or the whole of it. One that is missing says so: a joined journal names pictures that stayed on the other device. */
export function Picture({ sha, size = 'thumb', alt }: { sha: Sha256; size?: 'thumb' | 'whole'; alt: string }) {
  const { keeper } = useDeps();
  const [shown, setShown] = useState<Shown>('waiting');
  useEffect(() => {
    let made: string | undefined;
    let isGone = false;
    setShown('waiting');
    keeper.picture(sha, size).then(
      (blob) => {
        if (isGone) return;
        if (blob) made = URL.createObjectURL(blob);
        setShown(made ? { url: made } : 'missing');
      },
      () => !isGone && setShown('missing'),
    );
    return () => {
      isGone = true;
      if (made) URL.revokeObjectURL(made);
    };
  }, [keeper, sha, size]);
  if (shown === 'waiting') return <span class={`picture picture-${size} picture-wait`} />;
  if (shown === 'missing') {
    return (
      <span class={`picture picture-${size} picture-missing`}>{size === 'thumb' ? 'not here' : 'This picture is not on this device.'}</span>
    );
  }
  return <img class={`picture picture-${size}`} src={shown.url} alt={alt} onError={() => setShown('missing')} />;
}
