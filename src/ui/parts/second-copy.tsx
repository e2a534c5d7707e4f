import { useEffect, useState } from 'preact/hooks';
import { type Copied, type CopyPlace, readSecondCopy, saveSecondCopy } from '../../actions/save-second-copy.ts';
import { sayCount } from '../../domain/measure-words.ts';
import { sayEntries } from '../backup-words.ts';
import { sayMoment } from '../moment-words.ts';
import { Button } from './button.tsx';
import '../styles/backup.css';

/** Offers the second copy of the journal as a file, where there is one and the shelves themselves cannot be opened. */
export function SecondCopy({ place }: { place: CopyPlace }) {
  const [copied, setCopied] = useState<Copied | undefined>();
  const [told, setTold] = useState('');
  useEffect(() => {
    // A copy that cannot be reached either is none.
    readSecondCopy(place).then(setCopied, () => undefined);
  }, [place]);
  if (!copied) return null;
  const { entries, unread } = copied;
  const last = entries.at(-1);

  async function save(from: Copied): Promise<void> {
    try {
      const isOver = await saveSecondCopy(from, place.today());
      setTold(isOver ? `A journal of ${sayEntries(from.entries.length)} was handed over.` : 'No copy was saved.');
    } catch {
      setTold('The copy could not be handed over. Nothing was changed. Try once more.');
    }
  }

  return (
    <section class="card">
      <h2>What can still be saved</h2>
      <p>
        A second copy of the journal can still be read: {sayEntries(entries.length)}
        {last && `, up to ${sayMoment(last.id)}`}.{unread > 0 && ` ${sayCount(unread, 'part')} of it could not be read.`} Pictures are not
        in it; those come from a backup.
      </p>
      <p>
        If trying again does not help, save it as a file before you clear anything in this browser. Any Mouldkeep reads it back in: by{' '}
        <em>I have a backup</em> on its first page, or under <em>Backup</em> in the settings.
      </p>
      <div class="button-row">
        <Button onClick={() => void save(copied)}>Save the journal from the second copy</Button>
      </div>
      <p role="status">{told}</p>
    </section>
  );
}
