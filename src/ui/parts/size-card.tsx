import { sayMass } from '../../domain/measure-words.ts';
import { thingOf } from '../../domain/shelf.ts';
import { type MouldSize, readingLines, sizesFor } from '../../views/size-page.ts';
import { addressOf } from '../address.ts';
import { to } from '../router.ts';
import { useShelf } from '../studio.tsx';
import { useUnits } from '../use-units.ts';
import { LinkButton } from './button.tsx';
import { Facts } from './facts.tsx';
import { Mark } from './mark.tsx';
import '../styles/size.css';

const MEASURED = ['master', 'mould', 'injectedWax', 'casting'];
const FIRST = 4;

/** What was measured on a thing, and the size its castings are expected to have. */
export function SizeCard({ id }: { id: string }) {
  const shelf = useShelf();
  const units = useUnits();
  const thing = thingOf(shelf, id);
  if (!thing || (!MEASURED.includes(thing.noun) && thing.noun !== 'design')) return null;
  const sizes = sizesFor(shelf, id, units);
  const lines = readingLines(shelf, id, units);
  const grams = thing.measured?.grams;
  const facts = [
    ...lines.map(({ name, says, against }) => ({ name, says: against ? `${says}, ${against}` : says })),
    ...(grams === undefined ? [] : [{ name: 'Weight', says: sayMass(grams, units) }]),
  ];
  if (thing.noun === 'design' && sizes.length === 0) return null;
  return (
    <section class="card">
      <h2>Size</h2>
      {sizes.slice(0, FIRST).map((size) => (
        <Expects key={size.id} size={size} isOne={sizes.length === 1 && thing.noun === 'mould'} />
      ))}
      {sizes.length > FIRST && <p>{sizes.length - FIRST} more moulds: each says so on its own page.</p>}
      {facts.length > 0 && <h3>Measured</h3>}
      <Facts facts={facts} />
      {facts.length === 0 && thing.noun !== 'design' && <p class="field-hint">Nothing was measured on it yet.</p>}
      <div class="button-row">
        {thing.noun !== 'design' && <LinkButton href={to(['measure', id])}>Measure it</LinkButton>}
        <LinkButton href={to(['size'], { of: id })}>Which size is this?</LinkButton>
      </div>
    </section>
  );
}

function Expects({ size, isOne }: { size: MouldSize; isOne: boolean }) {
  return (
    <>
      {!isOne && (
        <h3>
          <a href={to(['mould', size.id])}>{size.title}</a>
        </h3>
      )}
      {size.smaller && (
        <p class="row-marks">
          <Mark shape="low" word="comes out small" tone="soon" /> {size.smaller}
        </p>
      )}
      {size.plain ? <p>{size.plain}</p> : <Metals size={size} />}
      {size.taken.map(({ says, title, thing }) => (
        <p key={says}>
          {says} {thing ? <a href={addressOf(thing)}>{title}</a> : title}.
        </p>
      ))}
      <p class="field-hint">
        {size.from} {size.rests}
        {!size.plain && ' ± is one standard deviation.'}
      </p>
    </>
  );
}

function Metals({ size }: { size: MouldSize }) {
  return (
    <table class="sizes">
      <thead>
        <tr>
          <th scope="col">Metal</th>
          <th scope="col">A casting</th>
          <th scope="col">Lost since the original</th>
          <th scope="col">Next master</th>
        </tr>
      </thead>
      <tbody>
        {size.metals.map(({ metal, casting, since, master }) => (
          <tr key={metal}>
            <th scope="row">{metal}</th>
            <td data-word="A casting">{casting}</td>
            <td data-word="Lost since the original">{since}</td>
            <td data-word="Next master">{master}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
