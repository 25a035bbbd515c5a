import { casingOf } from '@larderwright/calc/casings';
import { fixedText } from '@larderwright/calc/quantities';
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

const DERIVED = 'Derived: volume of a cylinder.';

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
                label="Casing to soak"
                value={soakText(values)}
                missing="Cannot tell: see what is still needed below"
                worked={
                  <p>
                    {casingsWorkings.casing}
                    {casing === null ? '' : ` Filled: ${metresText(casing.filledM)}.`} {DERIVED} The spare is
                    common practice, no source.
                  </p>
                }
              >
                {pieces === null ? null : <p>{pieces}</p>}
                {prep === undefined ? null : <p>{prep}</p>}
              </Answer>
              <Answer
                label="One metre holds"
                value={perMetreG === null ? null : `${fixedText(perMetreG, 0)} g`}
                missing="Cannot tell: the width, the density or how full is missing"
                worked={
                  <p>
                    {casingsWorkings.perMetre} {DERIVED}
                  </p>
                }
              >
                {metresPerKg === null ? null : <p>{fixedText(metresPerKg, 2, 'up')} m to a kilogram</p>}
              </Answer>
              <Answer
                label="Time to heat, against one of 30 mm"
                value={comeUpTimes30 === null ? null : `about ${fixedText(comeUpTimes30, 1, 'up')} times`}
                missing="Cannot tell: the width once stuffed is missing"
                worked={
                  <p>
                    {casingsWorkings.comeUp} Derived: conduction into a long cylinder. The probe decides, not
                    this.
                  </p>
                }
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
              label="Links"
              value={countText(values)}
              missing="Cannot tell: see what is still needed below"
              worked={<p>{casingsWorkings.links} Derived.</p>}
            >
              {values.links === null ? null : <p>{gramsText(values.links.leftoverG)} left over</p>}
            </Answer>
            <Answer
              label="Each link"
              value={linkText(values)}
              missing="Cannot tell: the link, the batch or the casing is missing"
              worked={<p>Length: weight of a link divided by the weight of a metre. {DERIVED}</p>}
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
            label="Links as weighed"
            value={weighedText(values)}
            missing="Cannot tell: weigh some"
            worked={<p>Sum of the weights divided by their number, against the link wanted. Derived.</p>}
          />
        </div>
      )}
    </Computed>
  );
}
