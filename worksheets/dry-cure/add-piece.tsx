import { newDryCurePiece } from '@larderwright/calc/dry-cure';
import * as say from '#words/dry-cure/add-piece.ts';
import { newId } from '../state/clock.ts';
import { addRow } from '../state/rows.ts';
import { $life } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';

/** Begins a bag. */
export function AddPiece() {
  const waking = useShared($life) === 'waking';
  return (
    <p class="buttons">
      <button
        type="button"
        class="press-first"
        disabled={waking}
        onClick={() => addRow('dryCure.pieces', newDryCurePiece(newId()))}
      >
        {say.addAPiece}
      </button>
    </p>
  );
}
