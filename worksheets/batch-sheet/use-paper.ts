import { useEffect, useState } from 'preact/hooks';
import type { Paper } from './sheet-page.tsx';

const KEY = 'larderwright.paper';

/** The paper in the printer, remembered on this device. A4 until somebody says otherwise. */
export function usePaper(): [Paper, (paper: Paper) => void] {
  const [paper, setPaper] = useState<Paper>('a4');
  useEffect(() => {
    try {
      if (localStorage.getItem(KEY) === 'letter') setPaper('letter');
    } catch {
      // Storage is blocked: the choice lasts as long as the page.
    }
  }, []);
  const choose = (next: Paper) => {
    setPaper(next);
    try {
      localStorage.setItem(KEY, next);
    } catch {
      // As above.
    }
  };
  return [paper, choose];
}
