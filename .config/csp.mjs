/** The policy in force on every page: this origin only, no inline code, wasm for the label decoder, blobs for pictures and the camera. */
export const policy = [
  "default-src 'none'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "img-src 'self' blob: data:",
  "media-src 'self' blob: mediastream:",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "font-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

/** A meta tag cannot say who may frame the page; only a header can. */
export const headerPolicy = `${policy}; frame-ancestors 'none'`;
