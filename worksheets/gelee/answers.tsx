import { POUR } from '@larderwright/calc/gelee';
import { fixedText } from '@larderwright/calc/quantities';
import { sourceOf } from '@larderwright/calc/sources';
import { Answer } from '../parts/answer.tsx';
import { Computed } from '../parts/computed.tsx';
import { FigureTable } from '../parts/figure-table.tsx';
import { Needed } from '../parts/needed.tsx';
import { gramsText, percentText } from '../parts/number-text.ts';
import { useShared } from '../state/use-shared.ts';
import { geleeFigureNames, geleeWorkings } from '../words/gelee.ts';
import { GELEE_FIELD_NAMES } from '../words/gelee-names.ts';
import type { GeleeComputed } from './compute.ts';
import { $gelee } from './computed.ts';
import { gellingText, rangeText, sheetsText, soakingText, underCrustText } from './figure-text.ts';

const HABIT = 'Common practice, no source.';

/** What to weigh, and what it rests on. */
export function Weights() {
  return (
    <Computed of={useShared($gelee)}>
      {(computed) => (
        <>
          <div class="answers">{computed.slice.gelling === 'agar' ? agar(computed) : gelatine(computed)}</div>
          <BothRules {...computed} />
          <Needed
            missing={computed.missing}
            figures={geleeFigureNames}
            nameOf={(field) => GELEE_FIELD_NAMES[field] ?? field}
          />
        </>
      )}
    </Computed>
  );
}

function agar({ values }: GeleeComputed) {
  const { wanted } = values;
  return (
    <Answer
      label="Agar to weigh"
      value={gellingText(values)}
      missing="Cannot tell: the liquid or the strength is missing"
      worked={
        <p>
          Liquid × strength. Agar wants {rangeText(wanted.minFraction, wanted.maxFraction, percentText)} of
          the liquid. {HABIT}
        </p>
      }
    />
  );
}

function gelatine({ slice, values }: GeleeComputed) {
  const { wanted, strengthFraction, addedFraction, weakening } = values;
  const weak = weakening.acid || weakening.alcohol;
  return (
    <>
      <Answer
        label="Gelatine to weigh"
        value={gellingText(values)}
        missing="Cannot tell: see what is still needed below"
        worked={
          <>
            <p>
              {geleeWorkings.strength} This use wants{' '}
              {rangeText(wanted.minFraction, wanted.maxFraction, percentText)}
              {strengthFraction === null ? '' : `; ${percentText(strengthFraction)} is taken`}. {HABIT}
            </p>
            <p>
              {geleeWorkings.added}
              {addedFraction === null ? '' : ` Left to add: ${percentText(addedFraction)}.`}
            </p>
            <p>{slice.rule === 'linear' ? geleeWorkings.linear : geleeWorkings.squareRoot}</p>
            {weak ? (
              <p>
                Then {geleeWorkings.weakening} {HABIT}
              </p>
            ) : null}
          </>
        }
      />
      {slice.form === 'sheet' ? (
        <Answer
          label="In sheets"
          value={sheetsText(values)}
          missing="Cannot tell: the gelatine or the weight of a sheet is missing"
          worked={<p>{geleeWorkings.sheets} Weigh them: a whole sheet is torn as needed.</p>}
        />
      ) : null}
      <Answer
        label="Cold water to soak it in"
        value={soakingText(values)}
        missing="Cannot tell: the gelatine is missing"
        worked={
          <p>
            {geleeWorkings.soakingWater} {HABIT}
          </p>
        }
      />
    </>
  );
}

/** Both published rules side by side. They are never averaged. */
function BothRules({ values: { conversion, bloom, atStrengthBloomG } }: GeleeComputed) {
  if (conversion === null || atStrengthBloomG === null || bloom === null) return null;
  const root = sourceOf('gmia-gelatin-handbook');
  const linear = sourceOf('gelatine-linear-rule');
  return (
    <FigureTable
      caption={`${gramsText(atStrengthBloomG)} as told, in gelatine of ${fixedText(bloom, 0)} bloom`}
      columns={['Rule', 'Before acid and alcohol', 'By']}
      words
      rows={[
        {
          key: 'root',
          head: 'Square root: both equally firm',
          cells: [gramsText(conversion.squareRootG), `${root.title}; from memory`],
        },
        {
          key: 'linear',
          head: 'Linear: the kitchen shortcut',
          cells: [gramsText(conversion.linearG), `${linear.title}; ${linear.issuer}`],
        },
        {
          key: 'apart',
          head: 'How far they are apart',
          cells: [gramsText(Math.abs(conversion.differenceG)), 'derived'],
        },
      ]}
    />
  );
}

/** Jelly for the room that a filling leaves. */
export function UnderCrust() {
  return (
    <Computed of={useShared($gelee)}>
      {({ values }) => (
        <div class="answers">
          <Answer
            label="Jelly under the crust"
            value={underCrustText(values)}
            missing="Cannot tell: the room inside the crusts is missing"
            worked={
              <p>
                {geleeWorkings.underCrust} The filling shrinks 3 to 8 %. {HABIT}
              </p>
            }
          >
            <p>
              Pour at {POUR.minC} to {POUR.maxC} °C (77 to 86 °F) when the core is at {POUR.coreMostC} °C (104
              °F) or below, in two or three goes twenty minutes apart.
            </p>
          </Answer>
        </div>
      )}
    </Computed>
  );
}
