import type { Branch } from '../../domain/lineage/family.ts';
import { thingOf } from '../../domain/shelf.ts';
import { branchInWords } from '../../views/lineage-page.ts';
import { addressOf } from '../address.ts';
import { useShelf } from '../studio.tsx';

/** A lineage as nested lists. */
export function LineageOutline({ branches, here }: { branches: readonly Branch[]; here: string }) {
  return (
    <ul class="outline">
      {branches.map((branch) => (
        <BranchItem key={branch.id} branch={branch} here={here} />
      ))}
    </ul>
  );
}

function BranchItem({ branch, here }: { branch: Branch; here: string }) {
  const shelf = useShelf();
  const thing = thingOf(shelf, branch.id);
  const { title, detail } = branchInWords(shelf, branch);
  return (
    <li>
      {thing ? (
        <a href={addressOf(thing)} class="outline-link" aria-current={branch.id === here ? 'page' : undefined}>
          <span class="row-title">{title}</span>
          <span class="row-detail">{detail}</span>
        </a>
      ) : (
        <span class="outline-link">
          <span class="row-title">{title}</span>
          <span class="row-detail">{detail}</span>
        </span>
      )}
      {branch.below.length > 0 && <LineageOutline branches={branch.below} here={here} />}
    </li>
  );
}
