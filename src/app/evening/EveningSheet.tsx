// The evening's plan laid over the cooking screen.

import type { AppProps } from '../actions.ts';
import { Sheet } from '../sheets/Sheet.tsx';
import { EveningPanel } from './EveningPanel.tsx';

type EveningSheetProps = Pick<AppProps, 'view' | 'catalogue'> & { onClose: () => void };

export function EveningSheet({ view, catalogue, onClose }: EveningSheetProps) {
  const word = (key: string) => catalogue.text({ key });
  return (
    <Sheet title={word('screen.evening.title')} closeLabel={word('screen.close')} onClose={onClose}>
      <EveningPanel view={view} catalogue={catalogue} headed={false} />
    </Sheet>
  );
}
