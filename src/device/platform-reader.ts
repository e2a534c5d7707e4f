import type { Point, Sighting } from '../domain/sighting.ts';
import type { LabelPicture } from '../worker/protocol.ts';

/** The QR symbols in a picture. A thorough look takes longer. */
export type Decode = (picture: LabelPicture, isThorough: boolean) => Promise<readonly Sighting[]>;

interface Detected {
  readonly rawValue: string;
  readonly cornerPoints?: readonly Point[];
}

interface DetectorClass {
  new (options: { formats: readonly string[] }): { detect(picture: LabelPicture): Promise<readonly Detected[]> };
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
    return async (picture) => {
      const [wide, tall] = 'data' in picture ? [picture.width, picture.height] : [picture.displayWidth, picture.displayHeight];
      return (await detector.detect(picture)).map(
        ({ rawValue, cornerPoints = [] }): Sighting => ({
          text: rawValue,
          corners: cornerPoints.map(({ x, y }) => ({ x: x / wide, y: y / tall })),
        }),
      );
    };
  } catch {
    return null;
  }
}
