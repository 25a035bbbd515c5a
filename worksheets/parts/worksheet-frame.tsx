import type { ComponentChildren } from 'preact';
import { useContext, useEffect } from 'preact/hooks';
import { Example } from '../example/mode.ts';
import { keepAsOwn, openDemo } from '../state/open.ts';
import { startBatch } from '../state/start.ts';
import { $batch, $life, $notice } from '../state/store.ts';
import { Hydrated, useHydrated, useShared } from '../state/use-shared.ts';
import { noticeWords } from '../words/notices.ts';
import { Links, type SiteLinks } from './links.ts';

/** What every worksheet shares: the batch it works on, messages about the record, and the demo mark. */
export function WorksheetFrame({ links, children }: { links: SiteLinks; children: ComponentChildren }) {
  const hydrated = useHydrated();
  const example = useContext(Example);
  const life = useShared($life);
  const notice = useShared($notice);
  useEffect(() => (example ? example.open() : startBatch(links.demoBase)), [example, links.demoBase]);
  return (
    <Hydrated.Provider value={hydrated}>
      <Links.Provider value={links}>
        <div class="worksheet" data-life={life}>
          {example ? <example.Head /> : <OnTheBench demoBase={links.demoBase} />}
          {notice ? (
            <div class="finding" data-severity="caution" role="alert">
              <p>{noticeWords(notice)}</p>
            </div>
          ) : null}
          {children}
        </div>
      </Links.Provider>
    </Hydrated.Provider>
  );
}

const BLANK_BENCH = 'A new batch begins with the first thing you type. It is kept on this device only.';

/** Which batch lies on the bench, and the ways out of a demo. */
function OnTheBench({ demoBase }: { demoBase: string }) {
  const batch = useShared($batch);
  const life = useShared($life);
  const demo = life === 'open' && batch.demo;
  const name = batch.product.name || 'Unnamed batch';
  return (
    <>
      <p class="worksheet-batch" aria-live="polite" data-blank={BLANK_BENCH}>
        {life === 'open' ? (
          <>
            Batch on the bench: <strong>{name}</strong>
            {batch.product.batchNo ? ` · ${batch.product.batchNo}` : null}
            {demo ? (
              <>
                {' '}
                <span class="demo-mark">DEMO, invented</span>
              </>
            ) : null}
          </>
        ) : life === 'waking' ? (
          'Looking for the batch on this device …'
        ) : (
          BLANK_BENCH
        )}
      </p>
      {demo ? (
        <p class="worksheet-demo">
          <button type="button" onClick={() => openDemo(batch.id.replace(/^demo-/, ''), demoBase, true)}>
            Put the demo back as it was
          </button>
          <button type="button" onClick={keepAsOwn}>
            Copy it as a batch of my own
          </button>
        </p>
      ) : null}
    </>
  );
}
