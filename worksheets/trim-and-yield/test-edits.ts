import { blankEntry } from '@larderwright/calc/quantities';
import {
  newTrimPart,
  newYieldTest,
  newYieldTrial,
  type TrimRole,
  type YieldTest,
} from '@larderwright/calc/yield';
import { atom } from 'nanostores';
import { newId } from '../state/clock.ts';
import { getAt } from '../state/paths.ts';
import { addRow } from '../state/rows.ts';
import { $batch, editAt } from '../state/store.ts';

/** Most trials of one test: more are a season's record, not a test. */
export const MOST_TRIALS = 10;

function testAt(path: string): YieldTest {
  return getAt($batch.get(), path) as YieldTest;
}

/** The test begun last in this visit: its name field takes the focus. */
export const $newestTest = atom<string | null>(null);

/** Begins a test with the usual piles and one trial, and sends the person to it. */
export function addTest(): void {
  const id = newId();
  $newestTest.set(id);
  addRow('yield.tests', newYieldTest(id, newId()));
}

/** Adds a pile, unweighed in every trial. */
export function addPart(testPath: string, role: TrimRole): void {
  const test = testAt(testPath);
  const part = newTrimPart(newId(), '', role);
  editAt(testPath, {
    ...test,
    parts: [...test.parts, part],
    trials: test.trials.map((trial) => ({ ...trial, parts: { ...trial.parts, [part.id]: blankEntry('g') } })),
  });
}

/** Adds a trial of the same piles. */
export function addTrial(testPath: string): void {
  const test = testAt(testPath);
  addRow(`${testPath}.trials`, newYieldTrial(newId(), test.parts));
}
