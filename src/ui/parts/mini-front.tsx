import type { CabinetFront } from '../../views/fronts.ts';

/** A cabinet's front as a small drawing with one drawer standing out, in millimetres. */
export function MiniFront({ cabinet, picked }: { cabinet: CabinetFront; picked: string }) {
  const { widthMm, heightMm, fronts } = cabinet;
  const frame = Math.max(widthMm, heightMm) * 0.02;
  return (
    <svg class="mini" viewBox={`${-frame} ${-frame} ${widthMm + 2 * frame} ${heightMm + 2 * frame}`} aria-hidden="true" focusable="false">
      <rect class="mini-carcass" x={-frame} y={-frame} width={widthMm + 2 * frame} height={heightMm + 2 * frame} rx={frame} />
      {fronts.map(({ id, rect }) => (
        <rect
          key={id}
          class={id === picked ? 'mini-front mini-picked' : 'mini-front'}
          x={rect.x + frame / 4}
          y={rect.y + frame / 4}
          width={Math.max(1, rect.w - frame / 2)}
          height={Math.max(1, rect.h - frame / 2)}
          rx={frame / 4}
        />
      ))}
    </svg>
  );
}
