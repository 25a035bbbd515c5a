import type { BrineMethod } from '@larderwright/calc/brine';
import type { Finding } from '@larderwright/calc/findings';
import { rangeIn, type Unit } from '@larderwright/calc/quantities';
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
        label="Way of the brine"
        value={method ?? ''}
        empty="Not chosen: nothing is worked out"
        choices={choicesOf(BRINE_METHODS)}
        onChoose={(value) => editAt('brine.method', value === '' ? null : value)}
        findings={at(findings, 'brine.method')}
      />
      {method === 'inject' ? null : (
        <ChoiceField
          label="Counting of the nitrite"
          value={typeof counting === 'string' ? counting : ''}
          empty="Not chosen: between the lesser and all of it"
          choices={choicesOf(FEDERAL_METHODS)}
          onChoose={(value) => editAt('brine.federalMethod', value === '' ? null : value)}
          hint="The two of the United States. Your plan names one. They can differ five-fold."
          findings={at(findings, 'brine.federalMethod')}
        />
      )}
      {mass('skinOff', 'All the meat, without skin')}
      {mass(
        'skinOn',
        'All the meat, with its skin',
        'Only where the skin stays on. A tenth is taken off for it.',
      )}
      {mass('heaviest', 'Heaviest piece', 'For the rules that count a ham’s days by its weight.')}
      <NumberField
        path="brine.thickness"
        label="Thickest place"
        kind="length"
        units={['mm', 'cm', 'in']}
        range={THICKNESS}
        findings={at(findings, 'brine.thickness')}
      />
      <NumberField
        path="brine.meatWater"
        label="Water in the meat"
        kind="fraction"
        hint="Lean muscle holds about 72 %: common practice, no source."
        findings={at(findings, 'brine.meatWater')}
      />
    </div>
  );
}
