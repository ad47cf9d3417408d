import type { HtmlNode } from '../../html';

const stepIds = [
  'fit',
  'cut',
  'stack',
  'drill',
  'assemble',
  'set-up',
  'wrap',
  'check',
  'turn-over',
  'trim',
  'dress',
] as const;
export type StepId = (typeof stepIds)[number];

/** One step of the work. */
export interface Step {
  readonly id: StepId;
  readonly title: string;
  readonly content: readonly HtmlNode[];
}
