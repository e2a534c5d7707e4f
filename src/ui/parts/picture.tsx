import { useEffect, useState } from 'preact/hooks';
import type { Sha256 } from '../../domain/brand.ts';
import { useDeps } from '../studio.tsx';

/** A kept picture, its thumbnail or the whole of it. */
export function Picture({ sha, size = 'thumb', alt }: { sha: Sha256; size?: 'thumb' | 'whole'; alt: string }) {
  const { keeper } = useDeps();
  const [url, setUrl] = useState<string>();
  useEffect(() => {
    let made: string | undefined;
    let isGone = false;
    void keeper.picture(sha, size).then((blob) => {
      if (!blob || isGone) return;
      made = URL.createObjectURL(blob);
      setUrl(made);
    });
    return () => {
      isGone = true;
      if (made) URL.revokeObjectURL(made);
    };
  }, [keeper, sha, size]);
  return url ? <img class={`picture picture-${size}`} src={url} alt={alt} /> : <span class={`picture picture-${size} picture-wait`} />;
}
