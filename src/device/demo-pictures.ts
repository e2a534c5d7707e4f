import { sha256 } from '../domain/field.ts';
import type { Picture } from '../domain/picture.ts';
import { isProblem } from '../domain/problem.ts';

/** The demo's drawings (SHA-256 → SVG text) as pictures; a drawing is small enough to be its own thumbnail. */
export function demoPictures(raw: unknown): Picture[] {
  const type = 'image/svg+xml';
  return Object.entries((raw ?? {}) as Record<string, unknown>).flatMap(([name, svg]) => {
    const sha = sha256(name);
    if (isProblem(sha) || typeof svg !== 'string') return [];
    const bytes = new TextEncoder().encode(svg).buffer as ArrayBuffer;
    return [{ sha, type, bytes, thumb: { type, bytes } }];
  });
}
