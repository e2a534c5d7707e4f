import { encode } from 'uqr';

/** A grey picture, 0 black to 255 white, row by row. */
export interface Grey {
  readonly width: number;
  readonly height: number;
  readonly data: Float32Array;
}

export type Modules = readonly (readonly boolean[])[];
export type LabelForm = '1-M' | '2-H';

/** The two forms of label the studio prints. */
export function labelModules(text: string, form: LabelForm): Modules {
  const version = form === '1-M' ? 1 : 2;
  return encode(text, { ecc: form === '1-M' ? 'M' : 'H', minVersion: version, maxVersion: version, border: 0, boostEcc: false }).data;
}

export interface LabelView {
  readonly width?: number;
  readonly height?: number;
  /** Side of the whole label, quiet zone of four modules included, px. */
  readonly side: number;
  /** Degrees it lies turned. */
  readonly turn?: number;
  /** Degrees the camera looks at it from the side. */
  readonly tilt?: number;
  readonly inverted?: boolean;
}

const PAPER = 228;
const INK = 28;
const TABLE = 120;
const QUIET = 4;
/** Camera's distance in label sides; near enough that a tilt makes a trapezium. */
const DISTANCE = 2.5;

/** A label lying on a grey table, as a camera sees it; every pixel is the mean of 2 × 2 points. */
export function paintLabel(modules: Modules, view: LabelView): Grey {
  const { width = 640, height = 480, side, turn = 0, tilt = 0, inverted = false } = view;
  const data = new Float32Array(width * height);
  const [a, b] = [(turn * Math.PI) / 180, (tilt * Math.PI) / 180];
  const across = modules.length + 2 * QUIET;
  const far = side * DISTANCE;
  const [cosA, sinA, cosB, sinB] = [Math.cos(a), Math.sin(a), Math.cos(b), Math.sin(b)];
  const at = (px: number, py: number): number => {
    const x = px - width / 2;
    const y = py - height / 2;
    const flat = (x * far) / (far * cosB - x * sinB);
    const up = (y * (far + flat * sinB)) / far;
    const u = ((flat * cosA + up * sinA) / side + 0.5) * across;
    const v = ((-flat * sinA + up * cosA) / side + 0.5) * across;
    if (u < 0 || v < 0 || u >= across || v >= across) return TABLE;
    const dark = modules[Math.floor(v) - QUIET]?.[Math.floor(u) - QUIET] ?? false;
    return dark !== inverted ? INK : PAPER;
  };
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      data[y * width + x] = (at(x + 0.25, y + 0.25) + at(x + 0.75, y + 0.25) + at(x + 0.25, y + 0.75) + at(x + 0.75, y + 0.75)) / 4;
    }
  }
  return { width, height, data };
}

/** Sharp modules of `px` pixels with a quiet zone of four, on nothing: what an encoder means. */
export function drawModules(modules: Modules, px: number): Grey {
  const width = (modules.length + 2 * QUIET) * px;
  const data = new Float32Array(width * width).fill(255);
  modules.forEach((row, v) => {
    row.forEach((dark, u) => {
      if (!dark) return;
      for (let y = (v + QUIET) * px; y < (v + QUIET + 1) * px; y++)
        data.fill(0, y * width + (u + QUIET) * px, y * width + (u + QUIET + 1) * px);
    });
  });
  return { width, height: width, data };
}

/** RGBA as a canvas gives it. */
export function toImageData({ width, height, data }: Grey): ImageData {
  const pixels = new Uint8ClampedArray(width * height * 4);
  for (let i = 0, k = 0; i < data.length; i++, k += 4) {
    const value = data[i] ?? 0;
    pixels[k] = value;
    pixels[k + 1] = value;
    pixels[k + 2] = value;
    pixels[k + 3] = 255;
  }
  return { data: pixels, width, height, colorSpace: 'srgb' } as ImageData;
}
