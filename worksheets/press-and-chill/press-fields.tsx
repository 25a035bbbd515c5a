import type { Finding } from '@larderwright/calc/findings';
import * as say from '#words/press-and-chill/press-fields.ts';
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
          label={say.boardLength}
          kind="length"
          units={['mm', 'cm', 'in']}
          range={{ min: 0, max: 2000 }}
          hint={say.boardBearsProductCut23}
          findings={at(findings, 'press.boardLength')}
        />
        <NumberField
          path="press.boardWidth"
          label={say.boardWidth}
          kind="length"
          units={['mm', 'cm', 'in']}
          range={{ min: 0, max: 2000 }}
          findings={at(findings, 'press.boardWidth')}
        />
        <NumberField
          path="press.load"
          label={say.loadOnOneBoard}
          kind="mass"
          units={['kg', 'g', 'lb']}
          range={{ min: 0, max: 500_000 }}
          hint={say.everythingLiesBoardToo}
          findings={at(findings, 'press.load')}
        />
        <NumberField
          path="press.pressureTarget"
          label={say.pressureWanted}
          kind="pressure"
          range={{ min: 0, max: 200 }}
          hint={say.thenTheLoadForItIs}
          findings={at(findings, 'press.pressureTarget')}
        />
        <MomentBox
          label={say.pressOnAt}
          iso={typeof startedAt === 'string' ? startedAt : null}
          offerNow
          onMoment={(iso) => editAt('press.startedAt', iso)}
        />
      </div>
      <PressAnswers meanwhile={<NotYet />} />
    </>
  );
}
