import { beforeEach, expect, test, vi } from 'vitest';
import { refusedShares } from '../../src/device/shared-pictures.ts';
import { isProblem } from '../../src/domain/problem.ts';
import { keepShared } from '../../sw/shared-pictures.ts';
import { LONG_MS } from '../support/amount.ts';
import { forDrawsInTurn } from '../support/draws.ts';
import type { Mutator } from '../support/mutate.ts';

vi.mock('workbox-routing', () => ({ registerRoute: () => undefined }));

const SCOPE = 'https://host.example/studio/';
const TYPES = ['image/jpeg', 'image/png', 'image/svg+xml', 'image/', 'IMAGE/PNG', 'application/zip', 'text/plain', '', 'image/jpeg; x="'];
const NAMES = ['a.jpg', 'studio.zip', '../../etc', '', '\u202egpj.exe', 'x'.repeat(4000), 'con', 'a\u0000.png'];
const ZIP = [0x50, 0x4b, 3, 4, 20, 0];

let room: number;
let kept: Response[];
beforeEach(() => {
  vi.stubGlobal('caches', {
    open: async () => ({
      put: async (_: string, response: Response) => {
        if (kept.length >= room) throw new DOMException('no room', 'QuotaExceededError');
        kept.push(response);
      },
    }),
  });
});

/** A file that says it is so large without being it. */
function large(name: string, type: string): File {
  const file = new File([new Uint8Array(ZIP)], name, { type });
  Object.defineProperty(file, 'size', { value: 100_000_000 });
  return file;
}

interface Share {
  readonly request: Request;
  /** How many it holds; −1 when nobody can tell. */
  readonly files: number;
  /** How many the storage takes. */
  readonly room: number;
}

/** A form such as other apps may post: fields of any name, texts among the files, none at all, or no form. */
function anyShare(mutator: Mutator): Share {
  const room = mutator.one([0, 3, 1000]);
  if (mutator.below(12) === 0) {
    const body = mutator.text(['--x\r\nContent-Disposition: form-data; name="pictures"; filename="a.jpg"\r\n\r\nabc\r\n--x--']);
    return {
      request: new Request(SCOPE, { method: 'POST', body, headers: { 'content-type': 'multipart/form-data; boundary=x' } }),
      files: -1,
      room,
    };
  }
  const form = new FormData();
  const files = mutator.one([0, 1, 2, 3, 25]);
  for (let i = 0; i < files; i++) {
    const [name, type] = [mutator.one(NAMES), mutator.one(TYPES)];
    const bytes = new Uint8Array(mutator.one([[], ZIP, [0xff, 0xd8, 0xff], [...'<svg onload=x>'].map((c) => c.charCodeAt(0))]));
    form.append(
      mutator.one(['pictures', 'other', '__proto__']),
      mutator.below(9) === 0 ? large(name, type) : new File([bytes], name, { type }),
    );
  }
  form.append('title', mutator.one(NAMES));
  return { request: { formData: async () => form } as Request, files, room };
}

test(
  'whatever is shared, the screen opens; pictures are kept, and all else is told of by why and how many',
  () =>
    forDrawsInTurn(anyShare, async (share) => {
      const { request, files } = share;
      [kept, room] = [[], share.room];
      const answer = await keepShared(request, SCOPE, 1);
      expect(answer.status).toBe(303);
      const [, asked = ''] =
        /^https:\/\/host\.example\/studio\/#\/shared(?:\?([\w&=]+))?$/.exec(answer.headers.get('location') ?? '') ?? [];
      const told = new URLSearchParams(asked);
      const refused = ['kind', 'empty', 'large', 'many', 'room'].reduce((sum, why) => sum + Number(told.get(why) ?? 0), 0);
      if (files >= 0) expect(kept.length + refused).toBe(files);
      if (files === 0) expect(told.get('none')).toBe('1');
      if (asked !== '') expect(told.get('kept')).toBe(String(kept.length));
      expect(isProblem(refusedShares(told))).toBe(asked !== '');
      expect(kept.length).toBeLessThanOrEqual(20);
      for (const response of kept) expect(response.headers.get('content-type')).toMatch(/^image\//);
    }),
  LONG_MS,
);
