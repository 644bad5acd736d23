// Why there is no microphone, in words that tell the cook what to do.

const BY_NAME: Record<string, string> = {
  NotAllowedError:
    'The microphone is not allowed. Allow it for this page in the browser, then start listening again; until then use the buttons or the keys.',
  NotFoundError:
    'No microphone was found. Plug one in and start listening again, or use the buttons or the keys.',
  NotReadableError:
    'Another program holds the microphone. Close it and start listening again, or use the buttons or the keys.',
};

export function whyNoMicrophone(error: unknown): string {
  // Without a secure origin browsers hide the microphone altogether.
  if (error instanceof TypeError)
    return 'This browser gives the page no microphone: open it over https or on this machine itself. Until then use the buttons or the keys.';
  const name = error instanceof DOMException ? error.name : '';
  return (
    BY_NAME[name] ??
    'The microphone could not be opened. Use the buttons or the keys, or reload the page to try again.'
  );
}
