import type { PieceValues } from '@larderwright/calc/dry-cure';
import { fixedText } from '@larderwright/calc/quantities';
import { Answer } from '../parts/answer.tsx';
import { dayWords } from '../parts/day-words.ts';
import { FigureTable } from '../parts/figure-table.tsx';
import { gramsText, percentText } from '../parts/number-text.ts';
import { useAt } from '../state/use-shared.ts';
import { CureTimes } from '../whole-muscle/cure-times.tsx';
import { stepText } from '../whole-muscle/planned.ts';
import { whyNoDose } from '../whole-muscle/why-no-dose.ts';
import type { DryCureComputed } from './compute.ts';

interface PieceProps {
  values: PieceValues;
  computed: DryCureComputed;
}

const NOT_COUNTED = 'No dose: in a salt box or under a rub nobody knows how much goes in';
const ppmText = (ppm: number | null) => (ppm === null ? 'cannot tell' : `${fixedText(ppm, 1)} mg/kg`);

/** What goes in the bag, what the meat then holds, how long it takes, what it will weigh. */
export function PieceAnswers({ values, computed }: PieceProps) {
  return (
    <>
      <div class="answers">
        <CureDose values={values} computed={computed} />
        <PlainSalt values={values} />
        {values.plan?.sugarG ? (
          <Answer
            label="Sugar"
            value={`Weigh ${stepText(values.plan.sugarG)}`}
            worked={<p>Sugar wanted × weight of the meat, to the step of the scale.</p>}
          />
        ) : null}
      </div>
      <InTheMeat values={values} />
      <div class="answers">
        <CureTimes time={values.time}>
          {values.readyFrom && values.readyBy ? (
            <p>
              Ready from {dayWords(values.readyFrom)} to {dayWords(values.readyBy)}. Turn the bag every day.
            </p>
          ) : null}
        </CureTimes>
        <Drying values={values} />
      </div>
    </>
  );
}

function CureDose({ values, computed }: PieceProps) {
  const isControlled = useAt('dryCure.method') === 'equilibrium';
  const hasProduct = useAt('dryCure.product') !== null;
  const dose = values.plan?.dose ?? null;
  const { ruleSet, pack, ceilingPpmMeat } = computed.values;
  const { targetPpm, readabilityG } = computed;
  const ground = {
    dose,
    targetPpm,
    ruleSet,
    hasProduct,
    ceilingPpm: ceilingPpmMeat,
    pack,
    readabilityG,
    greenG: values.greenG,
  };
  return (
    <Answer
      label="Curing salt for the nitrite wanted"
      value={dose?.ok ? `Weigh ${stepText(dose.doseG)}` : null}
      missing={isControlled ? whyNoDose(ground) : NOT_COUNTED}
      worked={
        dose?.ok && targetPpm !== null ? (
          <>
            <p>
              Nitrite wanted × weight of the meat without skin ÷ strength of the curing salt:{' '}
              {fixedText(targetPpm, 0)} mg/kg × {values.greenG === null ? '' : gramsText(values.greenG)} ÷{' '}
              {pack.nitriteFraction === null ? '' : percentText(pack.nitriteFraction, 2)}. Derived: mass
              balance.
            </p>
            <p>
              Before rounding: {fixedText(dose.exactG, 3)} g. To the nearest step of the scale, and down where
              up would break the limit. That gives {fixedText(dose.ppm, 1)} mg/kg; the last digit is worth ±{' '}
              {percentText(dose.weighingErrorFraction)}.
            </p>
            {ceilingPpmMeat === null ? null : (
              <p>
                This rule lets in {fixedText(ceilingPpmMeat, 1, 'down')} mg/kg of the meat, as sodium nitrite.
              </p>
            )}
          </>
        ) : (
          <p>
            Nitrite wanted × weight of the meat without skin ÷ strength of the curing salt, to the step of the
            scale and never over the limit. Derived: mass balance.
          </p>
        )
      }
    />
  );
}

function PlainSalt({ values }: { values: PieceValues }) {
  const isControlled = useAt('dryCure.method') === 'equilibrium';
  const plan = values.plan;
  const missing = !isControlled
    ? 'No weight: the meat lies in more salt than it takes'
    : plan?.saltOverG
      ? `None, and none can help: the curing salt alone brings ${fixedText(plan.saltOverG, 1)} g too much`
      : 'Cannot tell: weigh the meat, and settle the curing salt first';
  return (
    <Answer
      label="Plain salt"
      value={plan && plan.plainSaltG !== null ? `Weigh ${stepText(plan.plainSaltG)}` : null}
      missing={missing}
      worked={
        <p>
          Salt wanted × weight of the meat, less the salt that the curing salt brings. All of a bag goes in,
          so every dose is a share of the meat. Derived: mass balance.
        </p>
      }
    />
  );
}

function InTheMeat({ values }: { values: PieceValues }) {
  if (values.greenG === null) return null;
  const isControlled = values.plan !== null;
  if (!isControlled && values.saltFraction === null && values.nitritePpmMeat === null) return null;
  const { saltFraction, nitritePpmMeat, nitritePpmTotal, nitriteIonPpmTotal } = values;
  return (
    <FigureTable
      caption={`In the meat, ${values.inUse.isCureWeighed ? 'by the weights off the scale' : 'by the plan'}`}
      columns={['What', 'On the meat', 'On meat and cure', 'As nitrite ion, on meat and cure']}
      rows={[
        {
          key: 'salt',
          head: 'Salt from all sources',
          cells: [saltFraction === null ? 'cannot tell' : percentText(saltFraction, 2), '–', '–'],
        },
        {
          key: 'nitrite',
          head: 'Nitrite, as sodium nitrite',
          cells: [ppmText(nitritePpmMeat), ppmText(nitritePpmTotal), ppmText(nitriteIonPpmTotal)],
        },
      ]}
    />
  );
}

function Drying({ values }: { values: PieceValues }) {
  const { targetMassG, saltAtTargetFraction, lossFraction } = values;
  return (
    <>
      {targetMassG === null ? null : (
        <Answer
          label="Weight at the loss wanted"
          value={gramsText(targetMassG)}
          worked={<p>Weight without skin × (1 − loss). Derived.</p>}
        >
          {saltAtTargetFraction === null ? null : (
            <p>
              Salt there: {percentText(saltAtTargetFraction, 2)}, salt ÷ (1 − loss). The salt stays, the water
              goes; drip takes salt along.
            </p>
          )}
        </Answer>
      )}
      {lossFraction === null ? null : (
        <Answer
          label="Lost so far"
          value={percentText(lossFraction, 1)}
          worked={<p>1 − weight now ÷ weight without skin. Derived.</p>}
        />
      )}
    </>
  );
}
