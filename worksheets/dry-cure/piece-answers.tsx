import type { PieceValues } from '@larderwright/calc/dry-cure';
import { fixedText } from '@larderwright/calc/quantities';
import * as say from '#words/dry-cure/piece-answers.ts';
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
const ppmText = (ppm: number | null) => (ppm === null ? say.cannotTell : `${fixedText(ppm, 1)} mg/kg`);

/** What goes in the bag, what the meat then holds, how long it takes, what it will weigh. */
export function PieceAnswers({ values, computed }: PieceProps) {
  return (
    <>
      <div class="answers">
        <CureDose values={values} computed={computed} />
        <PlainSalt values={values} />
        {values.plan?.sugarG ? (
          <Answer
            label={say.sugar}
            value={say.weigh(stepText(values.plan.sugarG))}
            worked={<p>{say.sugarWantedWeightMeatStepScale}</p>}
          />
        ) : null}
      </div>
      <InTheMeat values={values} />
      <div class="answers">
        <CureTimes time={values.time}>
          {values.readyFrom && values.readyBy ? (
            <p>{say.readyFromToTurnTheBag(dayWords(values.readyFrom), dayWords(values.readyBy))}</p>
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
      label={say.curingSaltForTheNitriteWanted}
      value={dose?.ok ? say.weigh2(stepText(dose.doseG)) : null}
      missing={isControlled ? whyNoDose(ground) : say.notCounted}
      worked={
        dose?.ok && targetPpm !== null ? (
          <>
            <p>
              {say.nitriteWantedWeightMeatWithout(
                fixedText(targetPpm, 0),
                values.greenG === null ? '' : gramsText(values.greenG),
                pack.nitriteFraction === null ? '' : percentText(pack.nitriteFraction, 2),
              )}
            </p>
            <p>
              {say.beforeRoundingGNearestStep(
                fixedText(dose.exactG, 3),
                fixedText(dose.ppm, 1),
                percentText(dose.weighingErrorFraction),
              )}
            </p>
            {ceilingPpmMeat === null ? null : (
              <p>{say.ruleLetsMgKgMeatSodium(fixedText(ceilingPpmMeat, 1, 'down'))}</p>
            )}
          </>
        ) : (
          <p>{say.nitriteWantedWeightMeatWithout2}</p>
        )
      }
    />
  );
}

function PlainSalt({ values }: { values: PieceValues }) {
  const isControlled = useAt('dryCure.method') === 'equilibrium';
  const plan = values.plan;
  const missing = !isControlled
    ? say.noWeightMeatLiesMoreSalt
    : plan?.saltOverG
      ? say.noneNoneCanHelpCuringSalt(fixedText(plan.saltOverG, 1))
      : say.cannotTellWeighMeatSettle;
  return (
    <Answer
      label={say.plainSalt}
      value={plan && plan.plainSaltG !== null ? say.weigh3(stepText(plan.plainSaltG)) : null}
      missing={missing}
      worked={<p>{say.saltWantedWeightMeatLessSalt}</p>}
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
      caption={say.inTheMeat(values.inUse.isCureWeighed ? say.byTheWeightsOffTheScale : say.byThePlan)}
      columns={[say.what, say.onTheMeat, say.onMeatAndCure, say.asNitriteIonOnMeatAnd]}
      rows={[
        {
          key: 'salt',
          head: say.saltFromAllSources,
          cells: [saltFraction === null ? say.cannotTell : percentText(saltFraction, 2), '–', '–'],
        },
        {
          key: 'nitrite',
          head: say.nitriteAsSodiumNitrite,
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
          label={say.weightAtTheLossWanted}
          value={gramsText(targetMassG)}
          worked={<p>{say.weightWithoutSkin1LossDerived}</p>}
        >
          {saltAtTargetFraction === null ? null : (
            <p>{say.saltThereSalt1LossSalt(percentText(saltAtTargetFraction, 2))}</p>
          )}
        </Answer>
      )}
      {lossFraction === null ? null : (
        <Answer
          label={say.lostSoFar}
          value={percentText(lossFraction, 1)}
          worked={<p>{say.n1WeightNowWeightWithoutSkin}</p>}
        />
      )}
    </>
  );
}
