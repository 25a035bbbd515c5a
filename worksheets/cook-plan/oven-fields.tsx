import { shippedOven } from '@larderwright/calc/cook-plan';
import type { Finding } from '@larderwright/calc/findings';
import { enteredEntry, rangeIn } from '@larderwright/calc/quantities';
import { useEffect, useState } from 'preact/hooks';
import * as say from '#words/cook-plan/oven-fields.ts';
import { ChoiceField } from '../parts/choice-field.tsx';
import { figureText, type KeptOven, keptOvens } from '../state/oven-records.ts';
import { editAt } from '../state/store.ts';
import { useAt } from '../state/use-shared.ts';
import { PlanField } from './plan-field.tsx';

const SHIPPED = '';

/** Which oven it is, where a finished cook has taught something about it. */
export function OvenFields({ findings }: { findings: readonly Finding[] }) {
  const name = String(useAt('cookPlan.ovenRecord.name'));
  const [kept, setKept] = useState<readonly KeptOven[]>([]);
  useEffect(() => setKept(keptOvens()), []);
  const choose = (chosen: string) => {
    const oven = kept.find((each) => each.name === chosen);
    editAt(
      'cookPlan.ovenRecord',
      oven === undefined
        ? shippedOven()
        : {
            name: oven.name,
            films: enteredEntry(figureText(oven.filmFactor), 'ratio'),
            heating: enteredEntry(figureText(oven.heatingFactor), 'ratio'),
            shift: enteredEntry(figureText(oven.mediumShiftC), 'dC'),
          },
    );
  };
  const names = [...new Set([...kept.map((oven) => oven.name), ...(name === SHIPPED ? [] : [name])])];
  return (
    <details class="pack">
      <summary>{say.ovenRecordWhatEarlierCook}</summary>
      <div class="fields">
        <ChoiceField
          label={say.ovenRecord}
          value={name}
          empty={say.noneTheShippedFigures}
          choices={names.map((each) => ({ value: each, label: each }))}
          onChoose={choose}
          hint={say.finishedCookLogPlanCanLeave}
        />
        <PlanField
          of="ovenRecord.films"
          label={say.airAndWaterGiveTheirHeat}
          kind="ratio"
          range={{ min: 0.1, max: 10 }}
          findings={findings}
        />
        <PlanField
          of="ovenRecord.heating"
          label={say.theOvenHeatsThePanTimes}
          kind="ratio"
          range={{ min: 0.1, max: 10 }}
          findings={findings}
        />
        <PlanField
          of="ovenRecord.shift"
          label={say.hotterThanItShowsBy}
          kind="temperature-difference"
          units={['dC', 'dF']}
          range={rangeIn('dC', -40, 40)}
          findings={findings}
        />
      </div>
    </details>
  );
}
