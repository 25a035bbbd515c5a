import type { ComponentChildren, ComponentType } from 'preact';
import { useContext, useEffect, useLayoutEffect, useState } from 'preact/hooks';
import { Example } from '../example/mode.ts';
import { startBatch } from '../state/start.ts';
import { $batch, $life, $notice } from '../state/store.ts';
import { Hydrated, useHydrated, useShared } from '../state/use-shared.ts';
import { later } from './later.tsx';
import { Links, type SiteLinks } from './links.ts';

const BenchTools = later(() => import('./bench-tools.tsx').then((m) => m.BenchTools));

/** What every worksheet shares: the batch it works on, messages about the record, and the demo mark. */
export function WorksheetFrame({ links, children }: { links: SiteLinks; children: ComponentChildren }) {
  const hydrated = useHydrated();
  const example = useContext(Example);
  const life = useShared($life);
  // Before anything typed meanwhile is handed over: what keeps it is asked for ahead of what computes with it.
  useLayoutEffect(() => (example ? example.open() : startBatch(links.demoBase)), [example, links.demoBase]);
  return (
    <Hydrated.Provider value={hydrated}>
      <Links.Provider value={links}>
        <div class="worksheet" data-life={life}>
          {example ? <example.Head /> : <OnTheBench demoBase={links.demoBase} />}
          <Message />
          {children}
        </div>
      </Links.Provider>
    </Hydrated.Provider>
  );
}

/** A message about the record. Its words and its buttons are fetched when there is one, which is seldom. */
function Message() {
  const notice = useShared($notice);
  const [Box, setBox] = useState<{ of: ComponentType } | null>(null);
  useEffect(() => {
    if (!notice || Box) return;
    import('./notice-box.tsx').then(
      ({ NoticeBox }) => setBox({ of: NoticeBox }),
      // Without a network the bare fact must do.
      () => setBox({ of: () => <p role="alert">The batch may not be kept. Print it before you leave.</p> }),
    );
  }, [notice, Box]);
  return notice && Box ? <Box.of /> : null;
}

const fetchShow = () => import('../state/show.ts');

const BLANK_BENCH = 'A new batch begins with the first thing you type. It is kept on this device only.';

/** Which batch lies on the bench, and the ways out of a demo. */
function OnTheBench({ demoBase }: { demoBase: string }) {
  const batch = useShared($batch);
  const life = useShared($life);
  const demo = life === 'open' && batch.demo;
  const name = batch.product.name || 'Unnamed batch';
  const reset = () =>
    fetchShow().then(({ openDemo }) => openDemo(batch.id.replace(/^demo-/, ''), demoBase, true));
  return (
    <>
      <div class="worksheet-bench">
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
        <BenchTools />
      </div>
      {demo ? (
        <p class="worksheet-demo">
          <button type="button" onClick={() => void reset()}>
            Put the demo back as it was
          </button>
          <button type="button" onClick={() => void fetchShow().then(({ keepAsOwn }) => keepAsOwn())}>
            Copy it as a batch of my own
          </button>
        </p>
      ) : null}
    </>
  );
}
