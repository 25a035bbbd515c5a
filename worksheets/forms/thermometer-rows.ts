import type { Batch } from '@larderwright/calc/batch';
import { filled, words } from '../batch-sheet/build/filled.ts';
import { type CardHead, cardHead } from '../parts/card-head.ts';
import { nowIso } from '../state/clock.ts';
import { computeThermometers } from '../thermometer/compute.ts';
import { boilText, mustShowText, offsetText } from '../thermometer/figures.ts';
import { CHECK_STATE } from '../words/forms.ts';
import type { CheckRow } from './kitchen-blocks.ts';

/** What the thermometers of the bench put on the record: their last checks, and where water boils. */
export interface ThermometerRecordComputed {
  readonly head: CardHead;
  readonly stops: readonly string[];
  readonly kitchen: string | null;
  readonly boils: string | null;
  readonly rows: readonly CheckRow[];
}

/** The last checks as rows of the record. */
export function computeRecord(batch: Batch): ThermometerRecordComputed {
  const { slice, values, atLimit, stops } = computeThermometers(batch);
  const boils = values.boil ? boilText(values.boil.tempC) : null;
  return {
    head: cardHead(batch, [], nowIso()),
    stops,
    kitchen: words(batch.product.kitchen),
    boils,
    rows: slice.thermometers.flatMap(({ id, name, ice, boil, checkedOn, checkedBy }) => {
      if ([name, ice.text, boil.text].every((text) => text.trim() === '')) return [];
      const here = atLimit.get(id);
      const state = values.checked.find((checked) => checked.id === id)?.state;
      return [
        [
          words(checkedOn),
          words(name),
          filled('temperature', ice, ice.unit),
          filled('temperature', boil, boil.unit),
          boils,
          offsetText(here?.offsetC ?? null),
          here?.mustShow ? mustShowText(here.mustShow) : null,
          state ? CHECK_STATE[state] : null,
          words(checkedBy),
        ],
      ];
    }),
  };
}
