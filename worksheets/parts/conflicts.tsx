import * as say from '#words/parts/conflicts.ts';
import { $conflicts, type Conflict, isOpen, keepOurs, takeTheirs } from '../state/conflicts.ts';
import { $batch } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { fieldWords } from '../words/fields.ts';
import { rowWords, valueWords } from './value-words.ts';

/** Fields that another tab changed as well: both values, and the choice. */
export function Conflicts() {
  const batch = useShared($batch);
  const conflicts = useShared($conflicts).filter((conflict) => isOpen(conflict, batch));
  if (conflicts.length === 0) return null;
  return (
    <div class="finding" data-severity="caution" role="alert">
      <p>
        <strong class="finding-word">{say.twoValues}</strong> {say.twoTabsHaveChangedSameField}
      </p>
      <ul class="conflicts">
        {conflicts.map((conflict) => (
          <li key={conflict.path}>
            <OneConflict conflict={conflict} />
          </li>
        ))}
      </ul>
    </div>
  );
}

function OneConflict({ conflict }: { conflict: Conflict }) {
  const { path, ours, theirs } = conflict;
  const row = rowWords($batch.get(), path);
  return (
    <>
      <span>
        {row ? `${row}: ` : ''}
        {fieldWords(path)}
      </span>
      <button type="button" onClick={() => keepOurs(conflict)}>
        {say.onScreen(valueWords(ours))}
      </button>
      <button type="button" onClick={() => takeTheirs(conflict)}>
        {say.theOther(valueWords(theirs))}
      </button>
    </>
  );
}
