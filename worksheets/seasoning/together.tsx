import { type SeasoningValues, spiceOf } from '@larderwright/calc/seasoning';
import { Answer } from '../parts/answer.tsx';
import { Computed } from '../parts/computed.tsx';
import { FigureTable } from '../parts/figure-table.tsx';
import { at, FindingList } from '../parts/finding-list.tsx';
import { Needed } from '../parts/needed.tsx';
import { gramsText, percentText } from '../parts/number-text.ts';
import { WriteOwnLines } from '../parts/write-own-lines.tsx';
import { useShared } from '../state/use-shared.ts';
import { SPICE_FORM_NAMES, seasoningFigureNames, seasoningWorkings } from '../words/seasoning.ts';
import { $seasoning } from './computed.ts';
import { seasoningFieldName } from './field-names.ts';
import { SEASONING_LINE } from './to-formula.ts';

/** Every spice against its ceiling, all its sources together; salt, allergens, and the way into the formula. */
export function Together() {
  return (
    <Computed of={useShared($seasoning)}>
      {({ slice, values, findings, missing, lines }) => (
        <>
          <Needed
            missing={missing}
            figures={seasoningFigureNames}
            nameOf={(path) => seasoningFieldName(path, slice)}
          />
          <div class="answers">
            <Answer
              label="Total mix it is dosed on"
              value={values.batchG === null ? null : gramsText(values.batchG)}
              missing="Cannot tell: type the total mix, or write the formula"
              worked={
                <p>
                  By the formula: everything in the bowl without this seasoning, divided by one less all its
                  doses, so that a dose counts on the finished mix. Derived: mass balance.
                </p>
              }
            />
            <Answer
              label="All seasoning"
              value={values.totalG === null || !isBegun(values) ? null : gramsText(values.totalG)}
              worked={
                <p>{seasoningWorkings.massG} Added up over every blend and every loose seasoning. Derived.</p>
              }
            />
            <SaltAnswers values={values} />
          </div>
          <CeilingTable values={values} />
          <FindingList findings={at(findings, 'seasoning.blends')} />
          {slice.batch.text.trim() === '' ? (
            <WriteOwnLines
              lines={lines}
              prefix={SEASONING_LINE}
              label="Write these grams into the formula"
              hint="Lines this page wrote before are replaced. Seasonings you wrote into the formula yourself stay: take them out if they are the same."
              done="The seasoning stands in the formula."
            />
          ) : (
            <p class="say">
              The total mix was typed by hand. Leave it blank to write these grams into the formula of the
              batch.
            </p>
          )}
        </>
      )}
    </Computed>
  );
}

/** Whether anything is to be weighed. */
function isBegun({ blends, loose }: SeasoningValues): boolean {
  return loose.length > 0 || blends.some(({ items }) => items.length > 0);
}

function SaltAnswers({ values: { dilutionSaltG, carriedSaltG } }: { values: SeasoningValues }) {
  const carried = carriedSaltG && carriedSaltG.max > 0 ? carriedSaltG : null;
  return (
    <>
      {dilutionSaltG > 0 ? (
        <Answer
          label="Plain salt to leave out, for the dilutions"
          value={gramsText(dilutionSaltG)}
          worked={<p>{seasoningWorkings.dilution} Derived; one in ten: common practice, no source.</p>}
        />
      ) : null}
      {carried ? (
        <Answer
          label="Salt that salty seasonings bring"
          value={
            carried.min === carried.max
              ? gramsText(carried.min)
              : `${gramsText(carried.min)} to ${gramsText(carried.max)}`
          }
          worked={<p>Grams of each × its salt, by the pack or the usual band: common practice, no source.</p>}
        />
      ) : null}
    </>
  );
}

function CeilingTable({ values }: { values: SeasoningValues }) {
  if (values.totals.length === 0) return null;
  return (
    <>
      <FigureTable
        caption="Each spice, all its sources together, against its ceiling of taste"
        columns={['Spice', 'On the total mix', 'Of its ceiling']}
        rows={values.totals.map(({ spiceId, gPerKgByForm, ceilingShare, open }) => ({
          key: spiceId,
          head: spiceOf(spiceId)?.name ?? spiceId,
          cells: [
            Object.entries(gPerKgByForm)
              .map(([form, dose]) => {
                const said =
                  dose === null || dose === undefined ? 'not known' : `${Number(dose.toFixed(3))} g/kg`;
                return `${said} ${SPICE_FORM_NAMES[form as keyof typeof SPICE_FORM_NAMES]}`;
              })
              .join(', '),
            ceilingShare === null
              ? 'no ceiling known'
              : open
                ? `at least ${percentText(ceilingShare, 0)}`
                : percentText(ceilingShare, 0),
          ],
        }))}
      />
      <p class="say">
        {seasoningWorkings.ceilingShare} Ceilings: common practice, no source; never a limit of law.
      </p>
    </>
  );
}
