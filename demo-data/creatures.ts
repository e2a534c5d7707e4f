import { curve, line, type Motif, oval, r1, ring, spiral } from './strokes.ts';

function body(cx: number, cy: number, r: number, legs: readonly number[]) {
  const back = curve(
    `M${r1(cx - r * 0.8)} ${r1(cy - r * 0.1)}q${r1(r * 0.7)} ${r1(-r * 0.5)} ${r1(r * 1.3)} ${r1(-r * 0.1)}l${r1(r * 0.3)} ${r1(-r * 0.4)}l${r1(r * 0.25)} ${r1(r * 0.3)}l${r1(-r * 0.35)} ${r1(r * 0.3)}q${r1(-r * 0.3)} ${r1(r * 0.4)} ${r1(-r * 0.8)} ${r1(r * 0.3)}q${r1(-r * 0.4)} 0 ${r1(-r * 0.7)} ${r1(-r * 0.4)}`,
  );
  return (
    back +
    legs
      .map((x) =>
        line([
          [cx + x * r, cy + r * 0.25],
          [cx + x * r - r * 0.06, cy + r * 0.8],
        ]),
      )
      .join('')
  );
}

/** Animals and what comes of them, drawn like the ornaments. */
export const CREATURES: Readonly<Record<string, Motif>> = {
  beast: (cx, cy, r, n) =>
    body(cx, cy, r, [-0.6, -0.4, 0.2, 0.4]) +
    (n % 2
      ? curve(`M${r1(cx + r * 0.8)} ${r1(cy - r * 0.5)}q${r1(r * 0.3)} ${r1(-r * 0.4)} 0 ${r1(-r * 0.5)}`)
      : spiral(cx - r * 0.9, cy - r * 0.3, r * 0.2, 1.5)),
  hare: (cx, cy, r) =>
    body(cx, cy, r, [-0.5, 0.3]) +
    oval(cx + r * 0.62, cy - r * 0.75, r * 0.09, r * 0.32) +
    oval(cx + r * 0.84, cy - r * 0.72, r * 0.09, r * 0.32),
  bird: (cx, cy, r, n) =>
    curve(
      `M${r1(cx - r)} ${r1(cy + r * 0.2)}q${r1(r * 0.6)} ${r1(r * 0.8)} ${r1(r * 1.3)} ${r1(r * 0.1)}q${r1(r * 0.1)} ${r1(-r * 0.5)} ${r1(-r * 0.05)} ${r1(-r * 0.8)}q${r1(r * 0.3)} ${r1(-r * 0.4)} ${r1(r * 0.6)} ${r1(-r * 0.05)}l${r1(r * 0.3)} ${r1(r * 0.15)}l${r1(-r * 0.35)} ${r1(r * 0.12)}`,
    ) +
    ring(cx + r * 0.45, cy - r * 0.6, r * 0.06) +
    line([
      [cx - r * 0.6, cy + r * 0.2],
      [cx + r * 0.1, cy + r * (0.15 + (n % 3) * 0.1)],
    ]),
  fish: (cx, cy, r, n) =>
    oval(cx, cy, r * 0.75, r * 0.32) +
    line(
      [
        [cx - r * 0.72, cy],
        [cx - r, cy - r * 0.3],
        [cx - r, cy + r * 0.3],
      ],
      true,
    ) +
    ring(cx + r * 0.5, cy - r * 0.06, r * 0.06) +
    Array.from({ length: 2 + (n % 3) }, (_, i) =>
      curve(`M${r1(cx - r * 0.4 + i * r * 0.22)} ${r1(cy - r * 0.2)}q${r1(r * 0.12)} ${r1(r * 0.2)} 0 ${r1(r * 0.4)}`),
    ).join(''),
  wings: (cx, cy, r, n) =>
    oval(cx, cy, r * 0.1, r * 0.6) +
    [-1, 1]
      .map((s) =>
        curve(
          `M${r1(cx)} ${r1(cy - r * 0.3)}q${r1(s * r * (0.8 + (n % 3) * 0.1))} ${r1(-r * 0.6)} ${r1(s * r * 0.95)} ${r1(r * 0.1)}q${r1(-s * r * 0.3)} ${r1(r * 0.4)} ${r1(-s * r * 0.95)} ${r1(r * 0.3)}q${r1(s * r * 0.7)} ${r1(r * 0.3)} ${r1(s * r * 0.5)} ${r1(r * 0.6)}`,
        ),
      )
      .join(''),
  mask: (cx, cy, r, n) =>
    oval(cx, cy, r * 0.7, r * 0.9) +
    [-1, 1].map((s) => oval(cx + s * r * 0.27, cy - r * 0.2, r * 0.14, r * 0.09)).join('') +
    curve(`M${r1(cx - r * 0.35)} ${r1(cy + r * 0.35)}q${r1(r * 0.35)} ${r1(r * (n % 2 ? 0.5 : -0.3))} ${r1(r * 0.7)} 0Z`) +
    line([
      [cx, cy - r * 0.15],
      [cx - r * 0.1, cy + r * 0.15],
      [cx + r * 0.06, cy + r * 0.15],
    ]),
  octopus: (cx, cy, r) =>
    ring(cx, cy - r * 0.35, r * 0.38) +
    Array.from({ length: 6 }, (_, i) => {
      const x = cx + r * (-0.35 + i * 0.14);
      return curve(
        `M${r1(x)} ${r1(cy)}q${r1((i - 2.5) * r * 0.2)} ${r1(r * 0.3)} ${r1((i - 2.5) * r * 0.1)} ${r1(r * 0.6)}t${r1((i - 2.5) * r * 0.16)} ${r1(r * 0.25)}`,
      );
    }).join('') +
    ring(cx - r * 0.14, cy - r * 0.3, r * 0.06) +
    ring(cx + r * 0.14, cy - r * 0.3, r * 0.06),
  snake: (cx, cy, r) =>
    curve(
      `M${r1(cx - r * 0.9)} ${r1(cy + r * 0.5)}q${r1(r * 0.2)} ${r1(-r)} ${r1(r * 0.6)} ${r1(-r * 0.4)}t${r1(r * 0.6)} 0t${r1(r * 0.5)} ${r1(-r * 0.5)}`,
    ) + oval(cx + r * 0.85, cy - r * 0.45, r * 0.14, r * 0.08),
  bone: (cx, cy, r) =>
    curve(
      `M${r1(cx - r * 0.6)} ${r1(cy - r * 0.7)}q${r1(r * 0.6)} ${r1(r * 0.4)} ${r1(r * 1.2)} 0q${r1(r * 0.4)} ${r1(r * 0.6)} ${r1(-r * 0.1)} ${r1(r * 0.8)}q${r1(r * 0.2)} ${r1(r * 0.5)} ${r1(-r * 0.3)} ${r1(r * 0.6)}q${r1(-r * 0.4)} ${r1(-r * 0.3)} ${r1(-r * 0.7)} 0q${r1(-r * 0.4)} ${r1(-r * 0.4)} ${r1(-r * 0.2)} ${r1(-r * 0.7)}Z`,
    ),
  crab: (cx, cy, r) =>
    oval(cx, cy, r * 0.55, r * 0.36) +
    [-1, 1]
      .map(
        (s) =>
          ring(cx + s * r * 0.75, cy - r * 0.5, r * 0.2) +
          [0.1, 0.35, 0.6]
            .map((k) => curve(`M${r1(cx + s * r * 0.45)} ${r1(cy + r * k * 0.4)}q${r1(s * r * 0.35)} 0 ${r1(s * r * 0.45)} ${r1(r * 0.4)}`))
            .join(''),
      )
      .join(''),
};
