import { type Batch, offsetLimitC, placedThermometers } from '@larderwright/calc/batch';
import { cookLimit, cookRuleSet } from '@larderwright/calc/lethality';
import {
  daysByThermometer,
  displayMustShow,
  newThermometerSlice,
  offsetAtC,
  thermometerStage,
} from '@larderwright/calc/thermometer';
import type { CardBlock } from '../parts/card-blocks.tsx';
import { type CardHead, cardHead } from '../parts/card-head.ts';
import { stopLines } from '../parts/stop-lines.ts';
import { nowIso } from '../state/clock.ts';
import { learnWords } from '../words/index.ts';
import { limitTemp } from '../words/limit-temp.ts';
import { thermometerWords } from '../words/thermometer.ts';
import { checkBlocks } from './check-blocks.ts';
import type { CheckFigures } from './check-figures.ts';

/** What calc makes of the check, and its card. */
export interface ThermometerComputed extends CheckFigures {
  /** Failed checks in words, for the head of the card. */
  readonly stops: readonly string[];
  readonly head: CardHead;
  readonly blocks: readonly CardBlock[];
}

learnWords(thermometerWords);

/** Checks the thermometers of a batch for the page and the card. */
export function computeThermometers(batch: Batch): ThermometerComputed {
  const slice = placedThermometers(batch) ?? newThermometerSlice();
  const days = daysByThermometer(batch.process.logs);
  const { values, verdicts, findings } = thermometerStage(slice, { today: nowIso(), days });
  const limitC = offsetLimitC(batch);
  const named = cookLimit(cookRuleSet(batch.process.cookRuleSetId), batch.process.cookLimitId);
  const atLimit = new Map(
    values.checked.map((checked) => [
      checked.id,
      {
        offsetC: offsetAtC(checked, limitC),
        mustShow: checked.state === 'pass' ? displayMustShow(checked, limitC) : null,
        logs: batch.process.logs.filter(({ thermometerId }) => thermometerId === checked.id).length,
      },
    ]),
  );
  const limit = named ? limitTemp(named.stated, 'minimum').text : null;
  const computed = {
    slice,
    values,
    verdicts,
    findings,
    limit,
    limitC,
    atLimit,
    stops: stopLines([], findings),
  };
  return {
    ...computed,
    stops: stopLines([], findings),
    head: cardHead(batch, [], nowIso()),
    blocks: checkBlocks(batch, computed),
  };
}
