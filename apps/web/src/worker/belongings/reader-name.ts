/** Name of the worker that only reads: lists, files, the catalogue. */
export const READER = 'reader';
