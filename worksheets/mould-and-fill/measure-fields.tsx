import type { Finding } from '@larderwright/calc/findings';
import { dimensionsOf, type MouldDimension, type MouldItem } from '@larderwright/calc/mould';
import { rangeIn, type Unit } from '@larderwright/calc/quantities';
import * as say from '#words/mould-and-fill/measure-fields.ts';
import { at } from '../parts/finding-list.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { DIMENSION_NAMES } from '../words/mould-names.ts';

const LENGTHS: readonly Unit[] = ['mm', 'cm', 'in'];
/** No mould of a kitchen is longer than two metres. */
const MOULD_RANGE = rangeIn('mm', 0, 2000);

/** What a measure means for a shape, where its bare name could mislead. */
function hintOf(shape: MouldItem['shape'], dimension: MouldDimension): string | undefined {
  switch (shape) {
    case 'cylinder':
      if (dimension === 'depth') return say.ifStandsLeaveBlankRollLies;
      if (dimension === 'length') return say.ifRollLiesLeaveBlankIf;
      return undefined;
    case 'tapered':
      if (dimension === 'length' || dimension === 'width') return say.atTheRim;
      return undefined;
    case 'roof':
      if (dimension === 'width') return say.acrossTheOpenSide;
      if (dimension === 'depth') return say.fromTheOpenSideDownTo;
      return undefined;
    case 'half-cylinder':
      return dimension === 'diameter' ? say.acrossTheOpenSide : undefined;
    case 'rectangular':
    case 'oval':
      return undefined;
  }
}

/** The inside measures a shape needs. */
export function MeasureFields({ mould, findings }: { mould: MouldItem; findings: readonly Finding[] }) {
  const { needed, oneOf } = dimensionsOf(mould.shape);
  return (
    <>
      {[...needed, ...oneOf].map((dimension) => {
        const path = `mould.moulds.${mould.id}.dimensions.${dimension}`;
        return (
          <NumberField
            key={dimension}
            path={path}
            label={say.inside(DIMENSION_NAMES[dimension])}
            kind="length"
            units={LENGTHS}
            range={MOULD_RANGE}
            hint={hintOf(mould.shape, dimension)}
            findings={at(findings, path)}
          />
        );
      })}
    </>
  );
}
