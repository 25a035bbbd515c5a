import { CASINGS } from '@larderwright/calc/casings';
import type { Finding } from '@larderwright/calc/findings';
import { type QuantityKind, type Range, rangeIn, type Unit } from '@larderwright/calc/quantities';
import * as say from '#words/casings/casing-fields.ts';
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
        label={say.casing}
        value={typeof casingId === 'string' ? casingId : ''}
        empty={say.oneOfTheKitchensOwn}
        choices={CASINGS.map(({ id, name }) => ({ value: id, label: name }))}
        onChoose={(value) => editAt('casings.casingId', value === '' ? null : value)}
        findings={at(findings, 'casings.casingId')}
      />
      <One
        of="batch"
        label={say.toFill}
        kind="mass"
        units={MASSES}
        hint={say.blankEverythingInTheFormula}
        findings={findings}
      />
      <One
        of="stuffedDiameter"
        label={say.widthOnceStuffed}
        kind="length"
        units={LENGTHS}
        range={rangeIn('mm', 5, 200)}
        hint={say.measureOneFilledBlankUsual}
        findings={findings}
      />
      <One
        of="density"
        label={say.densityOfTheFilling}
        kind="density"
        hint={say.leanMixesNear105Fat}
        findings={findings}
      />
      <One
        of="fullness"
        label={say.howFull}
        kind="fraction"
        hint={say.firmFillLinksTwistedTakeLess}
        findings={findings}
      />
      <One
        of="spare"
        label={say.spareCasing}
        kind="fraction"
        hint={say.breaksTailsTies}
        findings={findings}
      />
      <One
        of="strandLength"
        label={say.oneStrand}
        kind="length"
        units={['m', 'cm']}
        range={rangeIn('m', 0, 200)}
        hint={say.blankStrandsAreNotCounted}
        findings={findings}
      />
      <One
        of="hankLength"
        label={say.oneBundle}
        kind="length"
        units={['m']}
        range={rangeIn('m', 0, 1000)}
        hint={say.supplierBlankBundlesNotCounted}
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
        label={say.aLinkIsTold}
        value={String(linkBy ?? '')}
        choices={choicesOf(LINK_BY_NAMES)}
        onChoose={(value) => editAt('casings.linkBy', value)}
      />
      {linkBy === 'length' ? (
        <One
          of="linkLength"
          label={say.lengthOfALink}
          kind="length"
          units={LENGTHS}
          range={rangeIn('mm', 0, 2000)}
          findings={findings}
        />
      ) : (
        <One of="linkMass" label={say.weightOfALink} kind="mass" units={['g', 'oz']} findings={findings} />
      )}
    </div>
  );
}
