import { CREATURES } from './creatures.ts';
import { around, at, curve, line, type Motif, oval, r1, ring, spiral } from './strokes.ts';

function petals(cx: number, cy: number, radius: number, count: number, width = 0.5) {
  return around(count, cx, cy, (a) => {
    const tip = at(cx, cy, radius, a);
    const left = at(cx, cy, radius * 0.62, a - width);
    const right = at(cx, cy, radius * 0.62, a + width);
    return curve(`M${r1(cx)} ${r1(cy)}Q${left.join(' ')} ${tip.join(' ')}Q${right.join(' ')} ${r1(cx)} ${r1(cy)}`);
  });
}

/** Ornaments, each in a circle of radius `r` about (cx, cy). `n` is a small whole number that makes each drawing its own. */
export const MOTIFS: Readonly<Record<string, Motif>> = {
  ...CREATURES,
  spiral: (cx, cy, r, n) =>
    spiral(cx - r * 0.5, cy, r * 0.5, 2 + (n % 3) * 0.5) + spiral(cx + r * 0.5, cy, r * 0.5, 2 + (n % 3) * 0.5, Math.PI),
  triskele: (cx, cy, r) => around(3, cx, cy, (a) => spiral(...at(cx, cy, r * 0.5, a), r * 0.45, 2, a + 2)),
  flower: (cx, cy, r, n) => petals(cx, cy, r, 5 + (n % 4)) + ring(cx, cy, r * 0.18),
  leaf: (cx, cy, r, n) =>
    line([
      [cx, cy + r],
      [cx, cy - r],
    ]) +
    Array.from({ length: 3 + (n % 2) }, (_, i) => {
      const y = cy + r * (0.7 - i * 0.45);
      return [-1, 1]
        .map((s) =>
          curve(
            `M${r1(cx)} ${r1(y)}q${r1(s * r * 0.6)} ${r1(-r * 0.05)} ${r1(s * r * 0.6)} ${r1(-r * 0.5)}q${r1(-s * r * 0.5)} 0 ${r1(-s * r * 0.6)} ${r1(r * 0.5)}`,
          ),
        )
        .join('');
    }).join(''),
  tulip: (cx, cy, r, n) =>
    line([
      [cx, cy + r],
      [cx, cy],
    ]) +
    [-1, 0, 1]
      .map((s) =>
        curve(
          `M${r1(cx)} ${r1(cy)}q${r1(s * r * 0.9 - r * 0.3)} ${r1(-r * 0.4)} ${r1(s * r * (0.4 + (n % 2) * 0.1))} ${r1(-r)}q${r1(r * 0.4)} ${r1(r * 0.6)} ${r1(-s * r * 0.4)} ${r1(r)}`,
        ),
      )
      .join(''),
  fan: (cx, cy, r, n) =>
    Array.from({ length: 5 + (n % 3) * 2 }, (_, i, all = 5 + (n % 3) * 2) => {
      const a = Math.PI * (1.1 + (0.8 * i) / (all - 1));
      const tip = at(cx, cy + r * 0.6, r * 1.3, a);
      return line([[cx, cy + r * 0.6], tip]) + ring(tip[0], tip[1], r * 0.11);
    }).join(''),
  shell: (cx, cy, r, n) =>
    curve(
      `M${r1(cx)} ${r1(cy + r * 0.7)}L${r1(cx - r * 0.9)} ${r1(cy - r * 0.2)}A${r1(r)} ${r1(r * 0.8)} 0 0 1 ${r1(cx + r * 0.9)} ${r1(cy - r * 0.2)}Z`,
    ) +
    Array.from({ length: 3 + (n % 3) }, (_, i) =>
      line([[cx, cy + r * 0.7], at(cx, cy, r * 0.8, Math.PI * (1.25 + (0.5 * i) / (2 + (n % 3))))]),
    ).join(''),
  star: (cx, cy, r, n) =>
    line(
      Array.from({ length: 2 * (6 + (n % 3)) }, (_, i) => at(cx, cy, i % 2 ? r * 0.45 : r, (i * Math.PI) / (6 + (n % 3)))),
      true,
    ),
  wheel: (cx, cy, r, n) =>
    ring(cx, cy, r) + ring(cx, cy, r * 0.2) + around(6 + (n % 3), cx, cy, (a) => line([at(cx, cy, r * 0.2, a), at(cx, cy, r, a)])),
  wave: (cx, cy, r, n) =>
    [-0.4, 0, 0.4]
      .map((k) =>
        curve(
          `M${r1(cx - r)} ${r1(cy + k * r)}q${r1(r * 0.25)} ${r1(-r * (0.3 + (n % 3) * 0.06))} ${r1(r * 0.5)} 0t${r1(r * 0.5)} 0t${r1(r * 0.5)} 0t${r1(r * 0.5)} 0`,
        ),
      )
      .join(''),
  bead: (cx, cy, r, n) => around(10 + (n % 5) * 2, cx, cy, (a) => ring(...at(cx, cy, r * 0.85, a), r * 0.1)) + ring(cx, cy, r * 0.4),
  weave: (cx, cy, r, n) =>
    Array.from({ length: 4 + (n % 2) }, (_, i) => {
      const k = r * (-0.75 + (1.5 * i) / (3 + (n % 2)));
      return (
        line([
          [cx - r * 0.75, cy + k],
          [cx + r * 0.75, cy + k],
        ]) +
        line([
          [cx + k, cy - r * 0.75],
          [cx + k, cy + r * 0.75],
        ])
      );
    }).join(''),
  knot: (cx, cy, r, n) =>
    oval(cx - r * 0.3, cy, r * 0.6, r * 0.4) + oval(cx + r * 0.3, cy, r * 0.6, r * (0.4 + (n % 2) * 0.08)) + ring(cx, cy, r * 0.16),
  axe: (cx, cy, r) =>
    line([
      [cx, cy - r],
      [cx, cy + r],
    ]) +
    [-1, 1]
      .map((s) =>
        curve(
          `M${r1(cx)} ${r1(cy - r * 0.15)}L${r1(cx + s * r * 0.8)} ${r1(cy - r * 0.6)}q${r1(s * r * 0.2)} ${r1(r * 0.6)} 0 ${r1(r * 1.2)}L${r1(cx)} ${r1(cy + r * 0.15)}`,
        ),
      )
      .join(''),
  trefoil: (cx, cy, r) =>
    around(
      3,
      cx,
      cy,
      (a) => ring(...at(cx, cy, r * 0.5, a - Math.PI / 2), r * 0.42) + ring(...at(cx, cy, r * 0.5, a - Math.PI / 2), r * 0.2),
    ),
  crescent: (cx, cy, r) =>
    curve(
      `M${r1(cx + r * 0.4)} ${r1(cy - r * 0.9)}A${r1(r)} ${r1(r)} 0 1 0 ${r1(cx + r * 0.4)} ${r1(cy + r * 0.9)}A${r1(r * 0.95)} ${r1(r * 0.95)} 0 0 1 ${r1(cx + r * 0.4)} ${r1(cy - r * 0.9)}Z`,
    ) + ring(cx + r * 0.3, cy, r * 0.16),
  ship: (cx, cy, r, n) =>
    curve(`M${r1(cx - r * 0.8)} ${r1(cy + r * 0.3)}q${r1(r * 0.8)} ${r1(r * 0.7)} ${r1(r * 1.6)} 0Z`) +
    line([
      [cx, cy + r * 0.3],
      [cx, cy - r * 0.9],
    ]) +
    [-1, 1]
      .map((s) =>
        curve(
          `M${r1(cx)} ${r1(cy - r * 0.8)}q${r1(s * r * (0.6 + (n % 2) * 0.15))} ${r1(r * 0.4)} ${r1(s * r * 0.6)} ${r1(r * 0.9)}L${r1(cx)} ${r1(cy + r * 0.1)}`,
        ),
      )
      .join(''),
  urn: (cx, cy, r) =>
    curve(
      `M${r1(cx - r * 0.5)} ${r1(cy - r * 0.4)}q0 ${r1(r * 0.9)} ${r1(r * 0.4)} ${r1(r)}h${r1(r * 0.2)}q${r1(r * 0.4)} ${r1(-r * 0.1)} ${r1(r * 0.4)} ${r1(-r)}Z`,
    ) +
    line([
      [cx - r * 0.35, cy + r * 0.85],
      [cx + r * 0.35, cy + r * 0.85],
    ]) +
    line([
      [cx, cy + r * 0.6],
      [cx, cy + r * 0.85],
    ]) +
    ring(cx, cy - r * 0.6, r * 0.16),
  claw: (cx, cy, r, n) =>
    ring(cx, cy + r * 0.45, r * (0.45 + (n % 2) * 0.06)) +
    [-0.6, -0.2, 0.2, 0.6]
      .map((k) => curve(`M${r1(cx + k * r * 0.5)} ${r1(cy - r * 0.8)}q${r1(k * r * 0.9)} ${r1(r * 0.7)} ${r1(k * r * 0.2)} ${r1(r * 1.3)}`))
      .join(''),
  whiplash: (cx, cy, r) =>
    [-1, 1]
      .map((s) =>
        curve(
          `M${r1(cx + s * r)} ${r1(cy + r * 0.7)}C${r1(cx - s * r * 0.6)} ${r1(cy + r * 0.6)} ${r1(cx + s * r * 1.2)} ${r1(cy - r)} ${r1(cx + s * r * 0.1)} ${r1(cy - r * 0.6)}S${r1(cx + s * r * 0.4)} ${r1(cy)} ${r1(cx + s * r * 0.5)} ${r1(cy - r * 0.2)}`,
        ),
      )
      .join(''),
  tower: (cx, cy, r, n) =>
    line(
      [
        [cx - r * 0.4, cy + r * 0.9],
        [cx - r * 0.22, cy - r * 0.5],
        [cx + r * 0.22, cy - r * 0.5],
        [cx + r * 0.4, cy + r * 0.9],
      ],
      true,
    ) +
    line([
      [cx - r * 0.3, cy - r * 0.5],
      [cx, cy - r],
      [cx + r * 0.3, cy - r * 0.5],
    ]) +
    Array.from({ length: 2 + (n % 2) }, (_, i) =>
      line([
        [cx - r * 0.34, cy + r * (0.5 - i * 0.4)],
        [cx + r * 0.32, cy + r * (0.4 - i * 0.4)],
      ]),
    ).join(''),
  key: (cx, cy, r) =>
    ring(cx, cy - r * 0.6, r * 0.35) +
    ring(cx, cy - r * 0.6, r * 0.15) +
    line([
      [cx, cy - r * 0.25],
      [cx, cy + r],
    ]) +
    line([
      [cx, cy + r * 0.6],
      [cx + r * 0.35, cy + r * 0.6],
      [cx + r * 0.35, cy + r * 0.9],
      [cx, cy + r * 0.9],
    ]),
};
