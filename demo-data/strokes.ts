/** SVG strokes, rounded to a tenth of a unit. */
export type Point = readonly [number, number];
/** An ornament in a circle of radius `r` about (cx, cy). */
export type Motif = (cx: number, cy: number, r: number, n: number) => string;

export const r1 = (value: number) => Math.round(value * 10) / 10;
export const at = (cx: number, cy: number, radius: number, angle: number): [number, number] => [
  r1(cx + radius * Math.cos(angle)),
  r1(cy + radius * Math.sin(angle)),
];
const TURN = Math.PI * 2;

export const line = (points: readonly Point[], isClosed = false) =>
  `<path d="M${points.map((p) => p.map(r1).join(' ')).join('L')}${isClosed ? 'Z' : ''}"/>`;
export const ring = (cx: number, cy: number, radius: number) => `<circle cx="${r1(cx)}" cy="${r1(cy)}" r="${r1(radius)}"/>`;
export const oval = (cx: number, cy: number, rx: number, ry: number) =>
  `<ellipse cx="${r1(cx)}" cy="${r1(cy)}" rx="${r1(rx)}" ry="${r1(ry)}"/>`;
export const curve = (d: string) => `<path d="${d}"/>`;

/** The same strokes drawn round a centre `count` times. */
export function around(count: number, cx: number, cy: number, draw: (angle: number, cx: number, cy: number) => string) {
  return Array.from({ length: count }, (_, i) => draw((i * TURN) / count, cx, cy)).join('');
}

export function spiral(cx: number, cy: number, radius: number, turns = 2.5, start = 0) {
  const points: Point[] = [];
  const steps = Math.round(turns * 14);
  for (let i = 0; i <= steps; i++) points.push(at(cx, cy, (radius * i) / steps, start + (turns * TURN * i) / steps));
  return line(points);
}
