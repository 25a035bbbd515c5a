import { type SeasoningValues, spiceOf } from '@larderwright/calc/seasoning';
import * as say from '#words/seasoning/together.ts';
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
              label={say.totalMixItIsDosedOn}
              value={values.batchG === null ? null : gramsText(values.batchG)}
              missing={say.cannotTellTypeTotalMixWrite}
              worked={<p>{say.formulaEverythingBowlWithout}</p>}
            />
            <Answer
              label={say.allSeasoning}
              value={values.totalG === null || !isBegun(values) ? null : gramsText(values.totalG)}
              worked={<p>{say.addedUpOverEveryBlendEvery(seasoningWorkings.massG)}</p>}
            />
            <SaltAnswers values={values} />
          </div>
          <CeilingTable values={values} />
          <FindingList findings={at(findings, 'seasoning.blends')} />
          {slice.batch.text.trim() === '' ? (
            <WriteOwnLines
              lines={lines}
              prefix={SEASONING_LINE}
              label={say.writeTheseGramsIntoTheFormula}
              hint={say.linesPageWroteBeforeReplaced}
              done={say.theSeasoningStandsInTheFormula}
            />
          ) : (
            <p class="say">{say.totalMixTypedHandLeaveBlank}</p>
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
          label={say.plainSaltLeaveOutDilutions}
          value={gramsText(dilutionSaltG)}
          worked={<p>{say.derivedOneTenCommonPracticeNo(seasoningWorkings.dilution)}</p>}
        />
      ) : null}
      {carried ? (
        <Answer
          label={say.saltThatSaltySeasoningsBring}
          value={
            carried.min === carried.max
              ? gramsText(carried.min)
              : say.to(gramsText(carried.min), gramsText(carried.max))
          }
          worked={<p>{say.gramsEachSaltPackUsualBand}</p>}
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
        caption={say.eachSpiceAllSourcesTogether}
        columns={[say.spice, say.onTheTotalMix, say.ofItsCeiling]}
        rows={values.totals.map(({ spiceId, gPerKgByForm, ceilingShare, open }) => ({
          key: spiceId,
          head: spiceOf(spiceId)?.name ?? spiceId,
          cells: [
            Object.entries(gPerKgByForm)
              .map(([form, dose]) => {
                const said =
                  dose === null || dose === undefined ? say.notKnown : `${Number(dose.toFixed(3))} g/kg`;
                return `${said} ${SPICE_FORM_NAMES[form as keyof typeof SPICE_FORM_NAMES]}`;
              })
              .join(', '),
            ceilingShare === null
              ? say.noCeilingKnown
              : open
                ? say.atLeast(percentText(ceilingShare, 0))
                : percentText(ceilingShare, 0),
          ],
        }))}
      />
      <p class="say">{say.ceilingsCommonPracticeNoSource(seasoningWorkings.ceilingShare)}</p>
    </>
  );
}
