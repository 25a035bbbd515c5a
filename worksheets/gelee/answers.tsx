import { POUR } from '@larderwright/calc/gelee';
import { fixedText } from '@larderwright/calc/quantities';
import { sourceOf } from '@larderwright/calc/sources';
import * as say from '#words/gelee/answers.ts';
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
      label={say.agarToWeigh}
      value={gellingText(values)}
      missing={say.cannotTellLiquidStrength}
      worked={
        <p>
          {say.liquidStrengthAgarWantsLiquid(
            rangeText(wanted.minFraction, wanted.maxFraction, percentText),
            say.habit,
          )}
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
        label={say.gelatineToWeigh}
        value={gellingText(values)}
        missing={say.cannotTellSeeWhatStillNeeded}
        worked={
          <>
            <p>
              {say.thisUseWants(
                geleeWorkings.strength,
                rangeText(wanted.minFraction, wanted.maxFraction, percentText),
                strengthFraction === null ? '' : say.isTaken(percentText(strengthFraction)),
                say.habit,
              )}
            </p>
            <p>
              {geleeWorkings.added}
              {addedFraction === null ? '' : say.leftToAdd(percentText(addedFraction))}
            </p>
            <p>{slice.rule === 'linear' ? geleeWorkings.linear : geleeWorkings.squareRoot}</p>
            {weak ? <p>{say.thenWeakening(geleeWorkings.weakening, say.habit)}</p> : null}
          </>
        }
      />
      {slice.form === 'sheet' ? (
        <Answer
          label={say.inSheets}
          value={sheetsText(values)}
          missing={say.cannotTellGelatineWeightSheet}
          worked={<p>{say.weighWholeSheetTornNeeded(geleeWorkings.sheets)}</p>}
        />
      ) : null}
      <Answer
        label={say.coldWaterToSoakItIn}
        value={soakingText(values)}
        missing={say.cannotTellTheGelatineIsMissing}
        worked={
          <p>
            {geleeWorkings.soakingWater} {say.habit}
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
      caption={say.asToldInGelatineOfBloom(gramsText(atStrengthBloomG), fixedText(bloom, 0))}
      columns={[say.rule, say.beforeAcidAndAlcohol, say.by]}
      words
      rows={[
        {
          key: 'root',
          head: say.squareRootBothEquallyFirm,
          cells: [gramsText(conversion.squareRootG), say.fromMemory(root.title)],
        },
        {
          key: 'linear',
          head: say.linearTheKitchenShortcut,
          cells: [gramsText(conversion.linearG), `${linear.title}; ${linear.issuer}`],
        },
        {
          key: 'apart',
          head: say.howFarTheyAreApart,
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
            label={say.jellyUnderTheCrust}
            value={underCrustText(values)}
            missing={say.cannotTellRoomInsideCrusts}
            worked={<p>{say.theFillingShrinks3To8(geleeWorkings.underCrust, say.habit)}</p>}
          >
            <p>{say.pourC7786FWhen(POUR.minC, POUR.maxC, POUR.coreMostC)}</p>
          </Answer>
        </div>
      )}
    </Computed>
  );
}
