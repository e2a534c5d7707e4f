import { planSteps } from '../domain/csv/plan-import.ts';
import { readTable } from '../domain/csv/table.ts';
import { layOut } from '../domain/lineage/layout.ts';
import { isProblem, type Problem, problem } from '../domain/problem.ts';
import { forecastAll, sumLives } from '../domain/survival/life-sums.ts';
import { packForecasts, unpackLives, unpackMoulds } from '../domain/survival/packed.ts';
import { openBackup } from './open-backup.ts';
import { JOB_READS, type Jobs, type Reply, type Request } from './protocol.ts';
import { traceRows } from './trace-rows.ts';

/** Rows of the list that the head shows. */
const HEAD_ROWS = 6;

function reply(message: Reply): void {
  self.postMessage(message);
}

function head({ text, delimiter }: Jobs['head']['asks']): Jobs['head']['gives'] | Problem {
  const table = readTable(text, delimiter);
  return isProblem(table) ? table : { delimiter: table.delimiter, rows: table.rows.slice(0, HEAD_ROWS), total: table.rows.length };
}

function planList({ text, delimiter, known, reading, today }: Jobs['import']['asks']): Jobs['import']['gives'] | Problem {
  const table = readTable(text, delimiter);
  if (isProblem(table)) return table;
  const total = table.rows.length - (reading.hasHeadings ? 1 : 0);
  const steps = planSteps(known, table, reading, today);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
    reply({ progress: { done: step.value, total } });
  }
}

function sumUp({ sums, moulds }: Jobs['life']['asks']): Jobs['life']['gives'] {
  const made = sums.map((sum) => ('posterior' in sum ? undefined : sumLives(unpackLives(sum.lives))));
  const posteriors = sums.map((sum, i) => ('posterior' in sum ? sum.posterior : (made[i]?.posterior ?? [])));
  return { sums: made, forecasts: packForecasts(forecastAll(posteriors, unpackMoulds(moulds))) };
}

/** Entries in one message. */
const ENTRIES_AT_ONCE = 1000;

async function lookThrough(asks: Jobs['backup']['asks']): Promise<Jobs['backup']['gives'] | Problem> {
  const opened = await openBackup(asks, (progress) => reply({ progress }));
  if (isProblem(opened)) return opened;
  const { entries } = opened;
  for (let at = 0; at < entries.length; at += ENTRIES_AT_ONCE) reply({ entries: entries.slice(at, at + ENTRIES_AT_ONCE) });
  return { ...opened, entries: [] };
}

type Answer = Jobs[Request['job']]['gives'] | Problem;

function answerTo(request: Request): Answer | Promise<Answer> {
  switch (request.job) {
    case 'head':
      return head(request.asks);
    case 'import':
      return planList(request.asks);
    case 'backup':
      return lookThrough(request.asks);
    case 'life':
      return sumUp(request.asks);
    case 'trace':
      return traceRows(request.asks, (progress) => reply({ progress }));
    case 'lineage':
      return layOut(request.asks.members, request.asks.across);
  }
}

self.addEventListener('message', ({ data }: MessageEvent<Request>) => {
  const failed = () => reply({ answer: problem(`The ${JOB_READS[data.job]} could not be worked through.`, 'Nothing was changed.') });
  try {
    const answer = answerTo(data);
    if (answer instanceof Promise) answer.then((given) => reply({ answer: given }), failed);
    else reply({ answer });
  } catch {
    failed();
  }
});
