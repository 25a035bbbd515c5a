import { CASINGS } from '@larderwright/calc/casings';
import type { Finding } from '@larderwright/calc/findings';
import { type QuantityKind, type Range, rangeIn, type Unit } from '@larderwright/calc/quantities';
import { ChoiceField } from '../parts/choice-field.tsx';
import { at } from '../parts/finding-list.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { editAt } from '../state/store.ts';
import { useAt } from '../state/use-shared.ts';
import { LINK_BY_NAMES } from '../words/casings-names.ts';
import { choicesOf } from '../words/whole-muscle-names.ts';

interface FieldsProps {
  findings: readonly Finding[];
}

interface OneProps extends FieldsProps {
  of: string;
  label: string;
  kind: QuantityKind;
  units?: readonly Unit[];
  range?: Range;
  hint?: string;
}

const MASSES: readonly Unit[] = ['kg', 'g', 'lb'];
const LENGTHS: readonly Unit[] = ['mm', 'cm', 'in'];

/** One number of the casings. */
function One({ of, findings, ...box }: OneProps) {
  return <NumberField path={`casings.${of}`} {...box} findings={at(findings, `casings.${of}`)} />;
}

/** The casing, how wide it stuffs, and how much goes in. */
export function CasingFields({ findings }: FieldsProps) {
  const casingId = useAt('casings.casingId');
  return (
    <div class="fields">
      <ChoiceField
        label="Casing"
        value={typeof casingId === 'string' ? casingId : ''}
        empty="One of the kitchen’s own"
        choices={CASINGS.map(({ id, name }) => ({ value: id, label: name }))}
        onChoose={(value) => editAt('casings.casingId', value === '' ? null : value)}
        findings={at(findings, 'casings.casingId')}
      />
      <One
        of="batch"
        label="To fill"
        kind="mass"
        units={MASSES}
        hint="Blank: everything in the formula."
        findings={findings}
      />
      <One
        of="stuffedDiameter"
        label="Width once stuffed"
        kind="length"
        units={LENGTHS}
        range={rangeIn('mm', 5, 200)}
        hint="Measure one that is filled. Blank: usual for the casing."
        findings={findings}
      />
      <One
        of="density"
        label="Density of the filling"
        kind="density"
        hint="Lean mixes near 1.05, fat ones near 1.0."
        findings={findings}
      />
      <One
        of="fullness"
        label="How full"
        kind="fraction"
        hint="Of a firm fill. Links to be twisted take less than logs."
        findings={findings}
      />
      <One of="spare" label="Spare casing" kind="fraction" hint="Breaks, tails, ties." findings={findings} />
      <One
        of="strandLength"
        label="One strand"
        kind="length"
        units={['m', 'cm']}
        range={rangeIn('m', 0, 200)}
        hint="Blank: strands are not counted."
        findings={findings}
      />
      <One
        of="hankLength"
        label="One bundle"
        kind="length"
        units={['m']}
        range={rangeIn('m', 0, 1000)}
        hint="By the supplier. Blank: bundles are not counted."
        findings={findings}
      />
    </div>
  );
}

/** The link, told by weight or by length. */
export function LinkFields({ findings }: FieldsProps) {
  const linkBy = useAt('casings.linkBy');
  return (
    <div class="fields">
      <ChoiceField
        label="A link is told"
        value={String(linkBy ?? '')}
        choices={choicesOf(LINK_BY_NAMES)}
        onChoose={(value) => editAt('casings.linkBy', value)}
      />
      {linkBy === 'length' ? (
        <One
          of="linkLength"
          label="Length of a link"
          kind="length"
          units={LENGTHS}
          range={rangeIn('mm', 0, 2000)}
          findings={findings}
        />
      ) : (
        <One of="linkMass" label="Weight of a link" kind="mass" units={['g', 'oz']} findings={findings} />
      )}
    </div>
  );
}
