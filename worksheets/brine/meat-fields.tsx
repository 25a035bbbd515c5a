import type { BrineMethod } from '@larderwright/calc/brine';
import type { Finding } from '@larderwright/calc/findings';
import { rangeIn, type Unit } from '@larderwright/calc/quantities';
import * as say from '#words/brine/meat-fields.ts';
import { ChoiceField } from '../parts/choice-field.tsx';
import { at } from '../parts/finding-list.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { editAt } from '../state/store.ts';
import { useAt } from '../state/use-shared.ts';
import { BRINE_METHODS, FEDERAL_METHODS } from '../words/brine-names.ts';
import { choicesOf } from '../words/whole-muscle-names.ts';

export const MASSES: readonly Unit[] = ['g', 'kg', 'lb', 'oz'];
/** No whole muscle is thicker than half a metre. */
const THICKNESS = rangeIn('mm', 0, 500);

/** Which meat, and how the brine gets in. */
export function MeatFields({ findings }: { findings: readonly Finding[] }) {
  const method = useAt('brine.method') as BrineMethod | null;
  const counting = useAt('brine.federalMethod');
  const mass = (key: string, label: string, hint?: string) => (
    <NumberField
      path={`brine.${key}`}
      label={label}
      kind="mass"
      units={MASSES}
      hint={hint}
      findings={at(findings, `brine.${key}`)}
    />
  );
  return (
    <div class="fields">
      <ChoiceField
        label={say.wayOfTheBrine}
        value={method ?? ''}
        empty={say.notChosenNothingIsWorkedOut}
        choices={choicesOf(BRINE_METHODS)}
        onChoose={(value) => editAt('brine.method', value === '' ? null : value)}
        findings={at(findings, 'brine.method')}
      />
      {method === 'inject' ? null : (
        <ChoiceField
          label={say.countingOfTheNitrite}
          value={typeof counting === 'string' ? counting : ''}
          empty={say.notChosenBetweenLesserAll}
          choices={choicesOf(FEDERAL_METHODS)}
          onChoose={(value) => editAt('brine.federalMethod', value === '' ? null : value)}
          hint={say.twoUnitedStatesPlanNamesOne}
          findings={at(findings, 'brine.federalMethod')}
        />
      )}
      {mass('skinOff', say.allTheMeatWithoutSkin)}
      {mass('skinOn', say.allTheMeatWithItsSkin, say.onlyWhereSkinStaysTenthTaken)}
      {mass('heaviest', say.heaviestPiece, say.rulesCountHamsDaysWeight)}
      <NumberField
        path="brine.thickness"
        label={say.thickestPlace}
        kind="length"
        units={['mm', 'cm', 'in']}
        range={THICKNESS}
        findings={at(findings, 'brine.thickness')}
      />
      <NumberField
        path="brine.meatWater"
        label={say.waterInTheMeat}
        kind="fraction"
        hint={say.leanMuscleHoldsAbout72Common}
        findings={at(findings, 'brine.meatWater')}
      />
    </div>
  );
}
