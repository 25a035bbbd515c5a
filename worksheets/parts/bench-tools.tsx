import { stateOf } from '@larderwright/calc/batch';
import { useContext, useEffect, useState } from 'preact/hooks';
import * as say from '#words/parts/bench-tools.ts';
import { type BackupState, backUpAll, backupReminder } from '../state/backup.ts';
import { nextNumber } from '../state/batch-numbers.ts';
import { $batch, editAt } from '../state/store.ts';
import { $steps, redo, undo, watchSteps } from '../state/undo.ts';
import { useShared } from '../state/use-shared.ts';
import { STATE_WORDS } from '../words/states.ts';
import { Conflicts } from './conflicts.tsx';
import { Links } from './links.ts';

/** Undo, the batch's number and state, and the way to the other batches. */
export function BenchTools() {
  const { batches } = useContext(Links);
  const batch = useShared($batch);
  const steps = useShared($steps);
  useEffect(watchSteps, []);
  const { state } = stateOf(batch);
  const isOut = state === 'held' || state === 'discarded';
  return (
    <>
      <div class="bench-tools">
        <button type="button" disabled={steps.undo === 0} aria-keyshortcuts="Control+Z" onClick={undo}>
          {say.undo}
        </button>
        <button type="button" disabled={steps.redo === 0} aria-keyshortcuts="Control+Shift+Z" onClick={redo}>
          {say.redo}
        </button>
        <span class="batch-state" data-state={state}>
          {isOut ? STATE_WORDS[state].toUpperCase() : STATE_WORDS[state]}
        </span>
        <a href={batches}>{say.batches}</a>
      </div>
      {batch.product.batchNo.trim() === '' ? <NumberOffer /> : null}
      <Conflicts />
      <BackupLine />
    </>
  );
}

/** A batch without a number is offered the next of the kitchen's scheme. */
function NumberOffer() {
  const [number, setNumber] = useState<string | null>(null);
  useEffect(() => {
    nextNumber().then(setNumber, () => {});
  }, []);
  return number === null ? null : (
    <p class="bench-line">
      {say.noBatchNumberYet}{' '}
      <button type="button" onClick={() => editAt('product.batchNo', number)}>
        {say.giveIt(number)}
      </button>
    </p>
  );
}

/** Once a day at most, and gone with a tap. */
function BackupLine() {
  const { schema } = useContext(Links);
  const [state, setState] = useState<BackupState | null>(null);
  useEffect(() => {
    backupReminder().then(setState, () => {});
  }, []);
  return state === null ? null : (
    <p class="bench-line">
      {say.batchEsHaveChangedSinceLast(state.changed)}{' '}
      <button type="button" onClick={() => void backUpAll(schema).then(() => setState(null))}>
        {say.saveAllToAFile}
      </button>
      <button type="button" onClick={() => setState(null)}>
        {say.notToday}
      </button>
    </p>
  );
}
