// The plan as a link to copy or a small file to keep, and a file coming back in.

import { useState } from 'react';
import type { BatchRequest } from '../../core/request.ts';
import type { AppProps, Arrival } from '../actions.ts';
import { takeFile } from '../sheets/SettingsSheet.tsx';
import { arrivalFromFile, planFileText, planLink } from './share.ts';

interface ShareRowProps extends Pick<AppProps, 'catalogue'> {
  request: BatchRequest | null;
  onArrival: (arrival: Arrival) => void;
}

export function ShareRow({ request, catalogue, onArrival }: ShareRowProps) {
  const [link, setLink] = useState<string | null>(null);
  const word = (key: string) => catalogue.text({ key });
  const open = (file: File) => void file.text().then((text) => onArrival(arrivalFromFile(text)));
  return (
    <div className="share">
      {request && (
        <>
          <button type="button" className="link" onClick={() => void copyLink(request).then(setLink)}>
            {word('screen.share.link')}
          </button>
          <a
            className="link"
            download={`${request.fruit}-${request.product}.plan.json`}
            href={fileUrl(request)}
          >
            {word('screen.share.save')}
          </a>
        </>
      )}
      <label className="link">
        {word('screen.share.open')}
        <input
          type="file"
          accept="application/json,.json"
          onChange={(event) => takeFile(event.target, open)}
        />
      </label>
      {link && (
        <p className="copied" role="status">
          {word('screen.share.copied')}{' '}
          <input
            readOnly
            aria-label={word('screen.share.link')}
            value={link}
            onFocus={(event) => event.target.select()}
          />
        </p>
      )}
    </div>
  );
}

/** The link is shown as well, for browsers that do not let a page write to the clipboard. */
async function copyLink(request: BatchRequest): Promise<string> {
  const link = planLink(request, window.location.href);
  try {
    await navigator.clipboard.writeText(link);
  } catch {
    return link;
  }
  return link;
}

function fileUrl(request: BatchRequest): string {
  return `data:application/json;charset=utf-8,${encodeURIComponent(planFileText(request))}`;
}
