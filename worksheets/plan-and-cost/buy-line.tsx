import type { Finding } from '@larderwright/calc/findings';
import type { PlanLine, PriceBasis, Purchase } from '@larderwright/calc/plan';
import * as say from '#words/plan-and-cost/buy-line.ts';
import { ChoiceField } from '../parts/choice-field.tsx';
import { at } from '../parts/finding-list.tsx';
import { NumberBox } from '../parts/number-box.tsx';
import { gramsText } from '../parts/number-text.ts';
import { $batch, edit } from '../state/store.ts';
import { useAt } from '../state/use-shared.ts';
import { moneyText } from '../words/money.ts';
import { planLineOf, withPlanLine } from './plan-edits.ts';

const BASES: readonly { value: PriceBasis; label: string }[] = [
  { value: 'kg', label: say.theKg },
  { value: 'lb', label: say.theLb },
  { value: 'each', label: say.thePiece },
  { value: 'sundries', label: say.smallThings },
];

interface BuyLineProps {
  lineId: string;
  name: string;
  currency: string;
  purchase: Purchase | null;
  /** As printed. */
  cost: number | null;
  findings: readonly Finding[];
}

/** One line of the shopping list: how it is bought, how much, what that costs. */
export function BuyLine({ lineId, name, currency, purchase, cost, findings }: BuyLineProps) {
  // Redrawn with the plan's lines.
  useAt('plan.lines');
  const { plan } = $batch.get();
  if (!plan) return null;
  const line = planLineOf(plan, lineId);
  const path = `plan.lines.${lineId}`;
  const change = (part: Partial<PlanLine>) => edit((batch) => withPlanLine(batch, lineId, part));
  const priced = line.priceBasis !== 'sundries';
  return (
    <li class="ledger-row ledger-buy" aria-label={name}>
      <p class="ledger-name">
        <strong>{name}</strong>
        {purchase?.massG == null ? null : <small>{say.intoTheBowl(gramsText(purchase.massG))}</small>}
      </p>
      {priced ? (
        <NumberBox
          label={say.price}
          kind="money"
          entry={line.price}
          onEntry={(price) => change({ price })}
          unitSlot={<span class="field-unit">{currency}</span>}
          findings={at(findings, `${path}.price`)}
          compact
        />
      ) : (
        <p class="ledger-none">{say.withTheSmallThings}</p>
      )}
      <ChoiceField
        label={say.boughtBy}
        value={line.priceBasis}
        choices={BASES}
        onChoose={(basis) => change({ priceBasis: basis as PriceBasis })}
        compact
      />
      <NumberBox
        label={say.yieldAfterTrim}
        kind="fraction"
        entry={line.trimYield}
        onEntry={(trimYield) => change({ trimYield })}
        findings={at(findings, `${path}.trimYield`)}
        compact
      />
      <dl class="ledger-figures">
        <div>
          <dt>{say.toBuy}</dt>
          <dd>{buyText(purchase)}</dd>
        </div>
        <div>
          <dt>{say.cost}</dt>
          <dd>{cost === null || !priced ? '–' : moneyText(cost, currency)}</dd>
        </div>
      </dl>
      {line.priceBasis === 'each' ? (
        <div class="ledger-more">
          <NumberBox
            label={say.weightOfOne(name)}
            kind="mass"
            entry={line.eachMass}
            onEntry={(eachMass) => change({ eachMass })}
            hint={say.boughtEggShellWeighsMoreEgg}
            findings={at(findings, `${path}.eachMass`)}
          />
        </div>
      ) : null}
    </li>
  );
}

function buyText(purchase: Purchase | null): string {
  if (purchase?.purchaseG == null) return '–';
  const mass = gramsText(purchase.purchaseG);
  return purchase.pieces === null ? mass : `${purchase.pieces.whole} (${mass})`;
}
