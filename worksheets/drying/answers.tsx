import type { AfterDrying, DryingValues } from '@larderwright/calc/drying';
import { fixedText } from '@larderwright/calc/quantities';
import { type Mark, type SourceId, sourceOf } from '@larderwright/calc/sources';
import { Answer } from '../parts/answer.tsx';
import { Computed } from '../parts/computed.tsx';
import { FigureTable } from '../parts/figure-table.tsx';
import { gramsText, percentText } from '../parts/number-text.ts';
import { useShared } from '../state/use-shared.ts';
import { RATIO_CLASS_NAMES, WATER_ACTIVITY_NAMES } from '../words/drying-names.ts';
import { $drying } from './computed.ts';

const sourceText = (source: SourceId, mark: Mark) =>
  `${sourceOf(source).title}${mark === 'memory' ? '; from memory' : ''}`;

/** Loss so far, and the weight to wait for. */
export function WeightAnswers() {
  return (
    <Computed of={useShared($drying)}>
      {({ values: { lossFraction, targetMassG, toLoseG } }) => (
        <div class="answers">
          <Answer
            label="Lost so far"
            value={lossFraction === null ? null : percentText(lossFraction, 1)}
            missing="Cannot tell: weigh it at the start and now"
            worked={<p>1 − weight now ÷ weight when drying began. Derived.</p>}
          />
          <Answer
            label="Weight at the loss wanted"
            value={targetMassG === null ? null : gramsText(targetMassG)}
            missing="Cannot tell: write the weight at the start and the loss of your plan"
            worked={<p>Weight when drying began × (1 − loss). Derived.</p>}
          >
            {toLoseG === null ? null : (
              <p>{toLoseG === 0 ? 'It is there.' : `${gramsText(toLoseG)} still to lose.`}</p>
            )}
          </Answer>
        </div>
      )}
    </Computed>
  );
}

/** Salt on the water and water activity, estimated from what went in. */
export function Estimates() {
  return (
    <Computed of={useShared($drying)}>
      {({ values }) => (
        <>
          <FigureTable
            caption="Estimated from salt and water alone"
            columns={['When', 'Salt on the water', 'Water activity']}
            rows={[
              { key: 'now', head: 'At the loss so far', cells: afterCells(values.now) },
              { key: 'target', head: 'At the loss wanted', cells: afterCells(values.atTarget) },
            ]}
          />
          <div class="answers">
            <Answer
              label="Salt at the loss wanted"
              value={
                values.saltAtTargetFraction === null ? null : percentText(values.saltAtTargetFraction, 2)
              }
              missing="Cannot tell: salt at the start or the loss is missing"
              worked={
                <>
                  <p>Salt ÷ (1 − loss): the salt stays, the water goes. Derived: mass balance.</p>
                  <p>
                    On the water: salt ÷ (salt + moisture − loss). Water activity by the forms of Pitzer and
                    Mayorga (1973) and of Resnik and Chirife, both from memory. Sugar and acid lower the real
                    one; a hard rim makes it uneven. Only an instrument decides.
                  </p>
                </>
              }
            />
            <Answer
              label="Moisture to protein, estimated"
              value={values.estimatedRatio === null ? null : fixedText(values.estimatedRatio, 2, 'up')}
              missing="Cannot tell: moisture, protein or the loss is missing"
              worked={<p>(Moisture at the start − loss) ÷ protein at the start. Derived: mass balance.</p>}
            />
          </div>
        </>
      )}
    </Computed>
  );
}

function afterCells(after: AfterDrying | null): string[] {
  if (after === null) return ['cannot tell', 'cannot tell'];
  const { waterPhaseFraction, waterActivity } = after;
  return [
    percentText(waterPhaseFraction, 2),
    waterActivity === null
      ? 'beyond saturated salt'
      : `${fixedText(waterActivity.low, 3)} to ${fixedText(waterActivity.high, 3, 'up')}`,
  ];
}

/** Measured figures beside what laws and microbes tie to them. None judges a product. */
export function Measured() {
  return (
    <Computed of={useShared($drying)}>
      {({ values }) => (
        <>
          <p class="say">Shown for comparison. None of them says that a product is safe.</p>
          <ActivityTable values={values} />
          <RatioTable values={values} />
        </>
      )}
    </Computed>
  );
}

function ActivityTable({ values: { waterActivityRows } }: { values: DryingValues }) {
  return (
    <FigureTable
      caption="Water activity"
      columns={['What', 'Figure', 'Measured', 'By']}
      words
      rows={waterActivityRows.map(({ limit, isBelow }) => ({
        key: limit.id + limit.group,
        head: WATER_ACTIVITY_NAMES[limit.id] ?? limit.id,
        cells: [
          bandText(limit),
          isBelow === null ? 'not measured' : isBelow ? 'below' : 'not below',
          sourceText(limit.source, limit.mark),
        ],
      }))}
    />
  );
}

function bandText({ group, low, high }: DryingValues['waterActivityRows'][number]['limit']): string {
  if (group === 'growth') return `from ${low === null ? '' : fixedText(low, 3)}`;
  if (low === null) return `at most ${high === null ? '' : fixedText(high, 2)}`;
  return `${fixedText(low, 2)} to ${high === null ? '' : fixedText(high, 2)}`;
}

function RatioTable({ values: { ratioRows, measuredRatio } }: { values: DryingValues }) {
  return (
    <FigureTable
      caption={`Moisture to protein${measuredRatio === null ? ', not measured' : `, measured ${fixedText(measuredRatio, 2, 'up')}`}`}
      columns={['Name', 'At most', 'Has it', 'Loss that would reach it', 'By']}
      words
      rows={ratioRows.map(({ ratioClass, meets, lossFraction }) => ({
        key: ratioClass.id,
        head: RATIO_CLASS_NAMES[ratioClass.id] ?? ratioClass.id,
        cells: [
          `${fixedText(ratioClass.maxRatio, 2)}${ratioClass.maxPh === null ? '' : `, pH ${fixedText(ratioClass.maxPh, 1)}`}`,
          meets === null ? 'cannot tell' : meets ? 'yes' : 'no',
          lossFraction === null ? 'cannot tell' : percentText(lossFraction, 1),
          sourceText(ratioClass.source, ratioClass.mark),
        ],
      }))}
    />
  );
}

/** Least days in the drying room by the rule against Trichinella. */
export function TrichinaAnswer() {
  return (
    <Computed of={useShared($drying)}>
      {({ values: { trichina, trichinaSalt } }) => (
        <div class="answers">
          <Answer
            label="Least days in the drying room"
            value={trichina === null ? null : `${trichina.days} days`}
            missing="Cannot tell: casing and all three weights of the mix are needed, and must lie in the table"
            worked={
              <p>
                {trichina === null
                  ? 'Days by the casing, less what a warm hold takes off, and what too little salt adds.'
                  : `By the casing ${trichina.tableDays} days; ${trichina.offDays} off for the warm hold, ${trichina.addedDays} added for salt under 3.33 lb to 100 lb.`}{' '}
                Between two rows the longer counts. 9 CFR 318.10(c)(3)(i), method 6, tables 3A, 3B and 4,
                annual edition of 2015.
              </p>
            }
          />
          <Answer
            label="Salt, as that rule counts it"
            value={
              trichinaSalt === null ? null : `${fixedText(trichinaSalt.percent, 2, 'down')} lb to 100 lb`
            }
            missing="Cannot tell: weigh the mix, its dry ingredients and the salt in them"
            worked={
              <p>
                Salt × 100 ÷ (all of the mix − dry ingredients), cut to one decimal for the table. 9 CFR
                318.10(c)(3)(i), method 6.
              </p>
            }
          />
        </div>
      )}
    </Computed>
  );
}
