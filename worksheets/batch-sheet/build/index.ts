import type { Assessment, Batch } from '@larderwright/calc/batch';
import type { MeatKind } from '@larderwright/calc/lethality';
import { readEntry } from '@larderwright/calc/quantities';
import * as say from '#words/batch-sheet/build/index.ts';
import { wallOf } from '../../parts/clock-text.ts';
import { stopLines } from '../../parts/stop-lines.ts';
import { TEMPERATURE_LIMITS } from '../blank-model.ts';
import type { DeviationLine, SheetModel, YieldBlock } from '../sheet-model.ts';
import { buildCook } from './cook.ts';
import { buildCool } from './cool.ts';
import { buildCurve } from './curve.ts';
import { filled, percent, words, worked } from './filled.ts';
import { buildFoot, buildHeader, buildWarnings } from './head-and-foot.ts';
import { buildMaterials } from './materials.ts';
import { buildCure, buildFill, buildPreStart, buildSalt } from './weigh-blocks.ts';

const DECISION_WORD = {
  '': say.noDecisionYet,
  release: say.release,
  reheat: say.reheat,
  discard: say.discard,
  hold: say.hold,
};

function deviations(batch: Batch): DeviationLine[] {
  return batch.deviations.map(({ id, at, what, decision, cause, prevention, by }) => {
    const when = wallOf(at);
    const parts = [
      what,
      say.decision(DECISION_WORD[decision].toUpperCase()),
      cause && say.cause(cause),
      prevention && say.prevention(prevention),
      [by, when ? `${when.date} ${when.clock}` : ''].filter(Boolean).join(', '),
    ];
    return { id, text: parts.filter(Boolean).join(' · ') };
  });
}

function yields(batch: Batch, { mould }: Assessment): YieldBlock {
  const finished = readEntry('mass', batch.product.finished);
  const raw = mould.values.actualTotalG;
  const all = mould.values.filledTotalG;
  const loss = all !== null && all > 0 && finished.state === 'ok' ? 1 - finished.value / all : null;
  return {
    raw: worked(raw, true)?.text ?? null,
    finished: filled('mass', batch.product.finished, 'g'),
    loss: percent(loss, 1),
  };
}

/**
 * Sets the printed sheet from a batch and what was made of it.
 *
 * @param meats what the formula is made of, for the organisms that fit it
 * @param isPlanChanged the cook plan was changed since its figures were kept
 * @param now ISO 8601 with offset, printed in the foot
 */
export function buildSheet(
  batch: Batch,
  assessment: Assessment,
  now: string,
  meats: readonly MeatKind[] = [],
  isPlanChanged: boolean | null = null,
): SheetModel {
  const signed = (role: 'made' | 'checked' | 'verified') =>
    words(batch.signOffs.find((sign) => sign.role === role)?.name ?? '');
  const printed = wallOf(now);
  return {
    demo: batch.demo,
    header: buildHeader(batch),
    warnings: buildWarnings(batch, assessment),
    preStart: buildPreStart(batch),
    materials: buildMaterials(batch, assessment),
    cure: buildCure(batch, assessment),
    salt: buildSalt(batch, assessment),
    temperatures: TEMPERATURE_LIMITS,
    fill: buildFill(batch, assessment),
    cook: buildCook(batch, assessment, meats, undefined, isPlanChanged),
    cool: buildCool(batch, assessment),
    curve: buildCurve(batch, assessment),
    deviations: deviations(batch),
    yields: yields(batch, assessment),
    label: { useBy: words(batch.product.useBy), trace: words(batch.product.batchNo) },
    signOffs: { made: signed('made'), checked: signed('checked'), verified: signed('verified') },
    stops: stopLines(assessment.verdicts, assessment.findings),
    foot: buildFoot(batch, assessment, printed ? `${printed.date} ${printed.clock}` : null),
  };
}
