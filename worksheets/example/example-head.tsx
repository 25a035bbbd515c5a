import { useState } from 'preact/hooks';
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
        <strong>Example of this page:</strong> change anything, nothing is kept.{' '}
        {open ? batch.product.name : 'Fetching it …'} <span class="demo-mark">DEMO, invented</span>
      </p>
      {open ? (
        <p class="worksheet-demo">
          <button type="button" onClick={putExampleBack}>
            Put the example back
          </button>
          <button type="button" disabled={copy.state === 'on-its-way'} onClick={take}>
            Take it to my bench
          </button>
        </p>
      ) : null}
      <p role="status">
        {copy.state === 'on-the-bench' ? (
          <>
            A copy lies on your bench as a batch of your own. Here you still have the example.{' '}
            <a href={worksheet.href}>{`Go on with the copy in ${worksheet.title}`}</a>
          </>
        ) : copy.state === 'failed' ? (
          `This device did not take the copy (${copy.detail}). Your bench is as it was.`
        ) : null}
      </p>
    </div>
  );
}
