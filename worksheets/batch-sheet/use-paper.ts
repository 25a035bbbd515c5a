import { useEffect, useState } from 'preact/hooks';
import { keptSetting } from '../state/kept-setting.ts';
import type { Paper } from './sheet-page.tsx';

/** Where the paper was kept before the kitchen had settings. */
const OLD_KEY = 'larderwright.paper';

function keptPaper(): unknown {
  try {
    return keptSetting('paper') ?? localStorage.getItem(OLD_KEY);
  } catch {
    // Storage is blocked: the choice lasts as long as the page.
    return null;
  }
}

/** The paper in the printer, one of the settings of this device. A4 until somebody says otherwise. */
export function usePaper(): [Paper, (paper: Paper) => void] {
  const [paper, setPaper] = useState<Paper>('a4');
  useEffect(() => {
    if (keptPaper() === 'letter') setPaper('letter');
  }, []);
  const choose = (next: Paper) => {
    setPaper(next);
    void import('../state/kitchen.ts').then(({ changeKitchen }) =>
      changeKitchen((kitchen) => ({ ...kitchen, paper: next })),
    );
  };
  return [paper, choose];
}
