import { readdirSync, readFileSync } from 'node:fs';

const SAMPLE_MS = 50;
const NOT_THERE = /\b(ENOENT|ESRCH)\b/;

/** Memory that only these processes have, in bytes: what code they share with others is left out. */
export interface Held {
  /** The browser's pages, workers and all. */
  readonly pages: number;
  /** The browser itself and its services, which keep blobs and databases. */
  readonly rest: number;
}

/** A file of Linux's `/proc`; nothing once the process has ended. */
function told(path: string): string {
  try {
    return readFileSync(path, 'utf8');
  } catch (error) {
    if (NOT_THERE.test(String(error))) return '';
    throw error;
  }
}

const linesOf = (pid: string, name: string) =>
  Number(new RegExp(`^${name}:\\s+(\\d+) kB$`, 'm').exec(told(`/proc/${pid}/status`))?.[1] ?? 0) * 1024;

interface Process {
  readonly pid: string;
  readonly parent: string;
  readonly line: string;
}

function processes(): readonly Process[] {
  return readdirSync('/proc')
    .filter((name) => /^\d+$/.test(name))
    .map((pid) => ({ pid, line: told(`/proc/${pid}/cmdline`), parent: /\) \S (\d+)/.exec(told(`/proc/${pid}/stat`))?.[1] ?? '' }));
}

/** What the browser with this profile holds now. Linux only. */
export function held(profile: string): Held {
  const all = processes();
  const mine = new Set(all.filter(({ line }) => line.includes(`--user-data-dir=${profile}\0`)).map(({ pid }) => pid));
  for (let before = -1; before < mine.size; ) {
    before = mine.size;
    for (const { pid, parent } of all) if (mine.has(parent)) mine.add(pid);
  }
  const sum = { pages: 0, rest: 0 };
  for (const { pid, line } of all) {
    if (mine.has(pid)) sum[line.includes('--type=renderer') ? 'pages' : 'rest'] += linesOf(pid, 'RssAnon') + linesOf(pid, 'RssShmem');
  }
  if (sum.pages === 0) throw new Error('the browser’s pages were not found among the processes');
  return sum;
}

/** By how much at most the browser's memory grew over what it was before, while a job ran. */
export async function grownBy<T>(profile: string, before: Held, job: () => Promise<T>): Promise<{ value: T; grown: Held }> {
  let [pages, rest] = [0, 0];
  let isOver = false;
  const sampling = (async () => {
    while (!isOver) {
      const now = held(profile);
      pages = Math.max(pages, now.pages - before.pages);
      rest = Math.max(rest, now.rest - before.rest);
      await new Promise((done) => setTimeout(done, SAMPLE_MS));
    }
  })();
  try {
    const value = await job();
    return { value, grown: { pages, rest } };
  } finally {
    isOver = true;
    await sampling;
  }
}
