import type { FormulaLine } from '@larderwright/calc/formula';
import { useContext } from 'preact/hooks';
import * as say from '#words/plan-and-cost/shopping.ts';
import { Links } from '../parts/links.ts';
import { useAt, useShared } from '../state/use-shared.ts';
import { moneyText } from '../words/money.ts';
import { BuyLine } from './buy-line.tsx';
import { $plan } from './computed.ts';
import { PlanNeeded } from './plan-needed.tsx';
import { WriteScaled } from './write-scaled.tsx';

/** The shopping list: every line of the formula as it is bought. */
export function Shopping() {
  const links = useContext(Links);
  const lines = useAt('formula.lines') as readonly FormulaLine[];
  const computed = useShared($plan);
  const ready = computed.state === 'ready' ? computed.value : null;
  if (lines.length === 0)
    return (
      <p class="say">
        {say.theListIsMadeFromThe(<a href={links.worksheets['batch-formula']}>{say.writeTheFormulaFirst}</a>)}
      </p>
    );
  const currency = ready?.plan.currency ?? '';
  return (
    <>
      <div class="ledger-head ledger-buy" aria-hidden="true">
        <span>{say.line}</span>
        <span>{say.price}</span>
        <span>{say.boughtBy}</span>
        <span>{say.yieldAfterTrim}</span>
        <span class="n">{say.toBuy}</span>
        <span class="n">{say.cost}</span>
      </div>
      <ol class="ledger">
        {lines.map((line, place) => (
          <BuyLine
            key={line.id}
            lineId={line.id}
            name={line.name || `line ${place + 1}`}
            currency={currency}
            purchase={ready?.values.purchases.find(({ lineId }) => lineId === line.id) ?? null}
            cost={ready?.printed.lines.get(line.id) ?? null}
            findings={ready?.findings ?? []}
          />
        ))}
      </ol>
      {ready === null ? null : (
        <>
          {ready.values.costs.food === null && ready.values.costs.foodKnown > 0 ? (
            <p class="say">
              {say.pricedFarLeastMuchRestNot(moneyText(ready.values.costs.foodKnown, currency))}
            </p>
          ) : null}
          <PlanNeeded of={ready} figures={['plan.purchases']} />
          <WriteScaled mixG={ready.values.flow?.mixG ?? null} factor={ready.values.factor} />
        </>
      )}
    </>
  );
}
