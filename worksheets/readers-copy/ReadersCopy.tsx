import * as say from '#words/readers-copy/ReadersCopy.ts';
import BatchSheet from '../batch-sheet/BatchSheet.tsx';
import { Example, type ExampleMode } from '../example/mode.ts';
import type { SiteLinks } from '../parts/links.ts';
import { openCopy } from './copy.ts';
import { CopyHead, Sheet } from './copy-head.tsx';

interface ReadersCopyProps {
  links: SiteLinks;
  standing: string;
  /** Where a batch on the bench is looked at. */
  sheet: string;
}

const mode: ExampleMode = { open: () => void openCopy(), Head: CopyHead };

/** The batch of a share link on the sheet's own page. It lives in this tab until somebody takes it. */
export default function ReadersCopy({ links, standing, sheet }: ReadersCopyProps) {
  return (
    <Sheet.Provider value={sheet}>
      <Example.Provider value={mode}>
        <BatchSheet links={links} standing={standing} mark={say.readersCopy} />
      </Example.Provider>
    </Sheet.Provider>
  );
}
