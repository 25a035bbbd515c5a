import type { Finding } from '@larderwright/calc/findings';
import { at } from '../parts/finding-list.tsx';
import { later } from '../parts/later.tsx';
import { MomentBox } from '../parts/moment-box.tsx';
import { NotYet } from '../parts/not-yet.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { editAt } from '../state/store.ts';
import { useAt, useShared } from '../state/use-shared.ts';
import { $chill } from './computed.ts';

const PressAnswers = later(() => import('./press-answers.tsx').then((m) => m.PressAnswers));

export function useChillFindings(): readonly Finding[] {
  const computed = useShared($chill);
  return computed.state === 'ready' ? computed.value.findings : [];
}

/** The board, what lies on it, and when it went on. Of one mould. */
export function PressFields() {
  const findings = useChillFindings();
  const startedAt = useAt('press.startedAt');
  return (
    <>
      <div class="fields">
        <NumberField
          path="press.boardLength"
          label="Board, length"
          kind="length"
          units={['mm', 'cm', 'in']}
          range={{ min: 0, max: 2000 }}
          hint="The board that bears on the product, cut 2 to 3 mm smaller all round."
          findings={at(findings, 'press.boardLength')}
        />
        <NumberField
          path="press.boardWidth"
          label="Board, width"
          kind="length"
          units={['mm', 'cm', 'in']}
          range={{ min: 0, max: 2000 }}
          findings={at(findings, 'press.boardWidth')}
        />
        <NumberField
          path="press.load"
          label="Load on one board"
          kind="mass"
          units={['kg', 'g', 'lb']}
          range={{ min: 0, max: 500_000 }}
          hint="Everything that lies on it, the board too."
          findings={at(findings, 'press.load')}
        />
        <NumberField
          path="press.pressureTarget"
          label="Pressure wanted"
          kind="pressure"
          range={{ min: 0, max: 200 }}
          hint="Then the load for it is worked out."
          findings={at(findings, 'press.pressureTarget')}
        />
        <MomentBox
          label="Press on at"
          iso={typeof startedAt === 'string' ? startedAt : null}
          offerNow
          onMoment={(iso) => editAt('press.startedAt', iso)}
        />
      </div>
      <PressAnswers meanwhile={<NotYet />} />
    </>
  );
}
