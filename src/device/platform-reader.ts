import type { Point, Sighting } from '../domain/sighting.ts';
import type { Decode } from './decode.ts';

interface Detected {
  readonly rawValue: string;
  readonly cornerPoints?: readonly Point[];
}

interface DetectorClass {
  new (options: { formats: readonly string[] }): { detect(image: ImageData): Promise<readonly Detected[]> };
  getSupportedFormats(): Promise<readonly string[]>;
}

/** The platform's own reader where there is one that knows QR symbols, or null. */
export async function openPlatformReader(): Promise<Decode | null> {
  const Detector = (globalThis as { BarcodeDetector?: DetectorClass }).BarcodeDetector;
  if (!Detector) return null;
  try {
    // Chromium on Android without the vendor's services has the class, but an empty list here.
    if (!(await Detector.getSupportedFormats()).includes('qr_code')) return null;
    const detector = new Detector({ formats: ['qr_code'] });
    return async (image) =>
      (await detector.detect(image)).map(
        ({ rawValue, cornerPoints = [] }): Sighting => ({
          text: rawValue,
          corners: cornerPoints.map(({ x, y }) => ({ x: x / image.width, y: y / image.height })),
        }),
      );
  } catch {
    return null;
  }
}
