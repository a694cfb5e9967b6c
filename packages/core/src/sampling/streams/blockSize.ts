/** Iterations come in blocks of 1,024: the unit that is seeded, stratified and handed to a worker. */
export const blockSize = 1024;
