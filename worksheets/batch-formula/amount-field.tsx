import type { Finding } from '@larderwright/calc/findings';
import type { FormulaLine } from '@larderwright/calc/formula';
import * as say from '#words/batch-formula/amount-field.ts';
import { NumberField } from '../parts/number-field.tsx';
import { $life, editAt } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { type AmountIn, amountIn, withAmountIn } from './line-edits.ts';

const AMOUNTS: readonly { value: AmountIn; label: string }[] = [
  { value: 'g', label: 'g' },
  { value: 'kg', label: 'kg' },
  { value: 'oz', label: 'oz' },
  { value: 'lb', label: 'lb' },
  { value: 'percent-of-meat', label: say.meat },
  { value: 'percent-of-total', label: say.all },
];

/** How much of the line goes in: a weight, or a share of the meat block or of everything in the bowl. */
export function AmountField({ line, findings }: { line: FormulaLine; findings: readonly Finding[] }) {
  const waking = useShared($life) === 'waking';
  const path = `formula.lines.${line.id}`;
  const shared = { path: `${path}.amount`, label: say.amount, findings, compact: true } as const;
  if (line.part === 'curing-salt') return <NumberField {...shared} kind="mass" gramsOnly />;
  const unit = (
    <select
      class="field-unit"
      aria-label={say.amountCountedIn}
      value={amountIn(line)}
      disabled={waking}
      onChange={(event) => editAt(path, withAmountIn(line, event.currentTarget.value as AmountIn))}
    >
      {AMOUNTS.map(({ value, label }) => (
        <option key={value} value={value}>
          {label}
        </option>
      ))}
    </select>
  );
  return <NumberField {...shared} kind={line.basis === 'mass' ? 'mass' : 'fraction'} unitSlot={unit} />;
}
