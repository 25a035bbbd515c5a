import type { Makeup } from '@larderwright/calc/blend';
import { fixedText } from '@larderwright/calc/quantities';
import { Answer } from '../parts/answer.tsx';
import { percentText } from '../parts/number-text.ts';
import { blendWorkings } from '../words/blend.ts';

/** What a blend is made of. */
export function MakeupAnswers({ makeup }: { makeup: Makeup | null }) {
  const share = (label: string, fraction: number | null | undefined) => (
    <Answer
      label={label}
      value={fraction == null ? null : percentText(fraction)}
      missing="Cannot tell: not known of every material"
      worked={<p>{blendWorkings.makeup} Derived: mass balance.</p>}
    />
  );
  const ratio = (label: string, value: number | null | undefined) => (
    <Answer
      label={label}
      value={value == null ? null : `${fixedText(value, 2)} : 1`}
      missing="Cannot tell: not known of every material"
      worked={<p>One share divided by the other. Derived.</p>}
    />
  );
  return (
    <>
      {share('Fat', makeup?.fat)}
      {share('Protein', makeup?.protein)}
      {share('Water', makeup?.water)}
      {ratio('Water to protein', makeup?.waterToProtein)}
      {ratio('Fat to protein', makeup?.fatToProtein)}
    </>
  );
}
