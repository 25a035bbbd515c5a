import type { Price } from '@larderwright/calc/plan';
import { useContext } from 'preact/hooks';
import { Answer } from '../parts/answer.tsx';
import { Computed } from '../parts/computed.tsx';
import { Links } from '../parts/links.ts';
import { useShared } from '../state/use-shared.ts';
import { moneyText } from '../words/money.ts';
import { slicingWorkings } from '../words/slicing.ts';
import { $slicing } from './computed.ts';

/** What to ask for a portion, a slice, a kilogram and a pound. */
export function PriceAnswers() {
  const links = useContext(Links);
  return (
    <Computed of={useShared($slicing)}>
      {({ values, costs, pricing, slice }) => {
        const money = (amount: number) => moneyText(amount, pricing.currency);
        const base = pricing.method === 'margin' ? costs.full : costs.food;
        const price = (label: string, { exTax, incTax }: Price, more = '') => (
          <Answer
            label={label}
            value={exTax === null ? null : `${money(exTax)} before tax`}
            missing="Cannot tell: the cost, the share or the portions are missing"
            worked={
              <p>
                {slicingWorkings.price} {more} Common practice, no source; derived. Shown to the smallest
                coin, reckoned unrounded.
              </p>
            }
          >
            <p>{incTax === null ? 'With tax: not known.' : `With tax: ${money(incTax)}.`}</p>
          </Answer>
        );
        return (
          <>
            {base === null ? (
              <p class="say">
                The cost of the batch is not complete. It is worked out in{' '}
                <a href={links.worksheets['plan-and-cost']}>the plan</a>, from the price of every line.
              </p>
            ) : null}
            <div class="answers">
              <Answer
                label="Food, a portion sold"
                value={values.foodPerPortion === null ? null : money(values.foodPerPortion)}
                missing="Cannot tell: the food cost or the portions are missing"
                worked={<p>Food cost of the batch divided by the portions that are sold. Derived.</p>}
              />
              {price('A portion', values.pricePerPortion)}
              {slice.cutBy === 'thickness' ? price('A slice', values.pricePerSlice) : null}
              {price('A kilogram', values.pricePerKg)}
              {price('A pound', values.pricePerLb, slicingWorkings.perPound)}
            </div>
          </>
        );
      }}
    </Computed>
  );
}
