import type { Batch } from '@larderwright/calc/batch';
import {
  type DryCureSlice,
  type DryCureValues,
  dryCureStage,
  newDryCureSlice,
} from '@larderwright/calc/dry-cure';
import type { Finding, Verdict } from '@larderwright/calc/findings';
import { entryValue } from '@larderwright/calc/quantities';
import { type CardHead, cardHead } from '../parts/card-head.ts';
import { stopLines } from '../parts/stop-lines.ts';
import { nowIso } from '../state/clock.ts';
import { dryCureWords } from '../words/dry-cure.ts';
import { learnWords } from '../words/index.ts';
import { type BagValues, bagValues } from './bag-values.ts';

/** What calc makes of the pieces in their bags, and the cards that go with them. */
export interface DryCureComputed {
  readonly values: DryCureValues;
  readonly findings: readonly Finding[];
  readonly verdicts: readonly Verdict[];
  readonly targetPpm: number | null;
  readonly readabilityG: number | null;
  readonly head: CardHead;
  readonly cards: readonly {
    readonly id: string;
    readonly bag: BagValues;
    readonly stops: readonly string[];
  }[];
}

learnWords(dryCureWords);

/** Everything the dry-cure page shows of a batch. */
export function computeDryCure(batch: Batch): DryCureComputed {
  const slice: DryCureSlice = batch.dryCure ?? newDryCureSlice();
  const { values, findings, verdicts } = dryCureStage({ cure: batch.cure, dryCure: slice });
  const cards = slice.pieces.map((piece, index) => {
    const own = `dryCure.pieces.${piece.id}`;
    const mine = verdicts.filter(({ subjectId }) => subjectId === piece.id);
    // A stop of the recipe holds for every bag; one about another piece stands on that piece's card.
    const stops = findings.filter(
      ({ field = '', params }) =>
        field.startsWith(`${own}.`) ||
        (!field.startsWith('dryCure.pieces.') && (params.name === undefined || params.name === piece.name)),
    );
    return {
      id: piece.id,
      bag: bagValues({ batch, slice, piece, of: values.pieces[index], verdicts: mine }),
      stops: stopLines(mine, stops),
    };
  });
  return {
    values,
    findings,
    verdicts,
    targetPpm: entryValue('ppm', slice.nitriteTarget),
    readabilityG: entryValue('mass', batch.cure.scaleReadability),
    head: cardHead(batch, [values.ruleSet], nowIso()),
    cards,
  };
}
