import { useState } from 'preact/hooks';
import * as say from '#words/example/example-head.ts';
import { putExampleBack, takeToBench } from '../state/example.ts';
import { $batch, $life } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';

export interface ExampleHeadProps {
  /** Title and address of the worksheet's own page, where a copy on the bench opens. */
  worksheet: { title: string; href: string };
}

type Copy = { state: 'none' | 'on-its-way' | 'on-the-bench' } | { state: 'failed'; detail: string };

/** Says that this is an example and lets go of it: back as it was, or onto the bench as a copy. */
export function ExampleHead({ worksheet }: ExampleHeadProps) {
  const batch = useShared($batch);
  const open = useShared($life) === 'open';
  const [copy, setCopy] = useState<Copy>({ state: 'none' });
  const take = () => {
    setCopy({ state: 'on-its-way' });
    takeToBench().then(
      () => setCopy({ state: 'on-the-bench' }),
      (error) => setCopy({ state: 'failed', detail: error instanceof Error ? error.message : String(error) }),
    );
  };
  return (
    <div class="worksheet-example">
      <p class="worksheet-batch">
        {say.changeAnythingNothingIsKept(
          <strong>{say.exampleOfThisPage}</strong>,
          open ? batch.product.name : say.fetchingIt,
        )}{' '}
        <span class="demo-mark">{say.demoInvented}</span>
      </p>
      {open ? (
        <p class="worksheet-demo">
          <button type="button" onClick={putExampleBack}>
            {say.putTheExampleBack}
          </button>
          <button type="button" disabled={copy.state === 'on-its-way'} onClick={take}>
            {say.takeItToMyBench}
          </button>
        </p>
      ) : null}
      <p role="status">
        {copy.state === 'on-the-bench' ? (
          <>
            {say.copyLiesBenchBatchOwnHere}{' '}
            <a href={worksheet.href}>{say.goOnWithTheCopyIn(worksheet.title)}</a>
          </>
        ) : copy.state === 'failed' ? (
          say.deviceDidNotTakeCopyBench(copy.detail)
        ) : null}
      </p>
    </div>
  );
}
