import type { Makeup } from '@larderwright/calc/blend';
import { fixedText } from '@larderwright/calc/quantities';
import * as say from '#words/lean-and-fat/makeup-answers.ts';
import { Answer } from '../parts/answer.tsx';
import { percentText } from '../parts/number-text.ts';
import { blendWorkings } from '../words/blend.ts';

/** What a blend is made of. */
export function MakeupAnswers({ makeup }: { makeup: Makeup | null }) {
  const share = (label: string, fraction: number | null | undefined) => (
    <Answer
      label={label}
      value={fraction == null ? null : percentText(fraction)}
      missing={say.cannotTellNotKnownEvery}
      worked={<p>{say.derivedMassBalance(blendWorkings.makeup)}</p>}
    />
  );
  const ratio = (label: string, value: number | null | undefined) => (
    <Answer
      label={label}
      value={value == null ? null : `${fixedText(value, 2)} : 1`}
      missing={say.cannotTellNotKnownEvery}
      worked={<p>{say.oneShareDividedOtherDerived}</p>}
    />
  );
  return (
    <>
      {share(say.fat, makeup?.fat)}
      {share(say.protein, makeup?.protein)}
      {share(say.water, makeup?.water)}
      {ratio(say.waterToProtein, makeup?.waterToProtein)}
      {ratio(say.fatToProtein, makeup?.fatToProtein)}
    </>
  );
}
