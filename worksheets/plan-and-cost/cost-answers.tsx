import type { PricingMethod } from '@larderwright/calc/plan';
import * as say from '#words/plan-and-cost/cost-answers.ts';
import { Answer } from '../parts/answer.tsx';
import { Computed } from '../parts/computed.tsx';
import { percentText } from '../parts/number-text.ts';
import { useShared } from '../state/use-shared.ts';
import { moneyText } from '../words/money.ts';
import { planWorkings } from '../words/plan.ts';
import { $plan } from './computed.ts';
import { PlanNeeded } from './plan-needed.tsx';

/** What the batch costs. Totals are the sums of what is shown. */
export function CostAnswers() {
  return (
    <Computed of={useShared($plan)}>
      {(computed) => {
        const { costs, pricing } = computed.values;
        const { food, full } = computed.printed;
        const money = (amount: number | null) =>
          amount === null ? null : moneyText(amount, pricing.currency);
        return (
          <>
            <PlanNeeded of={computed} figures={['plan.food-cost', 'plan.full-cost']} />
            <div class="answers">
              <Answer
                label={say.foodTheBatch}
                value={money(food)}
                missing={say.cannotTellPriceYieldMixMissing}
                worked={<p>{say.derived(planWorkings.foodCost, planWorkings.rounding)}</p>}
              />
              <Answer
                label={say.labour}
                value={money(costs.labour)}
                missing={say.notKnown}
                worked={<p>{say.handsHoursTimesRateDerived}</p>}
              />
              <Answer
                label={say.foodLabourAndOverhead}
                value={money(full)}
                missing={say.cannotTellFoodLabourOverhead}
                worked={<p>{say.derived2(planWorkings.fullCost)}</p>}
              />
              <Answer
                label={say.foodAFinishedKilogram}
                value={money(costs.foodPerKgFinished)}
                worked={<p>{say.foodDividedFinishedKilograms}</p>}
              />
              <Answer
                label={say.foodAPortion}
                value={money(costs.foodPerPortion)}
                worked={<p>{say.foodDividedWholePortionsEnds}</p>}
              />
              <Answer
                label={say.allCostsAPortion}
                value={money(costs.fullPerPortion)}
                worked={<p>{say.foodLabourOverheadDividedWhole}</p>}
              />
            </div>
          </>
        );
      }}
    </Computed>
  );
}

const PRICE_WORKINGS: Readonly<Record<PricingMethod, string>> = {
  'gross-profit': planWorkings.grossProfit,
  'food-cost': planWorkings.priceAtFoodCost,
  margin: planWorkings.margin,
};

/** What to ask for a portion. */
export function PriceAnswers() {
  return (
    <Computed of={useShared($plan)}>
      {(computed) => {
        const { pricing, pricePerPortion, costs } = computed.values;
        const { exTax, incTax } = pricePerPortion;
        const money = (amount: number | null) =>
          amount === null ? null : moneyText(amount, pricing.currency);
        const base = pricing.method === 'margin' ? costs.fullPerPortion : costs.foodPerPortion;
        return (
          <>
            <PlanNeeded of={computed} figures={['plan.price']} />
            <div class="answers">
              <Answer
                label={say.aPortionBeforeTax}
                value={money(exTax)}
                missing={say.cannotTellCostPortionShare}
                worked={
                  <p>
                    {say.commonPracticeNoSourceDerived(
                      PRICE_WORKINGS[pricing.method],
                      base === null || pricing.shareFraction === null
                        ? null
                        : say.hereAnd(
                            moneyText(base, pricing.currency),
                            percentText(pricing.shareFraction, 1),
                          ),
                    )}
                  </p>
                }
              />
              <Answer
                label={say.aPortionWithTax}
                value={money(incTax)}
                missing={say.cannotTellPriceTaxMissing}
                worked={<p>{say.taxSaleBearsOwnAuthoritySay(planWorkings.tax)}</p>}
              />
            </div>
          </>
        );
      }}
    </Computed>
  );
}
