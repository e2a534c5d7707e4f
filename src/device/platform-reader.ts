import type { Decode } from './decode.ts';

interface DetectorClass {
  new (options: { formats: readonly string[] }): { detect(image: ImageData): Promise<readonly { rawValue: string }[]> };
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
    return async (image) => (await detector.detect(image)).map((symbol) => symbol.rawValue);
  } catch {
    return null;
  }
}
