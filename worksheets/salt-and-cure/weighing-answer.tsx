import { type CureWeighing, MIN_SCALE_STEPS } from '@larderwright/calc/cure';
import * as say from '#words/salt-and-cure/weighing-answer.ts';
import { gramsText, percentText } from '../parts/number-text.ts';

/** How exactly the scale can show the amount. */
export function WeighingAnswer({ weighing }: { weighing: CureWeighing }) {
  const { massG, isWeighed, errorFraction, isWeighable } = weighing;
  if (massG === null || errorFraction === null || isWeighable === null) return null;
  return (
    <p class="say">
      {say.itsLastDigitIsWorth(
        gramsText(massG),
        isWeighed ? say.onTheScale : say.inTheFormula,
        percentText(errorFraction),
        isWeighable ? '' : say.underStepsScaleTooCoarseUse(MIN_SCALE_STEPS),
      )}
    </p>
  );
}
