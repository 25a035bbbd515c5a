import type { PricingMethod } from '@larderwright/calc/plan';
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
                label="Food, the batch"
                value={money(food)}
                missing="Cannot tell: a price, a yield or the mix is missing"
                worked={
                  <p>
                    {planWorkings.foodCost} {planWorkings.rounding} Derived.
                  </p>
                }
              />
              <Answer
                label="Labour"
                value={money(costs.labour)}
                missing="Not known"
                worked={<p>Hands-on hours times the rate. Derived.</p>}
              />
              <Answer
                label="Food, labour and overhead"
                value={money(full)}
                missing="Cannot tell: food, labour or overhead is missing"
                worked={<p>{planWorkings.fullCost} Derived.</p>}
              />
              <Answer
                label="Food, a finished kilogram"
                value={money(costs.foodPerKgFinished)}
                worked={<p>Food divided by the finished kilograms. Derived.</p>}
              />
              <Answer
                label="Food, a portion"
                value={money(costs.foodPerPortion)}
                worked={<p>Food divided by the whole portions: ends and crumbs were paid for. Derived.</p>}
              />
              <Answer
                label="All costs, a portion"
                value={money(costs.fullPerPortion)}
                worked={<p>Food, labour and overhead divided by the whole portions. Derived.</p>}
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
                label="A portion, before tax"
                value={money(exTax)}
                missing="Cannot tell: the cost of a portion or the share is missing"
                worked={
                  <p>
                    {PRICE_WORKINGS[pricing.method]} Common practice, no source; derived.
                    {base === null || pricing.shareFraction === null
                      ? null
                      : ` Here ${moneyText(base, pricing.currency)} and ${percentText(pricing.shareFraction, 1)}.`}{' '}
                    Not cost plus that share of the cost, which leaves less.
                  </p>
                }
              />
              <Answer
                label="A portion, with tax"
                value={money(incTax)}
                missing="Cannot tell: the price or the tax is missing"
                worked={<p>{planWorkings.tax} Which tax a sale bears is for your own authority to say.</p>}
              />
            </div>
          </>
        );
      }}
    </Computed>
  );
}
