// The picture on the screen, as large as the glass: for a small screen, or eyes that stand far off.

import type { AppProps } from '../actions.ts';
import type { Subject } from '../stove/glance.ts';
import { SeeIt } from './SeeIt.tsx';
import { Sheet } from './Sheet.tsx';

interface SeeSheetProps extends Pick<AppProps, 'view' | 'catalogue'> {
  subject: Subject;
  onClose: () => void;
}

export function SeeSheet({ view, subject, catalogue, onClose }: SeeSheetProps) {
  return (
    <Sheet
      title={catalogue.text({ key: 'screen.seeIt' })}
      closeLabel={catalogue.text({ key: 'screen.close' })}
      onClose={onClose}
    >
      <SeeIt subject={subject} first={view.showing?.sight ?? null} catalogue={catalogue} />
    </Sheet>
  );
}
