import { casingOf } from '@larderwright/calc/casings';
import { fixedText } from '@larderwright/calc/quantities';
import * as say from '#words/casings/answers.ts';
import { Answer } from '../parts/answer.tsx';
import { Computed } from '../parts/computed.tsx';
import { Needed } from '../parts/needed.tsx';
import { gramsText } from '../parts/number-text.ts';
import { useShared } from '../state/use-shared.ts';
import { casingPrep, casingsFigureNames, casingsWorkings, TWIST_PLAN } from '../words/casings.ts';
import { CASINGS_FIELD_NAMES } from '../words/casings-names.ts';
import type { CasingsComputed } from './compute.ts';
import { $casings } from './computed.ts';
import { countText, linkText, metresText, piecesText, soakText, weighedText } from './figure-text.ts';

/** What is still missing for one figure. */
function StillNeeded({ missing, figure }: { missing: CasingsComputed['missing']; figure: string }) {
  const name = casingsFigureNames[figure] ?? figure;
  return (
    <Needed
      missing={missing}
      figures={{ [figure]: name }}
      nameOf={(field) => CASINGS_FIELD_NAMES[field] ?? field}
    />
  );
}

/** Metres to soak, and what a metre holds. */
export function Lengths() {
  return (
    <Computed of={useShared($casings)}>
      {({ slice, values, missing }) => {
        const { perMetreG, metresPerKg, casing, comeUpTimes30 } = values;
        const prep = slice.casingId === null ? undefined : casingPrep[casingOf(slice.casingId)?.id ?? ''];
        const pieces = piecesText(values);
        return (
          <>
            <div class="answers">
              <Answer
                label={say.casingToSoak}
                value={soakText(values)}
                missing={say.cannotTellSeeWhatStillNeeded}
                worked={
                  <p>
                    {say.spareCommonPracticeNoSource(
                      casingsWorkings.casing,
                      casing === null ? '' : say.filled(metresText(casing.filledM)),
                      say.derived,
                    )}
                  </p>
                }
              >
                {pieces === null ? null : <p>{pieces}</p>}
                {prep === undefined ? null : <p>{prep}</p>}
              </Answer>
              <Answer
                label={say.oneMetreHolds}
                value={perMetreG === null ? null : `${fixedText(perMetreG, 0)} g`}
                missing={say.cannotTellWidthDensityHowFull}
                worked={
                  <p>
                    {casingsWorkings.perMetre} {say.derived}
                  </p>
                }
              >
                {metresPerKg === null ? null : <p>{say.mToAKilogram(fixedText(metresPerKg, 2, 'up'))}</p>}
              </Answer>
              <Answer
                label={say.timeToHeatAgainstOneOf}
                value={comeUpTimes30 === null ? null : say.aboutTimes(fixedText(comeUpTimes30, 1, 'up'))}
                missing={say.cannotTellWidthOnceStuffed}
                worked={<p>{say.derivedConductionIntoLong(casingsWorkings.comeUp)}</p>}
              />
            </div>
            <StillNeeded missing={missing} figure="casings.length" />
          </>
        );
      }}
    </Computed>
  );
}

/** How many links, and of what size. */
export function LinkAnswers() {
  return (
    <Computed of={useShared($casings)}>
      {({ values, missing }) => (
        <>
          <div class="answers">
            <Answer
              label={say.links}
              value={countText(values)}
              missing={say.cannotTellSeeWhatStillNeeded}
              worked={<p>{say.derived2(casingsWorkings.links)}</p>}
            >
              {values.links === null ? null : <p>{say.leftOver(gramsText(values.links.leftoverG))}</p>}
            </Answer>
            <Answer
              label={say.eachLink}
              value={linkText(values)}
              missing={say.cannotTellLinkBatchCasing}
              worked={<p>{say.lengthWeightLinkDividedWeight(say.derived)}</p>}
            >
              <p>{TWIST_PLAN}</p>
            </Answer>
          </div>
          <StillNeeded missing={missing} figure="casings.links" />
        </>
      )}
    </Computed>
  );
}

/** Links on the scale, against what was wanted. */
export function Weighed() {
  return (
    <Computed of={useShared($casings)}>
      {({ values }) => (
        <div class="answers">
          <Answer
            label={say.linksAsWeighed}
            value={weighedText(values)}
            missing={say.cannotTellWeighSome}
            worked={<p>{say.sumWeightsDividedNumberAgainst}</p>}
          />
        </div>
      )}
    </Computed>
  );
}
