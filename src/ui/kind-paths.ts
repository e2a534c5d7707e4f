import type { KindShape } from '../views/label-sheet.ts';

/** Each kind of thing's own shape on a label, in a square of 20: told apart in print without colour. */
export const KIND_PATHS: Readonly<Record<KindShape, string>> = {
  place: 'M1 4h18v12h-18z M3 6v8h14v-8z M7.5 8.500h5v2.500h-5z',
  design: 'M10 2l9 15.500h-18z M10 6.500l-5 8.500h10z',
  master: 'M10 1l9 9l-9 9l-9-9z',
  mould: 'M1.500 3h17v14h-17z M10 6a4 4 0 1 0 0 8a4 4 0 0 0 0-8z',
  intermediate: 'M5.500 2.500h9l4.500 7.500l-4.500 7.500h-9l-4.500-7.500z M6.900 5l-3 5l3 5h6.200l3-5l-3-5z',
  wax: 'M10 1c3.500 5 6.500 8 6.500 11.500a6.500 6.500 0 0 1-13 0c0-3.500 3-6.500 6.500-11.500z',
  injectedWax:
    'M10 1c3.500 5 6.500 8 6.500 11.500a6.500 6.500 0 0 1-13 0c0-3.500 3-6.500 6.500-11.500z M10 5c-2 3-4.200 5-4.200 7.500a4.200 4.200 0 0 0 8.400 0c0-2.500-2.200-4.500-4.200-7.500z',
  injector: 'M6.500 1h7v9h5l-8.500 9l-8.500-9h5z',
  casting: 'M10 1.500a8.500 8.500 0 1 1 0 17a8.500 8.500 0 0 1 0-17z',
  flask: 'M3 2h14v16h-14z M5 4v12h3v-12z',
};
