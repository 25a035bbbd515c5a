import type { YieldTest } from '@larderwright/calc/yield';
import { Fragment } from 'preact';
import { CouldNot } from '../parts/computed.tsx';
import { RemovedRowLine } from '../parts/row-tools.tsx';
import { useAt, useShared } from '../state/use-shared.ts';
import { $yield } from './computed.ts';
import { TestSection } from './test-section.tsx';

/** Every test of the batch. */
export function Tests() {
  const tests = useAt('yield.tests') as readonly YieldTest[];
  const computed = useShared($yield);
  return (
    <>
      {computed.state === 'failed' ? <CouldNot detail={computed.detail} /> : null}
      {tests.map((test, place) => (
        <Fragment key={test.id}>
          <RemovedRowLine list="yield.tests" place={place} />
          <TestSection
            test={test}
            place={place}
            last={place === tests.length - 1}
            computed={computed.state === 'ready' ? computed.value : null}
          />
        </Fragment>
      ))}
      <RemovedRowLine list="yield.tests" place={tests.length} />
    </>
  );
}
