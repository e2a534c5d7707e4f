import type { Grey } from './label-picture.ts';

/** What happens to a label picture between the label and the decoder. Each returns a new picture. */
export type Damage = (picture: Grey) => Grey;

function perPixel(change: (value: number, x: number, y: number) => number): Damage {
  return ({ width, height, data }) => ({
    width,
    height,
    data: data.map((value, i) => change(value, i % width, Math.floor(i / width))),
  });
}

/** Out of focus: three box means of this radius, px, which come near a Gaussian. */
export function blur(radius: number): Damage {
  const pass = (source: Float32Array, count: number, lines: number, step: number, stride: number): Float32Array => {
    const out = new Float32Array(source.length);
    for (let line = 0; line < lines; line++) {
      for (let i = 0; i < count; i++) {
        let sum = 0;
        for (let k = -radius; k <= radius; k++) sum += source[line * stride + Math.min(count - 1, Math.max(0, i + k)) * step] ?? 0;
        out[line * stride + i * step] = sum / (2 * radius + 1);
      }
    }
    return out;
  };
  return ({ width, height, data }) => {
    let now = data;
    for (let i = 0; i < 3; i++) now = pass(pass(now, width, height, 1, width), height, width, width, 1);
    return { width, height, data: now };
  };
}

/** Grain of a poor sensor in poor light; `sigma` in grey levels. */
export function grain(sigma: number, random: () => number): Damage {
  return perPixel((value) => value + sigma * (random() + random() + random() + random() - 2) * Math.sqrt(3));
}

/** Squeezes greys to `share` of their range around `level`: dim light, yellowed paper. */
export function dim(share: number, level: number): Damage {
  return perPixel((value) => level + (value - 128) * share);
}

/** A lamp mirrored in the label's film: a round spot of white, radius in px. */
export function glare(cx: number, cy: number, radius: number): Damage {
  return perPixel((value, x, y) => value + 255 * Math.exp(-(((x - cx) ** 2 + (y - cy) ** 2) / radius ** 2) * 1.5));
}

/** Wax smeared across: a band of this half-width, px, through a point at this slope, that hides `cover` of what is under it. */
export function smear(cx: number, cy: number, half: number, slope: number, cover: number): Damage {
  const length = Math.hypot(1, slope);
  return perPixel((value, x, y) => {
    const off = Math.abs((y - cy - slope * (x - cx)) / length) / half;
    const share = off >= 1 ? 0 : cover * (1 - off ** 4);
    return value * (1 - share) + 150 * share;
  });
}

/** A shadow's edge across the picture, leaving `light` of the light on its dark side. */
export function shadow(at: number, light: number): Damage {
  return perPixel((value, x, y) => value * (x + y * 0.4 < at ? light : 1));
}

export function after(picture: Grey, ...damages: readonly Damage[]): Grey {
  return damages.reduce((now, damage) => damage(now), picture);
}

/** Laid on a grey table, turned and seen from the side (degrees), enlarged, with room around it; sampled between its dots. */
export function lay(turn: number, tilt: number, enlarge = 1, table = 120): Damage {
  return (picture) => {
    const span = Math.ceil(Math.hypot(picture.width, picture.height) * enlarge) + 20;
    const data = new Float32Array(span * span);
    const [a, b] = [(turn * Math.PI) / 180, (tilt * Math.PI) / 180];
    const far = span * 2;
    for (let y = 0; y < span; y++) {
      for (let x = 0; x < span; x++) {
        const [px, py] = [x - span / 2, y - span / 2];
        const flat = (px * far) / (far * Math.cos(b) - px * Math.sin(b));
        const up = (py * (far + flat * Math.sin(b))) / far;
        const u = (flat * Math.cos(a) + up * Math.sin(a)) / enlarge + picture.width / 2;
        const v = (-flat * Math.sin(a) + up * Math.cos(a)) / enlarge + picture.height / 2;
        data[y * span + x] = between(picture, u, v, table);
      }
    }
    return { width: span, height: span, data };
  };
}

function between({ width, height, data }: Grey, u: number, v: number, outside: number): number {
  if (u < 0 || v < 0 || u >= width || v >= height) return outside;
  const [x, y] = [Math.floor(Math.max(0, u - 0.5)), Math.floor(Math.max(0, v - 0.5))];
  const [fx, fy] = [Math.max(0, u - 0.5 - x), Math.max(0, v - 0.5 - y)];
  const dot = (i: number, j: number) => data[Math.min(height - 1, j) * width + Math.min(width - 1, i)] ?? outside;
  return (dot(x, y) * (1 - fx) + dot(x + 1, y) * fx) * (1 - fy) + (dot(x, y + 1) * (1 - fx) + dot(x + 1, y + 1) * fx) * fy;
}

/** Moved while the shutter was open: the mean along a line of this length, px, at this angle in degrees. */
export function motion(length: number, angle: number): Damage {
  const steps = Math.max(1, Math.round(length));
  const [dx, dy] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
  return ({ width, height, data }) => {
    const out = new Float32Array(data.length);
    for (let y = 0; y < height; y++) {
      for (let x = 0; x < width; x++) {
        let sum = 0;
        for (let k = 0; k < steps; k++) {
          const off = k - (steps - 1) / 2;
          const [u, v] = [Math.round(x + off * dx), Math.round(y + off * dy)];
          sum += data[Math.min(height - 1, Math.max(0, v)) * width + Math.min(width - 1, Math.max(0, u))] ?? 0;
        }
        out[y * width + x] = sum / steps;
      }
    }
    return { width, height, data: out };
  };
}

/** A drop of something on it: a round spot of this grey that hides all under it. */
export function blot(cx: number, cy: number, radius: number, grey: number): Damage {
  return perPixel((value, x, y) => ((x - cx) ** 2 + (y - cy) ** 2 < radius ** 2 ? grey : value));
}

/** Stuck round a bottle or a mould's edge: seen across a cylinder of this radius, px, whose axis stands in the picture's middle. */
export function curve(radius: number): Damage {
  return ({ width, height, data }) => ({
    width,
    height,
    data: data.map((_, i) => {
      const [x, y] = [(i % width) - width / 2, Math.floor(i / width)];
      if (Math.abs(x) >= radius) return 90;
      const u = Math.round(radius * Math.asin(x / radius) + width / 2);
      return u < 0 || u >= width ? 90 : (data[y * width + u] ?? 90);
    }),
  });
}
