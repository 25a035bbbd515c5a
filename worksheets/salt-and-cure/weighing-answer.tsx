import { type CureWeighing, MIN_SCALE_STEPS } from '@larderwright/calc/cure';
import { gramsText, percentText } from '../parts/number-text.ts';

/** How exactly the scale can show the amount. */
export function WeighingAnswer({ weighing }: { weighing: CureWeighing }) {
  const { massG, isWeighed, errorFraction, isWeighable } = weighing;
  if (massG === null || errorFraction === null || isWeighable === null) return null;
  return (
    <p class="say">
      {gramsText(massG)} {isWeighed ? 'on the scale' : 'in the formula'}: its last digit is worth ±{' '}
      {percentText(errorFraction)}.{' '}
      {isWeighable
        ? ''
        : `That is under ${MIN_SCALE_STEPS} steps of the scale: too coarse. Use a finer scale or a larger batch.`}
    </p>
  );
}
