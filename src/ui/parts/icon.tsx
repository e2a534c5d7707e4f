const ICONS = {
  back: 'M15 4l-8 8l8 8',
  shelves: 'M3 4h18v16h-18z M3 9.3h18 M3 14.6h18 M10.5 6.7h3 M10.5 12h3 M10.5 17.3h3',
  find: 'M10.5 4a6.5 6.5 0 1 1 0 13a6.5 6.5 0 0 1 0-13z M15.5 15.5l5 5',
  scan: 'M4 8v-4h4 M16 4h4v4 M20 16v4h-4 M8 20h-4v-4 M8 8.5v7 M11 8.5v7 M13.5 8.5v7 M16 8.5v7',
  wax: 'M12 3c3.5 4.5 6 7.5 6 11a6 6 0 0 1-12 0c0-3.500 2.500-6.500 6-11z M9 14.500a3 3 0 0 0 3 3',
  attention: 'M5 21v-17 M5 4.500h13l-3 4l3 4h-13',
  more: 'M5 12h.01 M12 12h.01 M19 12h.01',
  plus: 'M12 4v16 M4 12h16',
  minus: 'M4 12h16',
  close: 'M5 5l14 14 M19 5l-14 14',
  settings: 'M4 7h9 M17 7h3 M13 4.500v5 M4 17h3 M11 17h9 M7 14.500v5',
  picture: 'M3 5h18v14h-18z M3 16l5-5l4 4l3-3l6 6 M15.500 9h.01',
  torch: 'M8 3h8l-1.500 5v13h-5v-13z M12 12v2',
  edit: 'M4 20l1-5l11-11l4 4l-11 11z',
  move: 'M4 12h14 M13 6l6 6l-6 6',
} as const;
export type IconName = keyof typeof ICONS;

export function Icon({ name, size = 26 }: { name: IconName; size?: number }) {
  return (
    <svg class="icon" width={size} height={size} viewBox="0 0 24 24" aria-hidden="true" focusable="false">
      <path
        d={ICONS[name]}
        fill="none"
        stroke="currentColor"
        stroke-width={name === 'more' ? 4 : 2}
        stroke-linecap="round"
        stroke-linejoin="round"
      />
    </svg>
  );
}
