import type { Curve, Step } from '../../domain/survival/kaplan-meier.ts';
import type { SurvivalCard } from '../../views/survival-page.ts';

/** The picture's own units: shares from the top down, shots from left to right. */
const SIDE = 100;

/** A line that keeps its height until the next step, from nothing to the longest life. */
function stepsPath(curve: Curve, heightOf: (step: Step) => number): string {
  const x = (shots: number) => ((SIDE * shots) / Math.max(1, curve.longest)).toFixed(2);
  const y = (share: number) => (SIDE * (1 - share)).toFixed(2);
  return `M0 0${curve.steps.map((step) => `H${x(step.shots)}V${y(heightOf(step))}`).join('')}H${SIDE}`;
}

/** The area between both ends of the interval. */
function bandPath(curve: Curve): string {
  const x = (shots: number) => ((SIDE * shots) / Math.max(1, curve.longest)).toFixed(2);
  const y = (share: number) => (SIDE * (1 - share)).toFixed(2);
  const { steps } = curve;
  const back = steps.toReversed().map((step, i) => {
    const before = steps[steps.length - 2 - i];
    return `H${x(step.shots)}V${y(before ? (before.low ?? before.share) : 1)}`;
  });
  const last = steps.at(-1);
  return last ? `${stepsPath(curve, (step) => step.high ?? step.share)}V${y(last.low ?? last.share)}${back.join('')}Z` : '';
}

/** Share of moulds still whole, drawn as steps, with how many had come so far beneath. */
export function SurvivalCurve({ card }: { card: SurvivalCard }) {
  const { curve, marks } = card;
  return (
    <figure class="curve">
      <figcaption>Share still whole, by shots. The pale band is where the true share lies with 95 %.</figcaption>
      <div class="curve-plot">
        <div class="curve-shares" aria-hidden="true">
          <span>all</span>
          <span>half</span>
          <span>none</span>
        </div>
        <svg class="curve-picture" viewBox={`0 0 ${SIDE} ${SIDE}`} preserveAspectRatio="none" aria-hidden="true" focusable="false">
          <path class="curve-band" d={bandPath(curve)} />
          <path class="curve-half" d={`M0 ${SIDE / 2}H${SIDE}`} />
          <path class="curve-steps" d={stepsPath(curve, (step) => step.share)} />
        </svg>
      </div>
      <div class="curve-marks">
        <span class="curve-mark-name">Shots</span>
        <span class="curve-mark-row">
          {marks.map(({ shots }) => (
            <span key={shots}>{shots}</span>
          ))}
        </span>
        <span class="curve-mark-name">Came so far</span>
        <span class="curve-mark-row">
          {marks.map(({ shots, atRisk }) => (
            <span key={shots}>{atRisk}</span>
          ))}
        </span>
      </div>
    </figure>
  );
}

/** The same as a table, for those who read it better. */
export function SurvivalTable({ card }: { card: SurvivalCard }) {
  if (card.table.length === 0) return null;
  return (
    <details class="curve-table">
      <summary>The steps as a table</summary>
      <div class="table-scroll">
        <table>
          <caption>Share of moulds still whole after each end: {card.title}</caption>
          <thead>
            <tr>
              <th scope="col">Shots</th>
              <th scope="col">Came so far</th>
              <th scope="col">Ended</th>
              <th scope="col">Still whole</th>
              <th scope="col">95 % range</th>
            </tr>
          </thead>
          <tbody>
            {card.table.map((row) => (
              <tr key={row.shots}>
                <th scope="row">{row.shots}</th>
                <td>{row.atRisk}</td>
                <td>{row.ends}</td>
                <td>{row.share}</td>
                <td>{row.range}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </details>
  );
}
