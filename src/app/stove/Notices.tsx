// Trouble, told plainly: the grave one stands on the screen, the others wait behind "More".

import type { Catalogue } from '../../kitchen/ports.ts';
import type { KitchenView } from '../../kitchen/view.ts';

type Notice = KitchenView['notices'][number];

/** Grave ones first, then the newest. */
export function inOrder(notices: Notice[]): Notice[] {
  return notices.toReversed().toSorted((a, b) => Number(b.grave) - Number(a.grave));
}

interface NoticesProps {
  notices: Notice[];
  catalogue: Catalogue;
  takeOver: () => void;
}

export function Notices({ notices, catalogue, takeOver }: NoticesProps) {
  if (notices.length === 0) return null;
  return (
    <section className="notices" aria-label={catalogue.text({ key: 'screen.region.notices' })}>
      {inOrder(notices).map((notice) => (
        <div
          key={notice.id}
          className={notice.grave ? 'notice grave' : 'notice'}
          role={notice.grave ? 'alert' : 'status'}
        >
          {notice.grave && <b>{catalogue.text({ key: 'screen.notice.grave' })}</b>}
          <p>{notice.text}</p>
          {notice.id.startsWith('readonly') && (
            <button type="button" className="choice small" onClick={takeOver}>
              {catalogue.text({ key: 'screen.notice.takeOver' })}
            </button>
          )}
        </div>
      ))}
    </section>
  );
}
