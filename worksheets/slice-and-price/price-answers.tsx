import type { Price } from '@larderwright/calc/plan';
import { useContext } from 'preact/hooks';
import * as say from '#words/slice-and-price/price-answers.ts';
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
            value={exTax === null ? null : say.beforeTax(money(exTax))}
            missing={say.cannotTellCostSharePortions}
            worked={<p>{say.commonPracticeNoSourceDerived(slicingWorkings.price, more)}</p>}
          >
            <p>{incTax === null ? say.withTaxNotKnown : say.withTax(money(incTax))}</p>
          </Answer>
        );
        return (
          <>
            {base === null ? (
              <p class="say">
                {say.costBatchNotCompleteWorkedOut(
                  <a href={links.worksheets['plan-and-cost']}>{say.thePlan}</a>,
                )}
              </p>
            ) : null}
            <div class="answers">
              <Answer
                label={say.foodAPortionSold}
                value={values.foodPerPortion === null ? null : money(values.foodPerPortion)}
                missing={say.cannotTellFoodCostPortions}
                worked={<p>{say.foodCostBatchDividedPortions}</p>}
              />
              {price(say.aPortion, values.pricePerPortion)}
              {slice.cutBy === 'thickness' ? price(say.aSlice, values.pricePerSlice) : null}
              {price(say.aKilogram, values.pricePerKg)}
              {price(say.aPound, values.pricePerLb, slicingWorkings.perPound)}
            </div>
          </>
        );
      }}
    </Computed>
  );
}
