// `npm start` where there is no `exec`: starts on Windows, steps aside anywhere else.
//
// Elsewhere the start must replace the shell that npm puts before it, or a signal sent to npm alone
// would end npm and leave the server behind; Windows has neither that command nor that trouble.
// @ts-check

if (process.platform === 'win32') await import('./start.mjs');
else process.exitCode = 1;
