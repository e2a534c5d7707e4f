import { planSteps } from '../domain/csv/plan-import.ts';
import { readTable } from '../domain/csv/table.ts';
import { isProblem, type Problem, problem } from '../domain/problem.ts';
import type { Jobs, Reply, Request } from './protocol.ts';

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

self.addEventListener('message', ({ data }: MessageEvent<Request>) => {
  try {
    reply({ answer: data.job === 'head' ? head(data.asks) : planList(data.asks) });
  } catch {
    reply({ answer: problem('The list could not be worked through.', 'Nothing was changed.') });
  }
});
