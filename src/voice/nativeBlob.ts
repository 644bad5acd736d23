// Stands in for a polyfill that the recogniser's package imports: it touches the document, which a worker has not.

export const Blob = globalThis.Blob;
