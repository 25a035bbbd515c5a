import { newFermentationStep } from '@larderwright/calc/drying';
import { Fragment } from 'preact';
import * as say from '#words/drying/fermentation.ts';
import { ChoiceField } from '../parts/choice-field.tsx';
import { at, FindingList } from '../parts/finding-list.tsx';
import { later } from '../parts/later.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { RemovedRowLine, RowTools } from '../parts/row-tools.tsx';
import { newId } from '../state/clock.ts';
import { addRow } from '../state/rows.ts';
import { $life, editAt } from '../state/store.ts';
import { useAt, useShared } from '../state/use-shared.ts';
import { DEGREE_HOUR_RULES } from '../words/drying-names.ts';
import { choicesOf } from '../words/whole-muscle-names.ts';
import { $drying } from './computed.ts';

const LIST = 'drying.steps';
const DegreeHourCount = later(() => import('./degree-hour-count.tsx').then((m) => m.DegreeHourCount));

/** Stretches of the chamber until pH 5.3, under the rule the plan names. */
export function Fermentation() {
  const rule = useAt('drying.degreeHourRule');
  const reached = useAt('drying.reachedPh53');
  const steps = useAt(LIST) as readonly { id: string }[];
  const waking = useShared($life) === 'waking';
  const computed = useShared($drying);
  const findings = computed.state === 'ready' ? computed.value.findings : [];
  return (
    <>
      <div class="fields">
        <ChoiceField
          label={say.degreeHourRule}
          value={typeof rule === 'string' ? rule : ''}
          empty={say.notChosenNothingIsCounted}
          choices={choicesOf(DEGREE_HOUR_RULES)}
          onChoose={(value) => editAt('drying.degreeHourRule', value === '' ? null : value)}
          hint={say.onePlanNamesNeverBlended}
        />
        <ChoiceField
          label={say.ph53ByTheEnd}
          value={reached === null ? '' : reached === true ? 'yes' : 'no'}
          empty={say.notMeasured}
          choices={[
            { value: 'yes', label: say.reached },
            { value: 'no', label: say.notYet },
          ]}
          onChoose={(value) => editAt('drying.reachedPh53', value === '' ? null : value === 'yes')}
        />
      </div>
      {steps.map((step, place) => (
        <Fragment key={step.id}>
          <RemovedRowLine list={LIST} place={place} />
          <fieldset class="stretch">
            <legend>{say.stretch(place + 1)}</legend>
            <div class="fields">
              <NumberField
                path={`${LIST}.${step.id}.temp`}
                label={say.chamberAtStretch(place + 1)}
                kind="temperature"
                units={['C', 'F']}
              />
              <NumberField
                path={`${LIST}.${step.id}.hours`}
                label={say.forStretch(place + 1)}
                kind="time"
                units={['h', 'min', 'd']}
              />
            </div>
            <RowTools
              list={LIST}
              id={step.id}
              label={say.stretch2(place + 1)}
              first={place === 0}
              last={place === steps.length - 1}
            />
          </fieldset>
        </Fragment>
      ))}
      <RemovedRowLine list={LIST} place={steps.length} />
      <p class="buttons">
        <button type="button" disabled={waking} onClick={() => addRow(LIST, newFermentationStep(newId()))}>
          {say.addAStretch}
        </button>
      </p>
      <FindingList findings={at(findings, LIST)} />
      <DegreeHourCount />
    </>
  );
}
