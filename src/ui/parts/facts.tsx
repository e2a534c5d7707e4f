import type { Fact } from '../../views/mould-facts.ts';

/** Figures with their names. */
export function Facts({ facts }: { facts: readonly Fact[] }) {
  if (facts.length === 0) return null;
  return (
    <dl class="facts">
      {facts.map(({ name, says }) => (
        <div key={name} class="fact">
          <dt>{name}</dt>
          <dd>{says}</dd>
        </div>
      ))}
    </dl>
  );
}
