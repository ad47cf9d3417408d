/** A value at end A (`from`) and end B (`to`). */
export interface Ends {
  readonly from: number;
  readonly to: number;
}
