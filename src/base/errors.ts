/** A fault of ours, never of the job's: the command line reports it with exit code 1. */
export class InternalError extends Error {
  override readonly name = 'InternalError';
}
