import { plainText } from '@larderwright/calc/quantities';
import { useContext } from 'preact/hooks';
import { Answer } from '../parts/answer.tsx';
import { Computed } from '../parts/computed.tsx';
import { FigureTable } from '../parts/figure-table.tsx';
import { Links } from '../parts/links.ts';
import { Needed } from '../parts/needed.tsx';
import { gramsText } from '../parts/number-text.ts';
import { useShared } from '../state/use-shared.ts';
import { slicingFigureNames, slicingWorkings } from '../words/slicing.ts';
import type { SlicingComputed } from './compute.ts';
import { $slicing } from './computed.ts';

const FIELD_NAMES: Readonly<Record<string, string>> = {
  'product.finished': 'the finished weight, weighed or planned',
  'mould.moulds': 'how many moulds there are',
  'slicing.packMass': 'the weight of a portion',
  'slicing.endLoss': 'the loss on ends and crumbs',
  'slicing.length': 'the length of a piece',
  'slicing.thickness': 'the thickness of a slice',
  'slicing.endTrim': 'what comes off each end',
  'slicing.kerf': 'what the blade takes',
  'slicing.slicesPerPortion': 'slices to a portion',
};

const FROM = {
  weighed: 'As weighed.',
  planned: 'As planned; weigh the finished pieces when they are there.',
  unknown: '',
} as const;

function habitText({ habit }: SlicingComputed): string {
  if (!habit) return 'No habit of the trade is known for this family.';
  const range = ([low, high]: readonly [number, number], unit: string) =>
    low === high ? `${plainText(low)} ${unit}` : `${plainText(low)} to ${plainText(high)} ${unit}`;
  const said = [
    habit.thicknessMm ? `slices of ${range(habit.thicknessMm, 'mm')}` : null,
    habit.starterG ? `${range(habit.starterG, 'g')} for a starter` : null,
    habit.mainG ? `${range(habit.mainG, 'g')} for a main` : null,
  ].filter((part) => part !== null);
  return `Usual for this family: ${said.join(', ')}. Common practice, no source.`;
}

/** Slices and portions, and where the weight goes. */
export function CutAnswers() {
  const links = useContext(Links);
  return (
    <Computed of={useShared($slicing)}>
      {(computed) => {
        const { values, missing, slice, finishedFrom, mouldCount } = computed;
        const { cut, packed, slices, portions, portionG, soldG, finishedG, perMouldG, lengthMm } = values;
        const byThickness = slice.cutBy === 'thickness';
        const mass = (massG: number | null | undefined) => (massG == null ? null : gramsText(massG));
        const thickness = slice.thickness.text;
        return (
          <>
            <Needed
              missing={missing}
              figures={slicingFigureNames}
              nameOf={(field) => FIELD_NAMES[field] ?? field}
            />
            {mouldCount === null && byThickness ? (
              <p class="say">
                Moulds are counted on <a href={links.worksheets['mould-and-fill']}>their own worksheet</a>.
              </p>
            ) : null}
            <div class="answers">
              <Answer
                label="Finished weight"
                value={mass(finishedG)}
                missing="Cannot tell: not weighed and not planned"
                worked={
                  <p>
                    What the scale showed after chilling, all moulds together; before that, what the plan
                    expects after its losses. Derived.
                  </p>
                }
              >
                {FROM[finishedFrom] === '' ? null : <p>{FROM[finishedFrom]}</p>}
              </Answer>
              {byThickness ? (
                <>
                  <Answer
                    label="Slices, a mould"
                    value={cut === null ? null : `${cut.slices}`}
                    worked={
                      <>
                        <p>
                          {slicingWorkings.slices}
                          {cut && lengthMm !== null
                            ? ` Here (${plainText(lengthMm)} less two ends) by ${thickness} and the blade.`
                            : null}{' '}
                          Common practice, no source.
                        </p>
                        {cut && perMouldG !== null ? (
                          <FigureTable
                            columns={['Of one mould', 'Weight']}
                            rows={[
                              { key: 'slices', head: 'Slices', cells: [gramsText(cut.slicesG)] },
                              { key: 'ends', head: 'Both ends', cells: [gramsText(cut.endsG)] },
                              { key: 'blade', head: 'Blade', cells: [gramsText(cut.kerfG)] },
                              { key: 'rest', head: 'Rest, too thin', cells: [gramsText(cut.restG)] },
                            ]}
                            foot={{ key: 'all', head: 'One mould', cells: [gramsText(perMouldG)] }}
                          />
                        ) : null}
                      </>
                    }
                  />
                  <Answer
                    label="A slice weighs"
                    value={mass(cut?.sliceG)}
                    worked={<p>{slicingWorkings.sliceG} Derived.</p>}
                  />
                  <Answer
                    label="Slices in all"
                    value={slices === null ? null : `${slices}`}
                    worked={<p>Slices of a mould times the moulds. Derived.</p>}
                  />
                </>
              ) : null}
              <Answer
                label="Portions"
                value={portions === null ? null : `${portions}`}
                worked={
                  <p>
                    {byThickness ? slicingWorkings.portions : slicingWorkings.packs} Derived.{' '}
                    {habitText(computed)}
                  </p>
                }
              />
              <Answer
                label="A portion weighs"
                value={mass(portionG)}
                worked={
                  <p>{byThickness ? 'A slice times slices to a portion.' : 'As you wrote it.'} Derived.</p>
                }
              />
              <Answer
                label="Sold in all"
                value={mass(soldG)}
                worked={<p>Portions times their weight. Ends, crumbs and rest are not in it. Derived.</p>}
              >
                {packed && packed.restG > 0 ? <p>{gramsText(packed.restG)} rest.</p> : null}
              </Answer>
            </div>
          </>
        );
      }}
    </Computed>
  );
}
