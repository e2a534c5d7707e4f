/** Every state has a shape of its own beside its word and colour, so that it is told apart in bad light and by everyone. */
const SHAPES = {
  sound: 'M10 3a7 7 0 1 1 0 14a7 7 0 0 1 0-14z',
  watch: 'M10 3a7 7 0 0 1 0 14z M10 3a7 7 0 1 0 0 14v-1.8a5.2 5.2 0 1 1 0-10.4z',
  worn: 'M10 2.5l8 14.5h-16z',
  failed: 'M5.5 3l4.5 4.5l4.5-4.5l2.5 2.5l-4.5 4.5l4.5 4.5l-2.5 2.5l-4.5-4.5l-4.5 4.5l-2.5-2.5l4.5-4.5l-4.5-4.5z',
  unknown: 'M10 3a7 7 0 1 1 0 14a7 7 0 0 1 0-14z M10 5a5 5 0 1 0 0 10a5 5 0 0 0 0-10z',
  intermediate: 'M6 3h8l4 7l-4 7h-8l-4-7z M7.2 5.1l-2.8 4.9l2.8 4.9h5.6l2.8-4.9l-2.8-4.9z',
  retired: 'M3 8h14v4h-14z',
  away: 'M7 3h10v10h-3v-4.9l-8.4 8.4l-2.1-2.1l8.4-8.4h-4.9z',
  low: 'M3 3h14v14h-14z M5 5v6h10v-6z',
  full: 'M2 7h3v-4h10v4h3v10h-16z',
  stray: 'M10 2l3 6h-2v5h6v-2l3 0l-3 6h-14v-4h5v-5h-2z',
  due: 'M10 2a8 8 0 1 1 0 16a8 8 0 0 1 0-16z M9 5v6l4 3l1.2-1.6l-3.2-2.4v-5z',
  yes: 'M7.5 16.5l-6-6l2.4-2.4l3.6 3.6l8.6-8.6l2.4 2.4z',
  last: 'M10 1.5l2 6.5h6.5l-5.3 4l2 6.5l-5.2-4l-5.2 4l2-6.5l-5.3-4h6.5z',
  care: 'M9 2h2.4v10h-2.4z M9 14.5h2.4v3h-2.4z',
} as const;
export type ShapeName = keyof typeof SHAPES;

export function Shape({ name, size = 20 }: { name: ShapeName; size?: number }) {
  return (
    <svg class="shape" width={size} height={size} viewBox="0 0 20 20" aria-hidden="true" focusable="false">
      <path d={SHAPES[name]} fill="currentColor" fill-rule="evenodd" />
    </svg>
  );
}
