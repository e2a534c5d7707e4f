export interface Figure {
  readonly name: string;
  readonly value: number;
  readonly unit: 'ms' | '×' | 'kB' | 'MB' | '%' | 'points' | '';
  /** What it must not exceed; without one it is only told. */
  readonly bound?: number;
  /** What it must reach. */
  readonly least?: number;
  readonly note?: string;
}

export function judged({ value, bound, least }: Figure): boolean {
  return Number.isFinite(value) && (bound === undefined || value <= bound) && (least === undefined || value >= least);
}

/** The figures as lines of a plain table. */
export function table(figures: readonly Figure[]): string {
  const rows = figures.map((figure) => {
    const { name, value, unit, bound, least, note = '' } = figure;
    const must = bound !== undefined ? `≤ ${bound} ${unit}` : least !== undefined ? `≥ ${least} ${unit}` : '';
    const shown = `${value.toFixed(unit === '×' ? 2 : unit === 'ms' || unit === 'points' ? 1 : 0)} ${unit}`;
    return [name, shown, must, must === '' ? '' : judged(figure) ? 'held' : 'MISSED', note];
  });
  const widths = [0, 1, 2, 3].map((column) => Math.max(...rows.map((row) => row[column]?.length ?? 0)));
  return rows
    .map((row) =>
      row
        .map((cell, column) => cell.padEnd(widths[column] ?? 0))
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}
