import type { Finding } from '@larderwright/calc/findings';
import { PASTES } from '@larderwright/calc/mould';
import { type QuantityKind, type Range, rangeIn, type Unit } from '@larderwright/calc/quantities';
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
      <One of="thickness" label="Thickness of base and walls" {...length} />
      <One of="lidThickness" label="Thickness of the lid" {...length} />
      <One of="overlap" label="Overlap at the rim" {...length} />
      <One of="density" label="Density of the pastry" kind="density" findings={findings} />
      <One
        of="spare"
        label="Spare pastry"
        kind="fraction"
        hint="Decoration, repair, trimmings."
        findings={findings}
      />
      <ChoiceField
        label="Paste"
        value={typeof pasteId === 'string' ? pasteId : ''}
        empty="The kitchen’s own"
        choices={PASTES.map(({ id, name }) => ({ value: id, label: name }))}
        onChoose={(value) => editAt('crust.pasteId', value === '' ? null : value)}
        findings={at(findings, 'crust.pasteId')}
      />
      {pasteId === null ? (
        <One
          of="salt"
          label="Salt of your own paste"
          kind="fraction"
          range={{ min: 0, max: 0.2 }}
          hint="Of all the pastry."
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
      <One of="pieceWidth" label="Width of a slice" hint="Blank: no slices." {...length} />
      <One
        of="pieceOverlap"
        label="Overlap of slices"
        hint="Bacon 5 to 8 mm, back fat 10 to 15 mm: common practice, no source."
        {...length}
      />
      <One
        of="pieceMass"
        label="One slice weighs"
        kind="mass"
        units={['g', 'oz']}
        hint="Weigh ten and divide."
        findings={findings}
      />
      <One
        of="pieceSalt"
        label="Salt of the slices"
        kind="fraction"
        range={{ min: 0, max: 0.3 }}
        hint="Off the pack. Blank: unknown."
        findings={findings}
      />
    </div>
  );
}
