import type { Finding } from '@larderwright/calc/findings';
import { PASTES } from '@larderwright/calc/mould';
import { type QuantityKind, type Range, rangeIn, type Unit } from '@larderwright/calc/quantities';
import * as say from '#words/crust/crust-fields.ts';
import { ChoiceField } from '../parts/choice-field.tsx';
import { at } from '../parts/finding-list.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { editAt } from '../state/store.ts';
import { useAt } from '../state/use-shared.ts';

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

const LENGTHS: readonly Unit[] = ['mm', 'cm', 'in'];
const THIN = rangeIn('mm', 0, 200);

/** One number of the crust. */
function One({ of, findings, ...box }: OneProps) {
  return <NumberField path={`crust.${of}`} {...box} findings={at(findings, `crust.${of}`)} />;
}

/** Sheets and paste. */
export function PastryFields({ findings }: FieldsProps) {
  const pasteId = useAt('crust.pasteId');
  const length = { kind: 'length', units: LENGTHS, range: THIN, findings } as const;
  return (
    <div class="fields">
      <One of="thickness" label={say.thicknessOfBaseAndWalls} {...length} />
      <One of="lidThickness" label={say.thicknessOfTheLid} {...length} />
      <One of="overlap" label={say.overlapAtTheRim} {...length} />
      <One of="density" label={say.densityOfThePastry} kind="density" findings={findings} />
      <One
        of="spare"
        label={say.sparePastry}
        kind="fraction"
        hint={say.decorationRepairTrimmings}
        findings={findings}
      />
      <ChoiceField
        label={say.paste}
        value={typeof pasteId === 'string' ? pasteId : ''}
        empty={say.theKitchensOwn}
        choices={PASTES.map(({ id, name }) => ({ value: id, label: name }))}
        onChoose={(value) => editAt('crust.pasteId', value === '' ? null : value)}
        findings={at(findings, 'crust.pasteId')}
      />
      {pasteId === null ? (
        <One
          of="salt"
          label={say.saltOfYourOwnPaste}
          kind="fraction"
          range={{ min: 0, max: 0.2 }}
          hint={say.ofAllThePastry}
          findings={findings}
        />
      ) : null}
    </div>
  );
}

/** Slices that line the mould. */
export function LiningFields({ findings }: FieldsProps) {
  const length = { kind: 'length', units: LENGTHS, range: THIN, findings } as const;
  return (
    <div class="fields">
      <One of="pieceWidth" label={say.widthOfASlice} hint={say.blankNoSlices} {...length} />
      <One of="pieceOverlap" label={say.overlapOfSlices} hint={say.bacon58MmBackFat} {...length} />
      <One
        of="pieceMass"
        label={say.oneSliceWeighs}
        kind="mass"
        units={['g', 'oz']}
        hint={say.weighTenAndDivide}
        findings={findings}
      />
      <One
        of="pieceSalt"
        label={say.saltOfTheSlices}
        kind="fraction"
        range={{ min: 0, max: 0.3 }}
        hint={say.offThePackBlankUnknown}
        findings={findings}
      />
    </div>
  );
}
