import { newChillLot } from '@larderwright/calc/chill-budget';
import * as say from '#words/chill-budget/from-formula.ts';
import { newId } from '../state/clock.ts';
import { $batch, editAt } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { $chillBudget } from './computed.ts';
import { withFormulaMasses } from './formula-masses.ts';

/** Takes the weights over from the formula. */
export function FromFormula() {
  const computed = useShared($chillBudget);
  if (computed.state !== 'ready' || Object.keys(computed.value.formula).length === 0) return null;
  const { formula } = computed.value;
  const take = () => {
    const { chillBudget } = $batch.get();
    if (!chillBudget) return;
    editAt(
      'chillBudget.lots',
      withFormulaMasses(chillBudget.lots, formula, (kind) => newChillLot(newId(), kind)),
    );
  };
  return (
    <p class="buttons">
      <button type="button" onClick={take}>
        {say.takeTheWeightsOfTheFormula}
      </button>
      <small class="field-hint">{say.leanLiverOffalFatLiquidEgg}</small>
    </p>
  );
}
