import {
  type ByFoodCode,
  type ListeriaByProduct,
  newMeasured,
  newStorageSlice,
} from '@larderwright/calc/growth';
import * as say from '#words/press-and-chill/by-product.ts';
import { Answer } from '../parts/answer.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { edit } from '../state/store.ts';
import {
  BY_PRODUCT_DOUBT_WORDS,
  foodCodeLine,
  growthWorkings,
  BY_PRODUCT_WORDS as WORDS,
  withAndWithoutLag,
} from '../words/growth.ts';

/** Lets pH and water activity in, for the second way of reckoning Listeria. */
export function BeginByProduct() {
  const begin = () =>
    edit((batch) => ({
      ...batch,
      storage: { ...(batch.storage ?? newStorageSlice()), measured: newMeasured() },
    }));
  return (
    <p class="buttons">
      <button type="button" onClick={begin}>
        {WORDS.begin}
      </button>
    </p>
  );
}

/** What the meters said of the product. */
export function ByProductFields() {
  return (
    <div class="fields">
      <NumberField
        path="storage.measured.ph"
        label={WORDS.ph}
        kind="ratio"
        range={{ min: 0, max: 14 }}
        hint={WORDS.phHint}
      />
      <NumberField
        path="storage.measured.waterActivity"
        label={WORDS.waterActivity}
        kind="ratio"
        range={{ min: 0, max: 1 }}
        hint={WORDS.waterActivityHint}
      />
    </div>
  );
}

interface ByProductAnswerProps {
  grown: ListeriaByProduct;
  foodCode: readonly [ByFoodCode, ByFoodCode] | null;
}

/** Growth of Listeria by pH and water activity, with and without lag. */
export function ByProductAnswer({ grown, foodCode }: ByProductAnswerProps) {
  const { doubt, withoutLag, withLag } = grown;
  return (
    <Answer
      label={WORDS.answer}
      value={withoutLag === null || withLag === null ? null : withAndWithoutLag(withoutLag, withLag)}
      missing={say.cannotTell(BY_PRODUCT_DOUBT_WORDS[doubt ?? 'no-stay'])}
      worked={<p>{growthWorkings.byProduct}</p>}
    >
      <p>{WORDS.careful}</p>
      {foodCode === null ? null : <p>{foodCodeLine(...foodCode)}</p>}
    </Answer>
  );
}
