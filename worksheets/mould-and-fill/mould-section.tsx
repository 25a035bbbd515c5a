import type { Finding } from '@larderwright/calc/findings';
import {
  dimensionsOf,
  type MouldDimension,
  type MouldFill,
  type MouldItem,
  takesRoom,
} from '@larderwright/calc/mould';
import { entryValue, rangeIn } from '@larderwright/calc/quantities';
import * as say from '#words/mould-and-fill/mould-section.ts';
import { ChoiceField } from '../parts/choice-field.tsx';
import { at } from '../parts/finding-list.tsx';
import { NotYet } from '../parts/not-yet.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { RowTools } from '../parts/row-tools.tsx';
import { TextField } from '../parts/text-field.tsx';
import { editAt } from '../state/store.ts';
import { LINING_NAMES, SHAPE_NAMES } from '../words/mould-names.ts';
import { ActualFills } from './actual-fills.tsx';
import { FillAnswers } from './fill-answers.tsx';
import { MeasureFields } from './measure-fields.tsx';
import { MouldDrawing } from './mould-drawing.tsx';

const choicesOf = (names: Readonly<Record<string, string>>) =>
  Object.entries(names).map(([value, label]) => ({ value, label }));
const SHAPES = choicesOf(SHAPE_NAMES);
const LININGS = choicesOf(LINING_NAMES);

interface MouldSectionProps {
  mould: MouldItem;
  place: number;
  last: boolean;
  fill: MouldFill | null;
  findings: readonly Finding[];
}

/** The inside measures as far as they can be read, mm. */
function knownMeasures(mould: MouldItem): Partial<Record<MouldDimension, number>> {
  const { needed, oneOf } = dimensionsOf(mould.shape);
  const known: Partial<Record<MouldDimension, number>> = {};
  for (const dimension of [...needed, ...oneOf]) {
    const mm = entryValue('length', mould.dimensions[dimension]);
    if (mm !== null && mm > 0) known[dimension] = mm;
  }
  return known;
}

/** One mould: what it is, what it takes, what was filled. */
export function MouldSection({ mould, place, last, fill, findings }: MouldSectionProps) {
  const path = `mould.moulds.${mould.id}`;
  const name = mould.name || say.mould(place + 1);
  const liningMm = takesRoom(mould.liningKind) ? (entryValue('length', mould.liningThickness) ?? 0) : 0;
  return (
    <section class="mould" aria-label={name}>
      <div class="mould-head">
        <h3>{name}</h3>
        <RowTools list="mould.moulds" id={mould.id} label={name} first={place === 0} last={last} />
      </div>
      <div class="mould-body">
        <div>
          <div class="fields">
            <TextField path={`${path}.name`} label={say.name} />
            <ChoiceField
              label={say.shape}
              value={mould.shape}
              choices={SHAPES}
              onChoose={(shape) => editAt(`${path}.shape`, shape)}
            />
            <MeasureFields mould={mould} findings={findings} />
            <NumberField
              path={`${path}.waterFill`}
              label={say.filledWithWaterToTheRim}
              kind="volume"
              units={['mL', 'L']}
              hint={say.gramsWaterMillilitresOutranks}
              findings={at(findings, `${path}.waterFill`)}
            />
            <NumberField
              path={`${path}.headspace`}
              label={say.headspace}
              kind="length"
              units={['mm']}
              range={rangeIn('mm', 0, 200)}
              hint={say.fromTheRimDownToThe}
              findings={at(findings, `${path}.headspace`)}
            />
            <ChoiceField
              label={say.lining}
              value={mould.liningKind}
              choices={LININGS}
              onChoose={(kind) => editAt(`${path}.liningKind`, kind)}
              findings={at(findings, `${path}.liningKind`)}
            />
            {takesRoom(mould.liningKind) ? (
              <NumberField
                path={`${path}.liningThickness`}
                label={say.thicknessOfTheLining}
                kind="length"
                units={['mm']}
                range={rangeIn('mm', 0, 50)}
                findings={at(findings, `${path}.liningThickness`)}
              />
            ) : null}
            <NumberField
              path={`${path}.count`}
              label={say.howManyOfThisMould}
              kind="count"
              findings={at(findings, `${path}.count`)}
            />
          </div>
        </div>
        <MouldDrawing
          shape={mould.shape}
          measures={knownMeasures(mould)}
          fillDepthMm={fill?.fillDepthMm ?? null}
          liningMm={liningMm}
        />
      </div>
      {fill ? <FillAnswers fill={fill} name={name} /> : <NotYet />}
      <ActualFills mould={mould} findings={findings} />
    </section>
  );
}
